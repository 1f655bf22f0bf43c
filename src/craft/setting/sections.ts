// A set of sections: a tree of runs whose sizes are found from the blocks inward out, and whose fills take what is
// missing from the outside in. Exact throughout.

import type { SectionDesign, SectionsTop } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { add, compare, div, isPositive, type Rational, rational, sub, sum, toNumber, zero } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { type Laying, layStrip, plainRectangle, type SetMiddle } from './pieces.ts';
import type { SettingProblem } from './problems.ts';
import { type ExactSize, exactRect, layCell, sizeAsTurned } from './straight.ts';
import type { Assembly } from './top.ts';

/** Null: open, so it takes the size of what is round it. */
type OpenSize = readonly [width: Rational | null, height: Rational | null];

type Axis = 0 | 1;

const sides = ['width', 'height'] as const;

interface Sized {
  readonly design: SectionDesign;
  readonly path: string;
  readonly own: OpenSize;
  readonly parts: readonly Sized[];
}

/**
 * Where everything of the middle lies. Parts of a run are equally high (or wide); fills and other open parts of one run
 * share equally what the rest leaves of its length.
 *
 * @source docs/formulas.md#sections
 */
export const setSections = (
  { sections }: SectionsTop,
  blocks: ReadonlyMap<string, DraftedBlock>,
): Outcome<SetMiddle, SettingProblem> => {
  const problems: SettingProblem[] = [];
  const root = sized({ design: sections, path: '/top/sections', blocks, problems });
  ([0, 1] as const).forEach((axis) => {
    if (root.own[axis] === null) problems.push({ code: 'setting/section-open', path: root.path, side: sides[axis] });
  });
  if (problems.length > 0) return refused(problems);
  const size = root.own as ExactSize;
  const set: Laid = { laying: { placed: [], strips: [] }, problems, sections: { count: 0 } };
  const assembly = laid(set, { section: root, corner: [zero, zero], size });
  if (problems.length > 0) return refused(problems);
  return done({
    width: length(toNumber(size[0])),
    height: length(toNumber(size[1])),
    ...set.laying,
    rows: [],
    assembly,
  });
};

interface Sizing {
  readonly design: SectionDesign;
  readonly path: string;
  readonly blocks: ReadonlyMap<string, DraftedBlock>;
  readonly problems: SettingProblem[];
  /** The run that a strip lies in. */
  readonly along?: Axis;
}

const sized = (of: Sizing): Sized => {
  const { design, path } = of;
  switch (design.kind) {
    case 'block':
      return { design, path, own: sizeAsTurned(of.blocks.get(design.block) as DraftedBlock, design.turn), parts: [] };
    case 'fill':
      return { design, path, own: [null, null], parts: [] };
    case 'strip':
      return { design, path, own: of.along === 1 ? [null, design.width] : [design.width, null], parts: [] };
    case 'run':
      return sizedRun(of, design);
  }
};

const sizedRun = (of: Sizing, design: Extract<SectionDesign, { readonly kind: 'run' }>): Sized => {
  const { path } = of;
  const along: Axis = design.run === 'across' ? 0 : 1;
  const other: Axis = along === 0 ? 1 : 0;
  const parts = design.parts.map((part, i) =>
    sized({ ...of, design: part, path: `${path}/${design.run}/${i}`, along }),
  );
  const lengths = parts.map(({ own }) => own[along]);
  const long = lengths.includes(null) ? null : sum(lengths as readonly Rational[]);
  const high = parts.find(({ own }) => own[other] !== null)?.own[other] ?? null;
  for (const part of parts) agree({ part, axis: other, expected: high, problems: of.problems });
  return { design, path, own: along === 0 ? [long, high] : [high, long], parts };
};

const agree = (of: {
  readonly part: Sized;
  readonly axis: Axis;
  readonly expected: Rational | null;
  readonly problems: SettingProblem[];
}): void => {
  const found = of.part.own[of.axis];
  if (found === null || of.expected === null || compare(found, of.expected) === 0) return;
  of.problems.push({
    code: 'setting/section-sum',
    path: of.part.path,
    side: sides[of.axis],
    found: length(toNumber(found)),
    expected: length(toNumber(of.expected)),
  });
};

interface Laid {
  readonly laying: Laying;
  readonly problems: SettingProblem[];
  /** Runs so far, in reading order. */
  readonly sections: { count: number };
}

interface Room {
  readonly section: Sized;
  readonly corner: ExactSize;
  readonly size: ExactSize;
}

const laid = (set: Laid, room: Room): Assembly => {
  const { design, path } = room.section;
  if (design.kind === 'run') return laidRun(set, { ...room, run: design.run });
  const { corner, size } = room;
  if (design.kind === 'block') return { thing: layCell({ laying: set.laying, cell: design, corner, size, path }) };
  const { kind: role, fabric } = design;
  return { thing: layStrip(set.laying, plainRectangle({ role, fabric, path, rect: exactRect(corner, size) })) };
};

const laidRun = (set: Laid, room: Room & { readonly run: 'across' | 'down' }): Assembly => {
  const { section, run } = room;
  const along: Axis = run === 'across' ? 0 : 1;
  const of = set.sections.count;
  set.sections.count += 1;
  const share = shareOf(set, { section, along, available: room.size[along] });
  let place = room.corner[along];
  const parts = section.parts.map((part): Assembly => {
    const long = part.own[along] ?? share;
    const corner: ExactSize = along === 0 ? [place, room.corner[1]] : [room.corner[0], place];
    const size: ExactSize = along === 0 ? [long, room.size[1]] : [room.size[0], long];
    place = add(place, long);
    return laid(set, { section: part, corner, size });
  });
  return { run, angle: 0, stage: 'section', of, parts };
};

/** What each open part of a run is long. */
const shareOf = (
  set: Laid,
  of: { readonly section: Sized; readonly along: Axis; readonly available: Rational },
): Rational => {
  const { section, along, available } = of;
  const known = sum(section.parts.map(({ own }) => own[along] ?? zero));
  const open = section.parts.filter(({ own }) => own[along] === null).length;
  const left = sub(available, known);
  const found = length(toNumber(known));
  const side = sides[along];
  const { path } = section;
  if (open > 0 && isPositive(left)) return div(left, rational(open));
  if (open > 0) {
    set.problems.push({ code: 'setting/nothing-to-fill', path, side, found, available: length(toNumber(available)) });
  } else if (compare(known, available) !== 0) {
    set.problems.push({ code: 'setting/section-sum', path, side, found, expected: length(toNumber(available)) });
  }
  return zero;
};
