// Setting: drafted blocks placed in a top, every patch in its place, and how the whole can be joined.
import type { ArrangementDesign, Corner, Quilt, StraightTop } from '#craft/design';
import { type DraftedBlock, fabricsOf } from '#craft/drafting';
import { length } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { arrangedRows } from './arrangement.ts';
import { setBorders } from './borders.ts';
import { darkCornerOf } from './dark-corner.ts';
import { setOnPoint } from './on-point.ts';
import { isSquare } from './on-point-size.ts';
import type { SetMiddle } from './pieces.ts';
import type { SettingProblem } from './problems.ts';
import { setSections } from './sections.ts';
import { setStraight } from './straight.ts';
import type { SetTop } from './top.ts';

export { type Quarters, quartersFor } from './arrangement.ts';
export { thingsOf } from './pieces.ts';
export { outlineOfPlaced, pointInTop, turnedBy } from './place.ts';
export type { SettingProblem } from './problems.ts';
export { spacerFor } from './spacer.ts';
export { placeOfThing, thingsInTop } from './thing-places.ts';
export type * from './top.ts';
export { touchingPairs } from './touching.ts';

interface Setting {
  readonly quilt: Quilt;
  /** Every block that the top names, by id. */
  readonly blocks: ReadonlyMap<string, DraftedBlock>;
  /** CIE L* of a fabric. */
  readonly lightness: (fabric: string) => number;
}

/** Where everything of a quilt's top lies, finished; or every size that does not fit. */
export const setTop = (of: Setting): Outcome<SetTop, SettingProblem> => {
  const middle = setMiddle(of);
  if (!middle.ok) return middle;
  const { quilt, blocks } = of;
  return setBorders({ middle: middle.value, borders: quilt.top.borders, blocks, seam: length(toNumber(quilt.seam)) });
};

const setMiddle = (of: Setting): Outcome<SetMiddle, SettingProblem> => {
  const { top } = of.quilt;
  switch (top.set) {
    case 'straight':
      return setRows(of, top);
    case 'on-point':
      return setOnPoint(top, of.blocks);
    case 'sections':
      return setSections(top, of.blocks);
  }
};

const setRows = (of: Setting, top: StraightTop): Outcome<SetMiddle, SettingProblem> => {
  const { arrangement, sashing } = top;
  if (arrangement === null) return done(setStraight(top, of.blocks));
  const path = '/top/arrangement';
  const block = of.blocks.get(arrangement.block) as DraftedBlock;
  if (!isSquare(block)) return refused([{ code: 'setting/not-square', path, block: block.id, found: block.size }]);
  const corner = arrangement.darkCorner ?? measuredCorner(of, { arrangement, block });
  if (corner === null) {
    const { colouring } = arrangement;
    return refused([{ code: 'setting/no-dark-corner', path, block: block.id, colouring }]);
  }
  return done(setStraight({ rows: arrangedRows(arrangement, corner), sashing }, of.blocks));
};

const measuredCorner = (
  { quilt, lightness }: Setting,
  { arrangement, block }: { readonly arrangement: ArrangementDesign; readonly block: DraftedBlock },
): Corner | null => {
  const colouring = quilt.blocks.find(({ id }) => id === block.id)?.colourings[arrangement.colouring];
  // a scrappy tone reads as the mean of its cloths
  const values = block.patches.map((patch) => {
    const fabrics = fabricsOf(patch, colouring ?? {});
    return fabrics.reduce((all, fabric) => all + lightness(fabric), 0) / fabrics.length;
  });
  return darkCornerOf(block, (patch) => values[patch] as number);
};
