// The middle of a top of sections: each section pulled apart into what it is joined from, framed and numbered in the
// order of reading. The whole middle is the section without a number.

import type { QuiltPlan } from '#craft';
import type { Assembly, TopThing } from '#craft/setting';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { chip } from './chip.ts';
import { hairlinePt, ink, softInk } from './ink.ts';
import { blockDefinitions } from './quilt.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';
import { drawThing, outlineInTop, penFor } from './things.ts';

export interface SectionsPicture {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

const edgePt = 9;

export const drawSections = (of: SectionsPicture): Drawing => {
  const { plan } = of;
  const { middle, assembly } = plan.top.set;
  const room = [of.fitPt[0] - 2 * edgePt, of.fitPt[1] - 2 * edgePt] as const;
  const whole = Math.min(room[0] / middle.width, room[1] / middle.height);
  // what the gaps take hardly changes with the scale
  const loose = spreadOf(plan, assembly, { scale: whole, depth: 0 });
  const scale = Math.min(
    (room[0] - (loose.width - middle.width * whole)) / middle.width,
    (room[1] - (loose.height - middle.height * whole)) / middle.height,
  );
  const spread = spreadOf(plan, assembly, { scale, depth: 0 });
  const pen = penFor({ ...of, scale });
  return picture({
    widthPt: spread.width + 2 * edgePt,
    heightPt: spread.height + 2 * edgePt,
    alt: of.alt,
    parts: [
      blockDefinitions({ blocks: plan.blocks, signs: of.signs, scale }),
      group({ transform: `translate(${edgePt} ${edgePt})` }, [
        ...spread.frames.filter(({ of: number }) => number > 0).map(frameOf),
        group(
          { stroke: ink, 'stroke-width': hairlinePt, 'stroke-linejoin': 'round' },
          spread.things.map(({ thing, x, y }) =>
            group({ transform: `translate(${numberText(x)} ${numberText(y)})` }, drawThing(pen, thing)),
          ),
        ),
        ...spread.frames.filter(({ of: number }) => number > 0).map(numberOf),
      ]),
    ],
  });
};

interface SectionFrame {
  readonly of: number;
  readonly depth: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Points, from the upper left corner of what is spread; `x`, `y` of a thing are how far it is moved. */
interface Spread {
  readonly width: number;
  readonly height: number;
  readonly things: readonly { readonly thing: TopThing; readonly x: number; readonly y: number }[];
  readonly frames: readonly SectionFrame[];
}

/** Between the parts of the whole, of a section in it, of a section in that. */
const gapPt = (depth: number): number => Math.max(4, 16 - 4 * depth);

interface At {
  readonly scale: number;
  readonly depth: number;
}

const spreadOf = (plan: QuiltPlan, assembly: Assembly, at: At): Spread => {
  if ('thing' in assembly) {
    const box = boxOf(outlineInTop(plan, assembly.thing));
    return {
      width: box.width * at.scale,
      height: box.height * at.scale,
      things: [{ thing: assembly.thing, x: -box.x * at.scale, y: -box.y * at.scale }],
      frames: [],
    };
  }
  if (!('run' in assembly)) throw new Error('a round in a top of sections');
  const parts = assembly.parts.map((part) => spreadOf(plan, part, { ...at, depth: at.depth + 1 }));
  const isAcross = assembly.run === 'across';
  const gap = gapPt(at.depth);
  const width = isAcross
    ? total(
        parts.map((p) => p.width),
        gap,
      )
    : Math.max(...parts.map((p) => p.width));
  const height = isAcross
    ? Math.max(...parts.map((p) => p.height))
    : total(
        parts.map((p) => p.height),
        gap,
      );
  let along = 0;
  const placed = parts.map((part) => {
    const x = isAcross ? along : (width - part.width) / 2;
    const y = isAcross ? (height - part.height) / 2 : along;
    along += (isAcross ? part.width : part.height) + gap;
    return moved(part, x, y);
  });
  return {
    width,
    height,
    things: placed.flatMap((part) => part.things),
    frames: [{ of: assembly.of, depth: at.depth, x: 0, y: 0, width, height }, ...placed.flatMap((part) => part.frames)],
  };
};

const total = (lengths: readonly number[], gap: number): number =>
  lengths.reduce((sum, one) => sum + one, gap * (lengths.length - 1));

const moved = (part: Spread, x: number, y: number): Spread => ({
  ...part,
  things: part.things.map((one) => ({ ...one, x: one.x + x, y: one.y + y })),
  frames: part.frames.map((one) => ({ ...one, x: one.x + x, y: one.y + y })),
});

const outPt = 2.5;

const frameOf = ({ x, y, width, height }: SectionFrame): string =>
  element('rect', {
    x: x - outPt,
    y: y - outPt,
    width: width + 2 * outPt,
    height: height + 2 * outPt,
    rx: 2,
    fill: 'none',
    stroke: softInk,
    'stroke-width': hairlinePt,
  });

/** Beside each other where sections begin in one corner. */
const numberOf = ({ x, y, depth, of }: SectionFrame): string =>
  chip({ x: x + (depth - 1) * 14, y: y - outPt, text: String(of) });
