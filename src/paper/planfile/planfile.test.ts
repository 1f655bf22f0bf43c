import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import { planFileText, toPlanFile } from './planfile.ts';

const plan = planOf(specimenDocument);

/** The parts of the file that the test reads. */
interface File {
  readonly format: string;
  readonly version: number;
  readonly unit: string;
  readonly seam: number;
  readonly top: Record<string, unknown> & { readonly placed: readonly unknown[]; readonly steps: readonly object[] };
  readonly blocks: readonly (Record<string, unknown> & {
    readonly patches: readonly object[];
    readonly pieces: readonly (object & { readonly cut: object })[];
    readonly steps: readonly object[];
  })[];
  readonly fabrics: readonly (Record<string, unknown> & {
    readonly pieces: readonly object[];
    readonly layout: { readonly strips: readonly object[] };
  })[];
  readonly finish: Record<string, object>;
  readonly time: object;
  readonly notes: readonly object[];
}

const file = JSON.parse(planFileText(plan)) as File;

const has = (value: object | undefined, keys: readonly string[]): void => {
  for (const key of keys) assert.ok(value !== undefined && key in value, `${key} is missing`);
};

test('the plan file has every field of the format, by its exact name', () => {
  // the names are the published format, docs/paper.md
  has(file, ['format', 'version', 'title', 'unit', 'seam', 'top', 'blocks', 'fabrics', 'finish', 'time', 'notes']);
  has(file.top, ['width', 'height', 'placed', 'pieces', 'steps']);
  has(file.top.placed[0] as object, ['block', 'colouring', 'at', 'turn', 'mirror']);
  const stepKeys = [
    'id',
    'number',
    'join',
    'makes',
    'side',
    'machineTurn',
    'kind',
    'seam',
    'press',
    'unfinished',
    'perBlock',
    'total',
  ];
  has(file.top.steps[0], stepKeys);
  const block = file.blocks[0];
  has(block, ['id', 'colouring', 'mirror', 'count', 'finished', 'unfinished', 'joining', 'patches', 'pieces', 'steps']);
  has(block?.patches[0], ['piece', 'points']);
  has(block?.pieces[0], ['label', 'fabric', 'tone', 'perBlock', 'finished', 'cut']);
  has(block?.pieces[0]?.cut, ['shape', 'size', 'exact']);
  has(block?.steps[0], stepKeys);
  const fabric = file.fabrics[0];
  has(fabric, ['id', 'pieces', 'layout', 'length', 'bound', 'boundKind', 'buy']);
  has(fabric?.pieces[0], ['cut', 'shape', 'count', 'for']);
  has(fabric?.layout, ['width', 'length', 'strips']);
  has(fabric?.layout.strips[0], ['at', 'height', 'parts']);
  has(file.finish.binding, ['length', 'strips', 'joins', 'cut']);
  has(file.finish.backing, ['width', 'height', 'panels', 'run']);
  has(file.finish.batting, ['width', 'height']);
  has(file.time, ['seams', 'minutes']);
});

test('figures of the specimen stand in the file as plain numbers', () => {
  assert.deepEqual([file.format, file.version, file.unit, file.seam], ['seamstead-plan', 1, 'in', 0.25]);
  // by hand: two blocks of 3 and a sash of 1 are 7, and a border of 2 on either side
  assert.deepEqual([file.top.width, file.top.height], [11, 11]);
  assert.deepEqual(file.top.placed[2], { block: 'fly', colouring: 'default', at: [2, 6], turn: 90, mirror: false });
  assert.deepEqual(file.blocks[0]?.unfinished, [3.5, 3.5]);
});

test('the file holds nothing that JSON would lose', () => {
  assert.deepEqual(JSON.parse(JSON.stringify(toPlanFile(plan))), toPlanFile(plan));
});

test('the same document gives the same bytes', () => {
  assert.equal(planFileText(planOf(specimenDocument)), planFileText(plan));
});

test('a note comes with its code, place and words', () => {
  // the fly is not set, so that it is unused
  const unused = planOf(documentOf({ top: { set: 'straight', rows: [[{ block: 'cabin' }]] } }));
  const { notes } = JSON.parse(planFileText(unused)) as File;
  assert.equal(notes.length, 1);
  const [note] = notes as { level: string; code: string; path: string; message: string }[];
  assert.deepEqual([note?.level, note?.code, note?.path], ['warning', 'design/unused-block', '/blocks/1']);
  assert.ok((note?.message.length ?? 0) > 10);
});
