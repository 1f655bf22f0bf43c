// The borders pulled away from the middle, numbered in the order in which they are sewn on.

import type { QuiltPlan } from '#craft';
import { type RoundPart, thingsOf } from '#craft/setting';
import { type Box, boxOf, type Point } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { checkSize } from '#paper/lengths';
import { chip } from './chip.ts';
import { hairlinePt, hush, ink, lettering, patchEdgePt, softInk, textWidthPt } from './ink.ts';
import { blockDefinitions } from './quilt.ts';
import { framed } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';
import { drawThing, outlineInTop, penFor, type ThingPen } from './things.ts';

const apartPt = 8;
/** Room round it all: a number stands out on both sides of a narrow border. */
const roomPt = 8;

export const drawBorders = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { plan } = of;
  const { set } = plan.top;
  const away = apartPt * set.borders.length + roomPt;
  const scale = Math.min((of.fitPt[0] - 2 * away) / set.width, (of.fitPt[1] - 2 * away) / set.height);
  const origin = { x: away, y: away };
  const pen: ThingPen = { ...penFor({ ...of, scale }), pointers: 'none' };
  const middle = {
    x: set.middle.x * scale + origin.x,
    y: set.middle.y * scale + origin.y,
    width: set.middle.width * scale,
    height: set.middle.height * scale,
  };
  const parts = set.borders.flatMap((border, ring) => border.parts.map((part) => ({ part, ring })));
  return picture({
    widthPt: set.width * scale + 2 * away,
    heightPt: set.height * scale + 2 * away,
    alt: of.alt,
    parts: [
      set.borders.some(({ kind }) => kind === 'pieced')
        ? blockDefinitions({ blocks: plan.blocks, signs: of.signs, scale })
        : '',
      element('rect', { ...middle, fill: hush, stroke: softInk, 'stroke-width': patchEdgePt }),
      ...middleSize(checkSize([set.middle.width, set.middle.height], plan.quilt), middle),
      ...parts.map(({ part, ring }, order) =>
        drawPart({ pen, part, order: order + 1, move: moveFor({ part, ring, origin }) }),
      ),
    ],
  });
};

/** In one line or two, as large as the middle has room for between the numbers at its sides; nothing where it has none. */
const middleSize = (size: string, middle: Box): readonly string[] => {
  const chipsPt = 16;
  const forms = [9, 8, 7].flatMap((sizePt) => [
    { sizePt, lines: [`${size} finished`] },
    { sizePt, lines: [size, 'finished'] },
  ]);
  const form = forms.find(
    ({ sizePt, lines }) =>
      lines.length * sizePt * 1.4 < middle.height - chipsPt &&
      lines.every((line) => textWidthPt(line, sizePt) < middle.width - chipsPt),
  );
  return (form?.lines ?? []).map((text, i, { length }) =>
    lettering({
      text,
      x: middle.x + middle.width / 2,
      y: middle.y + middle.height / 2 + (i - (length - 1) / 2) * (form?.sizePt ?? 0) * 1.4,
      sizePt: form?.sizePt ?? 0,
      fill: softInk,
    }),
  );
};

const ways: Readonly<Record<RoundPart['side'], Point>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  top: { x: 0, y: -1 },
  bottom: { x: 0, y: 1 },
};

const moveFor = (of: { readonly part: RoundPart; readonly ring: number; readonly origin: Point }): Point => {
  const way = ways[of.part.side];
  const out = apartPt * (of.ring + 1);
  return { x: of.origin.x + way.x * out, y: of.origin.y + way.y * out };
};

const drawPart = (of: {
  readonly pen: ThingPen;
  readonly part: RoundPart;
  readonly order: number;
  readonly move: Point;
}): string => {
  const { pen, move } = of;
  const things = thingsOf(of.part.assembly);
  const box = boxOf(things.flatMap((thing) => framed(outlineInTop(pen.plan, thing), { scale: pen.scale, x: 0, y: 0 })));
  const strokeWidth = things.length === 1 ? patchEdgePt : hairlinePt;
  return group({ transform: `translate(${numberText(move.x)} ${numberText(move.y)})` }, [
    group(
      { stroke: ink, 'stroke-width': strokeWidth, 'stroke-linejoin': 'round' },
      things.flatMap((thing) => drawThing(pen, thing)),
    ),
    chip({ x: box.x + box.width / 2, y: box.y + box.height / 2, text: String(of.order) }),
  ]);
};
