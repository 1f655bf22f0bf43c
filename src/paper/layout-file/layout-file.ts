// The layout of an instance as the file that other programs read, and as a few lines for a person. Field names are a contract.
import type { Instance, InstanceJob, LayoutProblem } from '#craft/layout-instance';
import type { BoundKind, StripUse } from '#craft/strips';
import { lengthOf } from '#craft/strips';
import { counted } from '#paper/words';
import { type CutNode, drawFor, stripsNode } from './nested-cuts.ts';

export interface SheetLaid {
  /** Which of the instance's sheets. */
  readonly sheet: number;
  readonly times: number;
  readonly strips: readonly StripUse[];
}

export type LaidInstance =
  | { readonly on: 'cloth'; readonly strips: readonly StripUse[] }
  | { readonly on: 'sheets'; readonly sheets: readonly SheetLaid[] };

export interface LayoutReport {
  readonly instance: Instance;
  readonly problem: LayoutProblem;
  readonly cut: InstanceJob;
  readonly laid: LaidInstance;
  /** Of the length, or of the cost of all sheets. */
  readonly bound: number;
  readonly boundKind: BoundKind;
  /** When the first layout and the one given were there, and how long was searched. */
  readonly firstMs: number;
  readonly bestMs: number;
  readonly seconds: number;
}

export interface StockEntry {
  readonly sheet?: string;
  readonly times?: number;
  readonly length?: number;
  readonly node: CutNode;
}

export interface LayoutFile {
  readonly instance: string;
  readonly problem: string;
  readonly stock: readonly StockEntry[];
  readonly length?: number;
  readonly sheets?: Readonly<Record<string, number>>;
  readonly cost?: number;
  readonly bound: number;
  readonly boundKind: BoundKind;
  readonly proven: boolean;
  readonly firstMs: number;
  readonly bestMs: number;
  readonly seconds: number;
}

export const toLayoutFile = (report: LayoutReport): LayoutFile => {
  const { instance, problem, bound, boundKind, firstMs, bestMs, seconds } = report;
  const value = laidValue(report);
  return {
    instance: instance.name,
    problem: problem.id,
    stock: stockOf(report),
    ...(report.laid.on === 'cloth' ? { length: value } : { sheets: sheetCounts(report), cost: value }),
    bound,
    boundKind,
    proven: bound >= value - 1e-9 * Math.max(1, value),
    firstMs: rounded(firstMs, 10),
    bestMs: rounded(bestMs, 10),
    seconds: rounded(seconds, 1000),
  };
};

export const layoutFileText = (report: LayoutReport): string => `${JSON.stringify(toLayoutFile(report))}\n`;

/** What the layout comes to, how good it is proven to be, and how it is cut. */
export const layoutSummary = (report: LayoutReport): string => {
  const { instance, problem, boundKind, laid } = report;
  const { bound, proven, length, sheets, cost, firstMs, bestMs, seconds } = toLayoutFile(report);
  const pieces = instance.items.reduce((sum, { count }) => sum + count, 0);
  const value = length ?? cost ?? 0;
  const over = bound > 0 ? (100 * (value - bound)) / bound : 0;
  const used = Object.entries(sheets ?? {})
    .map(([id, count]) => `${count} of ${id}`)
    .join(', ');
  const what =
    laid.on === 'cloth' ? `Length ${value} on cloth ${instance.width} wide` : `Sheets: ${used}; cost ${value}`;
  const proof = proven
    ? `No layout of this problem takes less (proven, ${boundKind} bound).`
    : `None can take less than ${bound} (${boundKind} bound): this one is at most ${over.toFixed(2)} % over the least.`;
  return [
    `${instance.name}, problem ${problem.id}: ${counted(pieces, 'piece')} of ${counted(instance.items.length, 'kind')}`,
    `  ${what}`,
    `  ${proof}`,
    ...(laid.on === 'cloth' ? stripLines(laid.strips) : laid.sheets.flatMap((sheet) => sheetLines(report, sheet))),
    `  First layout after ${firstMs} ms, this one after ${bestMs} ms, searched for ${seconds} s`,
  ].join('\n');
};

const sheetLines = ({ instance }: LayoutReport, { sheet, times, strips }: SheetLaid): readonly string[] => [
  `  ${times} × ${instance.sheets[sheet]?.id}`,
  ...stripLines(strips).map((line) => `  ${line}`),
];

const stripLines = (strips: readonly StripUse[]): readonly string[] => {
  const counts = new Map<number, number>();
  for (const { pattern, times } of strips) counts.set(pattern.height, times + (counts.get(pattern.height) ?? 0));
  const heights = [...counts].sort(([a], [b]) => b - a).map(([height, times]) => `${times} of ${height}`);
  return [`  Strips: ${heights.join(', ')}`];
};

const laidValue = ({ laid, instance }: LayoutReport): number =>
  laid.on === 'cloth'
    ? lengthOf(laid.strips)
    : laid.sheets.reduce((sum, { sheet, times }) => sum + times * (instance.sheets[sheet]?.cost ?? 0), 0);

const sheetCounts = ({ laid, instance }: LayoutReport): Readonly<Record<string, number>> => {
  const counts: Record<string, number> = {};
  if (laid.on === 'sheets')
    for (const { sheet, times } of laid.sheets) {
      const id = instance.sheets[sheet]?.id ?? '';
      counts[id] = times + (counts[id] ?? 0);
    }
  return counts;
};

const stockOf = ({ problem, cut, laid, instance }: LayoutReport): readonly StockEntry[] => {
  const draw = drawFor(cut);
  if (laid.on === 'cloth')
    return [{ length: lengthOf(laid.strips), node: stripsNode({ strips: laid.strips, instance: cut, problem, draw }) }];
  const shared = cut.shares.some((shares) => shares.length > 1);
  return laid.sheets.flatMap(({ sheet, times, strips }) => {
    const id = instance.sheets[sheet]?.id ?? '';
    const node = () => stripsNode({ strips, instance: cut, problem, draw });
    if (!shared) return [{ sheet: id, ...(times > 1 ? { times } : {}), node: node() }];
    return Array.from({ length: times }, () => ({ sheet: id, node: node() }));
  });
};

const rounded = (value: number, per: number): number => Math.round(value * per) / per;
