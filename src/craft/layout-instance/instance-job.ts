// The pieces of an instance as a search wants them: equal pieces are one kind, whichever item they come from.
import type { Job, Kind } from '#craft/strips';
import { done, type Outcome, refused } from '#ground/outcome';
import type { Instance, InstanceSheet } from './instance.ts';
import type { LayoutProblem } from './layout-problem.ts';
import type { InstanceProblem } from './problems.ts';

/** An item's share of a kind. */
export interface ItemShare {
  readonly item: number;
  readonly count: number;
  /** The item's width is the kind's height. */
  readonly turned: boolean;
}

export interface InstanceJob {
  /** Cloth across its width; the widest sheet's width where there are sheets. */
  readonly job: Job;
  readonly sheets: readonly InstanceSheet[];
  /** Of each kind of the job. */
  readonly shares: readonly (readonly ItemShare[])[];
}

/** With a first cut along the sheet everything lies on its side; whoever writes the layout down turns it back. */
export const jobFor = (instance: Instance, problem: LayoutProblem): Outcome<InstanceJob, InstanceProblem> => {
  const onSide = problem.firstCut === 'along';
  const sheets = instance.sheets.map((sheet) =>
    onSide ? { ...sheet, width: sheet.height, height: sheet.width } : sheet,
  );
  const isCloth = problem.kind === 'strip';
  const width = isCloth ? (instance.width ?? 0) : Math.max(...sheets.map((sheet) => sheet.width));
  const fits = (w: number, h: number): boolean =>
    isCloth ? w <= width : sheets.some((sheet) => sheet.stock !== 0 && w <= sheet.width && h <= sheet.height);
  const faults: InstanceProblem[] = [];
  const kinds = new Map<string, { kind: Kind; shares: ItemShare[] }>();
  instance.items.forEach(({ size, count }, item) => {
    const [w, h] = onSide ? [size[1], size[0]] : size;
    const mayTurn = problem.rotation && w !== h;
    const fitsAsIs = fits(w, h);
    const fitsTurned = mayTurn && fits(h, w);
    if (!fitsAsIs && !fitsTurned) {
      const cloth = isCloth ? width : null;
      faults.push({ code: 'instance/too-large', path: `/items/${item}`, size, mayTurn: problem.rotation, cloth });
      return;
    }
    // a piece that fits one way alone has no choice; one with a choice stands on its short side
    const turned = fitsTurned && (!fitsAsIs || h < w);
    const kind: Kind = { width: turned ? h : w, height: turned ? w : h, count, mayTurn: fitsAsIs && fitsTurned };
    const key = `${kind.width}x${kind.height}${kind.mayTurn ? 't' : 'f'}`;
    const known = kinds.get(key);
    kinds.set(key, {
      kind: { ...kind, count: count + (known?.kind.count ?? 0) },
      shares: [...(known?.shares ?? []), { item, count, turned }],
    });
  });
  if (faults.length > 0) return refused(faults);
  const each = [...kinds.values()];
  return done({
    job: { width, kinds: each.map(({ kind }) => kind) },
    sheets,
    shares: each.map(({ shares }) => shares),
  });
};
