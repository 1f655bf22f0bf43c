import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import type { TopPlan } from '#craft/plan';
import { topAsBlock, topSizes } from '#craft/top-sizes';
import { planned, quilt, setOf } from '#documents';
import type { Fault, Rescue } from './rescue.ts';
import { topRescuesFor } from './top-rescue.ts';

const colourings = { default: { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' } };
const nine = { id: 'nine', from: 'nine-patch', size: '9', colourings };
const row = (count: number) => Array.from({ length: count }, () => ({ block: 'nine' }));

const planOf = (top: Readonly<Record<string, unknown>>) => planned(quilt({ blocks: [nine], top }));

const squared = planOf(setOf('nine', { across: 3, down: 2, borders: [{ width: '3', fabric: 'medium' }] }));
const pointed = planOf({ set: 'on-point', rows: [row(2), row(2)], between: [row(1)], settingFabric: 'dark' });

const saved = (
  { top, blocks }: ReturnType<typeof planOf>,
  of: { readonly fault: Fault; readonly after: (step: TopPlan['steps'][number]) => boolean; readonly off: number },
): readonly Rescue[] => {
  const seam = length(0.25);
  const off = [length(of.off), length(0)] as const;
  return topRescuesFor({
    block: topAsBlock(top),
    top,
    models: topSizes({ top, blocks, seam }),
    seam,
    unit: 'in',
    fineness: length(1 / 16),
    fault: of.fault,
    step: top.steps.findLastIndex(of.after),
    off,
    whole: off,
  });
};

const isRow = ({ stage }: TopPlan['steps'][number]): boolean => stage === 'row';
const cut = (by: number, at: readonly number[] | null): Fault => ({
  kind: 'cut',
  piece: 'nine',
  by: length(by),
  orSeam: null,
  at,
});

const first = (rescues: readonly Rescue[]): Rescue | undefined => rescues[0];

test('blocks that are all too large are trimmed to their size before they are sewn, all too small to the smallest', () => {
  // by hand: 9 in and two allowances of 1/4
  const large = saved(squared, { fault: cut(1 / 4, null), after: isRow, off: 3 / 4 });
  assert.deepEqual(first(large), { kind: 'trim-blocks', piece: 'nine', to: [9.5, 9.5] });
  const small = saved(squared, { fault: cut(-1 / 4, null), after: isRow, off: -3 / 4 });
  assert.deepEqual(first(small), { kind: 'trim-blocks', piece: 'nine', to: null });
  // on point the box round a block is its diagonal; it is trimmed to its side
  const { fault, off } = { fault: cut(1 / 4, null), off: 1 };
  assert.deepEqual(first(saved(pointed, { fault, after: () => true, off })), {
    kind: 'trim-blocks',
    piece: 'nine',
    to: [9.5, 9.5],
  });
});

test('a single block that is off is taken out, and trimmed or another put in; the rest stay', () => {
  const large = saved(squared, { fault: cut(1 / 4, [4]), after: isRow, off: 1 / 4 });
  assert.deepEqual(first(large), { kind: 'trim-one', piece: 'nine', at: [4], to: [9.5, 9.5] });
  const small = saved(squared, { fault: cut(-1 / 4, [4]), after: isRow, off: -1 / 4 });
  assert.deepEqual(first(small), { kind: 'trim-one', piece: 'nine', at: [4], to: null });
  assert.ok(![...large, ...small].some(({ kind }) => kind === 'trim-blocks' || kind === 'replace'));
});

test('strips that are cut wrong are taken out of what is sewn, not of what is to come', () => {
  const sashing = { width: '1 1/2', fabric: 'medium', outer: true };
  const sashed = planOf(setOf('nine', { across: 2, down: 2, sashing }));
  // by hand: B lies between the rows and outside them; three steps join it, the last of them when the quilt is done
  const fault: Fault = { kind: 'cut', piece: 'B', by: length(1 / 4), orSeam: null, at: null };
  const taking = sashed.top.steps.flatMap(({ join }, step) => (join.includes('B') ? [step] : []));
  assert.equal(taking.length, 3);
  const upTo = (last: number) => saved(sashed, { fault, after: ({ number }) => number <= last + 1, off: 1 / 4 })[0];
  const [one, two] = taking as [number, number];
  assert.deepEqual(upTo(one), { kind: 'replace', pieces: ['B'], steps: [one] });
  assert.deepEqual(upTo(two), { kind: 'replace', pieces: ['B'], steps: [one, two] });
});

test('a row is eased in by up to 1/8 in for every foot, and no quilt that is joined', () => {
  const easedBy = (off: number, after: typeof isRow): number | undefined => {
    const found = saved(squared, { fault: { kind: 'none' }, after, off }).find(({ kind }) => kind === 'ease');
    return found?.kind === 'ease' ? found.by : undefined;
  };
  // by hand: a row of three blocks is 27 1/2 in long, and may be eased by 27.5/96 = 0.286 in: 1/4 in, and not 5/16
  assert.equal(easedBy(1 / 4, isRow), 1 / 4);
  assert.equal(easedBy(-1 / 4, isRow), 1 / 4);
  assert.equal(easedBy(5 / 16, isRow), undefined);
  assert.equal(easedBy(1 / 32, isRow), undefined);
  assert.equal(
    easedBy(1 / 4, () => true),
    undefined,
  );
});
