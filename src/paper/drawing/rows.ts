// The middle of the top by rows: the rows pulled apart and numbered, each block as it is turned, a small
// pointer at the block's own top where any block is turned, and the way a row's seams are pressed.

import type { QuiltPlan } from '#craft';
import { type PlacedBlock, type TopRow, turnedBy } from '#craft/setting';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { arrow } from './arrow.ts';
import { hairlinePt, ink, lettering } from './ink.ts';
import { entriesOf, entryKey, placing } from './placed.ts';
import { blockDefinitions, blockId } from './quilt.ts';
import { rowStepsOf } from './row-steps.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';

export interface RowsPicture {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

const numbersPt = 24;
const arrowsPt = 26;

export const drawRows = (of: RowsPicture): Drawing => {
  const { set } = of.plan.top;
  const apart = Math.min(9, (of.fitPt[1] * 0.25) / set.rows.length);
  const scale = Math.min(
    (of.fitPt[0] - numbersPt - arrowsPt) / set.middle.width,
    (of.fitPt[1] - apart * set.rows.length) / set.middle.height,
  );
  const rows = set.rows.map((row, index) => drawRow(of, { row, index, scale, down: index * apart }));
  return picture({
    widthPt: set.middle.width * scale + numbersPt + arrowsPt,
    heightPt: set.middle.height * scale + apart * Math.max(0, set.rows.length - 1) + 2,
    alt: of.alt,
    parts: [blockDefinitions({ blocks: of.plan.blocks, signs: of.signs, scale }), ...rows],
  });
};

const drawRow = (
  of: RowsPicture,
  place: { readonly row: TopRow; readonly index: number; readonly scale: number; readonly down: number },
): string => {
  const { plan, signs } = of;
  const { scale } = place;
  const { set } = plan.top;
  const entries = entriesOf(plan);
  const isTurned = set.placed.some(({ turn }) => turn !== 0);
  const shapes = place.row.parts.flatMap((part) => {
    if ('strip' in part) {
      const strip = set.strips[part.strip];
      if (strip === undefined) return [];
      const { rect } = strip;
      return [
        element('rect', {
          x: rect.x * scale,
          y: rect.y * scale,
          width: rect.width * scale,
          height: rect.height * scale,
          fill: signOf(signs, strip.fabric).colour,
        }),
      ];
    }
    const placed = set.placed[part.block];
    const found = placed && entries.get(entryKey(placed));
    if (placed === undefined || found === undefined) return [];
    const block = element('use', {
      href: `#${blockId(found.index)}`,
      transform: placing({ placed, finished: found.entry.finished, scale }),
    });
    return isTurned && Math.min(...placed.size) * scale >= 16 ? [block, topPointer(placed, scale)] : [block];
  });
  const box = rowBox(of.plan, place.row);
  const middle = (box.top + box.height / 2) * scale;
  const right = (set.middle.x + set.middle.width) * scale;
  const direction = rowPressOf(plan, place.index);
  const marks = [
    lettering({
      text: String(place.index + 1),
      x: set.middle.x * scale - 8,
      y: middle,
      sizePt: box.height * scale < 9 ? 6.5 : 10,
      anchor: 'end',
      weight: 600,
    }),
    direction === 'left'
      ? arrow({ from: { x: right + 23, y: middle }, to: { x: right + 7, y: middle }, heads: 'one' })
      : '',
    direction === 'right'
      ? arrow({ from: { x: right + 7, y: middle }, to: { x: right + 23, y: middle }, heads: 'one' })
      : '',
  ];
  const x = numbersPt - set.middle.x * scale;
  const y = place.down + 1 - set.middle.y * scale;
  return group({ transform: `translate(${numberText(x)} ${numberText(y)})` }, [
    group({ stroke: ink, 'stroke-width': hairlinePt, 'stroke-linejoin': 'round' }, shapes),
    ...marks,
  ]);
};

const rowBox = (plan: QuiltPlan, row: TopRow): { readonly top: number; readonly height: number } => {
  const spans = row.parts.map((part) => {
    if ('strip' in part) {
      const rect = plan.top.set.strips[part.strip]?.rect;
      return { top: rect?.y ?? 0, height: rect?.height ?? 0 };
    }
    const placed = plan.top.set.placed[part.block];
    return { top: placed?.at[1] ?? 0, height: placed?.size[1] ?? 0 };
  });
  return { top: Math.min(...spans.map(({ top }) => top)), height: Math.max(...spans.map(({ height }) => height)) };
};

/** Left or right where every seam of the row is pressed one way; null where they differ or there are none. */
export const rowPressOf = (plan: QuiltPlan, row: number): 'left' | 'right' | null => {
  const ways = new Set(
    rowStepsOf(plan, row).map(({ pressTo, side }) =>
      pressTo === 'open' ? 'open' : (pressTo === 1) === (side === 'right') ? 'right' : 'left',
    ),
  );
  const [way] = ways;
  return ways.size === 1 && (way === 'left' || way === 'right') ? way : null;
};

const topPointer = (placed: PlacedBlock, scale: number): string => {
  const [x, y] = [placed.at[0] * scale, placed.at[1] * scale];
  const [w, h] = [placed.size[0] * scale, placed.size[1] * scale];
  const { x: px, y: py } = topEdgeMiddle(placed.turn, { x, y, w, h });
  const size = Math.min(6, Math.min(w, h) * 0.16);
  return element('path', {
    d: `M0 ${numberText(size * 0.2)}L${numberText(size * 0.6)} ${numberText(size * 1.2)}H${numberText(-size * 0.6)}Z`,
    transform: `translate(${numberText(px)} ${numberText(py)}) rotate(${placed.turn})`,
    fill: '#ffffff',
    stroke: ink,
    'stroke-width': 0.5,
  });
};

/** Where the block's own top edge has its middle, turned with it: on the box, or on point a quarter of it further in. */
const topEdgeMiddle = (
  turn: PlacedBlock['turn'],
  { x, y, w, h }: { readonly x: number; readonly y: number; readonly w: number; readonly h: number },
): { readonly x: number; readonly y: number } => {
  const { x: right, y: down } = turnedBy({ x: 0, y: -0.5 }, turn);
  const reach = turn % 90 === 0 ? 1 : Math.SQRT1_2;
  return { x: x + w / 2 + right * w * reach, y: y + h / 2 + down * h * reach };
};
