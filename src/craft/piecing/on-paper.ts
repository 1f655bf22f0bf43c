// The order of joining a block that is pieced on foundations: patch by patch along each sheet, then sheet to sheet.
import type { Chord } from '#craft/chords';
import type { FoundationOrder, Sections } from '#craft/foundation';
import type { UnitForm } from './congruence.ts';
import { alongChord } from './division.ts';
import type { Branch, Join, JoinTree, SeamJoin } from './join.ts';

/** @param formOf sections of one form are made alike: the first stands for them */
export const paperJoins = (
  { sections, joins }: Sections,
  formOf: (unit: readonly number[]) => UnitForm,
): Omit<JoinTree, 'leastUnits'> => {
  const made = new Map<number, Join>();
  const branchOf = (unit: readonly number[]): Branch => {
    const [only] = unit;
    return unit.length === 1 ? { patch: only as number } : { ...formOf(unit), patches: unit };
  };
  const make = (
    unit: readonly number[],
    of: Pick<Chord, 'line' | 'first' | 'second'>,
    onPaper: Pick<SeamJoin, 'onPaper'> = {},
  ): void => {
    const { form } = formOf(unit);
    const { parts, ...seam } = alongChord(of);
    if (!made.has(form)) made.set(form, { ...seam, branches: [branchOf(parts[0]), branchOf(parts[1])], ...onPaper });
  };
  const rising = (patches: readonly number[]): readonly number[] => [...patches].sort((a, b) => a - b);
  const along = (order: FoundationOrder): void =>
    order.forEach(({ patch, line }, place) => {
      if (line === null) return;
      const before = rising(order.slice(0, place).map((one) => one.patch));
      make(rising([...before, patch]), { line, first: before, second: [patch] }, { onPaper: true });
    });
  const patchesIn = (numbers: readonly number[]): readonly number[] =>
    rising(numbers.flatMap((number) => (sections[number] as FoundationOrder).map(({ patch }) => patch)));
  sections.forEach(along);
  for (const { line, first, second } of joins)
    make(patchesIn([...first, ...second]), { line, first: patchesIn(first), second: patchesIn(second) });
  return { joins: made, root: formOf(patchesIn(sections.map((_, number) => number))).form };
};
