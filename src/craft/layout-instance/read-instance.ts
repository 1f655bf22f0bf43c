// Reads the text of an instance: everything that is wrong with it at once, each with its place. Keys that layouts do not need
// (class, units, source and the like) are passed over.
import { foundText, pointer, scanText } from '#craft/design';
import { done, type Outcome, refused } from '#ground/outcome';
import { booleanOf, listOf, numberOf, objectsOf, type Report, type Spot, textOf, within, wordOf } from './fields.ts';
import type { Instance, InstanceSheet, Item, ListedProblem } from './instance.ts';
import { limits } from './limits.ts';
import type { Counted, InstanceProblem } from './problems.ts';

export const parseInstance = (text: string): Outcome<Instance, InstanceProblem> => {
  if (text.length > limits.characters)
    return refused([{ code: 'instance/too-long', path: '', found: text.length, most: limits.characters }]);
  const faults = scanText(text, { depth: limits.depth, problems: limits.told });
  if (faults.length > 0) return refused(faults.map(asOurs));
  const problems: InstanceProblem[] = [];
  const report: Report = (problem) => problems.push(problem);
  const root = objectsOf([JSON.parse(text)], { path: [], report }).map((spot) => ({ ...spot, path: [] }))[0];
  const instance = root === undefined ? null : readInstance(root);
  const told = problems.map((problem) => (root === undefined ? { ...problem, path: '' } : problem));
  if (instance === null || told.length > 0)
    return refused(told.slice(0, limits.told), Math.max(0, told.length - limits.told));
  return done(instance);
};

type TextFault = ReturnType<typeof scanText>[number];

const asOurs = (fault: TextFault): InstanceProblem => {
  switch (fault.code) {
    case 'design/not-json':
      return { ...fault, code: 'instance/not-json' };
    case 'design/key-twice':
      return { ...fault, code: 'instance/key-twice' };
    default:
      return { code: 'instance/too-deep', path: fault.path, most: limits.depth };
  }
};

const side = { least: 1, most: limits.size } as const;
const whole = { shape: 'whole-number', missing: 'refused' } as const;

const readInstance = (root: Spot): Instance => {
  const { report } = root;
  const rotation = booleanOf(root, 'rotation') ?? false;
  const items = readItems(root);
  const sheets = entriesOf(root, 'sheets').flatMap((spot) => readSheet(spot) ?? []);
  const problems = entriesOf(root, 'problems').flatMap((spot) => readProblem(spot, rotation) ?? []);
  twice({ ids: sheets.map(({ id }) => id), list: 'sheets', key: 'id', report });
  twice({ ids: problems.map(({ id }) => id), list: 'bestKnown', key: 'problem', report });
  const width = numberOf(root, { key: 'W', ...whole, missing: sheets.length > 0 ? 'allowed' : 'refused', ...side });
  return { name: textOf(root, 'name') ?? '', width, sheets, items, rotation, problems };
};

const keyOf = { sheets: 'sheets', problems: 'bestKnown', items: 'items', pieces: 'items' } as const;

const tooMany = (spot: Spot, what: Counted, found: number): boolean => {
  const most = limits[what];
  if (found > most) spot.report({ code: 'instance/too-many', path: pointer([keyOf[what]]), what, found, most });
  return found > most;
};

const entriesOf = (root: Spot, what: 'sheets' | 'problems'): readonly Spot[] => {
  const list = listOf(root, keyOf[what], 'allowed');
  return tooMany(root, what, list.length) ? [] : objectsOf(list, { path: [keyOf[what]], report: root.report });
};

const readItems = (root: Spot): readonly Item[] => {
  const list = listOf(root, 'items', 'refused');
  if (tooMany(root, 'items', list.length)) return [];
  if (Array.isArray(root.value.items) && list.length === 0) root.report({ code: 'instance/no-items', path: '/items' });
  const items = list.flatMap((value, i) => readItem({ value, path: ['items', i], report: root.report }) ?? []);
  tooMany(
    root,
    'pieces',
    items.reduce((sum, { count }) => sum + count, 0),
  );
  return items;
};

const readItem = (at: { readonly value: unknown; readonly path: readonly PropertyKey[]; readonly report: Report }) => {
  const { value, path, report } = at;
  if (!Array.isArray(value) || value.length !== 3) {
    report({ code: 'instance/wrong-type', path: pointer(path), found: foundText(value), expected: 'item' });
    return null;
  }
  const ranges = [side, side, { least: 1, most: limits.pieces }];
  const sound = ranges.map((range, part) => {
    const found: unknown = value[part];
    const place = pointer([...path, part]);
    if (Number.isSafeInteger(found)) return within({ found: found as number, path: place, range, report });
    report({ code: 'instance/wrong-type', path: place, found: foundText(found), expected: 'whole-number' });
    return false;
  });
  if (sound.includes(false)) return null;
  const [width, height, count] = value as [number, number, number];
  return { size: [width, height], count } satisfies Item;
};

const readSheet = (spot: Spot): InstanceSheet | null => {
  const id = textOf(spot, 'id');
  const width = numberOf(spot, { key: 'w', ...whole, ...side });
  const height = numberOf(spot, { key: 'h', ...whole, ...side });
  const cost = numberOf(spot, { key: 'cost', ...whole, missing: 'allowed', least: 1, most: limits.cost });
  const stock = numberOf(spot, { key: 'count', ...whole, missing: 'allowed', least: 0, most: limits.pieces });
  if (id === null || width === null || height === null) return null;
  return { id, width, height, cost: cost ?? width * height, stock };
};

const readProblem = (spot: Spot, rotation: boolean): ListedProblem | null => {
  const id = textOf(spot, 'problem');
  const figure = (key: string): number | null =>
    numberOf(spot, { key, shape: 'number', missing: 'allowed', least: 0, most: Number.MAX_SAFE_INTEGER });
  const isAny = Object.hasOwn(spot.value, 'stages') && spot.value.stages === null;
  const stages = numberOf(spot, { key: 'stages', ...whole, missing: 'allowed', least: 1, most: 1000 });
  const listed = {
    kind: wordOf(spot, 'kind', ['strip', 'sheets']),
    stages: isAny ? null : (stages ?? 2),
    firstCut: wordOf(spot, 'firstCut', ['across', 'along']),
    trim: booleanOf(spot, 'trim') ?? true,
    rotation: booleanOf(spot, 'rotation') ?? rotation,
    stripHeights: wordOf(spot, 'stripHeights', ['any', 'piece']),
    best: figure('best'),
    lower: figure('lower'),
  };
  return id === null ? null : { id, ...listed };
};

const twice = (of: {
  readonly ids: readonly string[];
  readonly list: string;
  readonly key: string;
  readonly report: Report;
}): void => {
  of.ids.forEach((id, i) => {
    const first = of.ids.indexOf(id);
    if (first === i) return;
    const path = pointer([of.list, i, of.key]);
    of.report({ code: 'instance/id-twice', path, id, first: pointer([of.list, first, of.key]) });
  });
};
