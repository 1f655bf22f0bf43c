// The backing seen from its right side: its panels with their seams, each with its cut size, and the top as it will lie on it.
import type { FinishPlan, QuiltPlan } from '#craft';
import type { Box } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { checkSize } from '#paper/lengths';
import { inkOn, patchEdgePt } from './ink.ts';
import { drawLabels, type Labelled, leaderMargins, type MarginsPt } from './label.ts';
import { rectOutline } from './placed.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export interface BackingDrawn {
  readonly plan: QuiltPlan;
  readonly backing: NonNullable<FinishPlan['backing']>;
  readonly sign: ClothSign;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

const padPt = 1;
/** Of the size of a panel: in one that is too narrow for it, it stands outside on a leader. */
const sizesPt = [8, 7] as const;

export const drawBacking = (of: BackingDrawn): Drawing => {
  const { backing, sign } = of;
  const { set } = of.plan.top;
  const { scale, bounds, panels, labels, margins } = laidOut(of, { left: 0, right: 0 });
  const stroke = inkOn(sign.colour);
  return picture({
    widthPt: bounds.width + 2 * padPt + margins.left + margins.right,
    heightPt: bounds.height + 2 * padPt,
    alt: of.alt,
    parts: [
      ...panels.map((box) => element('rect', { ...box, fill: sign.colour, stroke, 'stroke-width': patchEdgePt })),
      element('rect', {
        x: bounds.x + ((backing.width - set.width) * scale) / 2,
        y: bounds.y + ((backing.height - set.height) * scale) / 2,
        width: set.width * scale,
        height: set.height * scale,
        fill: 'none',
        stroke,
        'stroke-width': 0.75,
        'stroke-dasharray': '4 2',
      }),
      ...drawLabels({ labels, bounds, tooSmall: 'leader' }),
    ],
  });
};

interface LaidOut {
  readonly scale: number;
  readonly bounds: Box;
  readonly panels: readonly Box[];
  readonly labels: readonly Labelled[];
  readonly margins: MarginsPt;
}

/** As large as there is room for between the margins; these grow until the leaders have room in them. */
const laidOut = (of: BackingDrawn, margins: MarginsPt): LaidOut => {
  const { backing, fitPt, sign } = of;
  const [roomWide, roomHigh] = [fitPt[0] - 2 * padPt - margins.left - margins.right, fitPt[1] - 2 * padPt];
  const scale = Math.min(roomWide / backing.width, roomHigh / backing.height);
  const bounds = {
    x: padPt + margins.left,
    y: padPt,
    width: backing.width * scale,
    height: backing.height * scale,
  };
  const panels = panelsIn(bounds, backing);
  const labels = backing.cuts.map((cut, i) => ({
    text: checkSize(cut, of.plan.quilt),
    outline: rectOutline(panels[i] as Box),
    fill: inkOn(sign.colour),
    ground: sign.colour,
    sizesPt,
  }));
  const wanted = leaderMargins(labels, bounds);
  if (wanted.left <= margins.left && wanted.right <= margins.right) return { scale, bounds, panels, labels, margins };
  return laidOut(of, { left: Math.max(wanted.left, margins.left), right: Math.max(wanted.right, margins.right) });
};

/** Side by side, or one under the other. */
const panelsIn = (bounds: Box, { cuts, run }: BackingDrawn['backing']): readonly Box[] => {
  const all = cuts.reduce((sum, [wide]) => sum + wide, 0);
  let at = 0;
  return cuts.map(([wide]) => {
    const [from, share] = [at, wide / all];
    at += share;
    return run === 'upright'
      ? { ...bounds, x: bounds.x + from * bounds.width, width: share * bounds.width }
      : { ...bounds, y: bounds.y + from * bounds.height, height: share * bounds.height };
  });
};
