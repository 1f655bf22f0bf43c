// Whatever a maker does to a document, undo brings back each state byte for byte, and redo goes forward to each; so too after the
// steps were written down and read again.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import { chanceFrom } from '#ground/chance';
import { beginEditing, type Editing, edited, type Json, merged, redone, undone } from '#workroom/editing';

type Draft = { [key: string]: unknown } | unknown[];

/** Changes a random place of a document in a random way: values, keys, lists, order. */
const disturb = (draft: Draft, next: (below: number) => number): void => {
  let place: Draft = draft;
  for (;;) {
    const inner = Object.values(place).filter((value): value is Draft => typeof value === 'object' && value !== null);
    const into = inner[next(inner.length + 1)];
    if (into === undefined || next(4) === 0) break;
    place = into;
  }
  if (Array.isArray(place)) disturbList(place, next);
  else disturbObject(place, next);
};

const freshValue = (next: (below: number) => number): unknown =>
  [next(100), `${next(9)} 1/2`, true, null, [next(5), 'a'], { tone: next(7), '7': 1, deep: [{}] }][next(6)];

const disturbList = (list: unknown[], next: (below: number) => number): void => {
  const at = next(list.length + 1);
  switch (next(5)) {
    case 0:
      list.splice(at, 0, freshValue(next));
      break;
    case 1:
      list.splice(at, 1 + next(3));
      break;
    case 2:
      list.reverse();
      break;
    case 3:
      list.push(...list.slice(0, 3));
      break;
    default:
      if (at < list.length) list[at] = freshValue(next);
  }
};

const disturbObject = (object: { [key: string]: unknown }, next: (below: number) => number): void => {
  const keys = Object.keys(object);
  const key = keys[next(keys.length)];
  switch (next(5)) {
    case 0:
      object[`key ${next(6)}`] = freshValue(next);
      break;
    case 1:
      if (key !== undefined) delete object[key];
      break;
    case 2: {
      // taken out and put back at the end: the same values in another order
      if (key === undefined) break;
      const value = object[key];
      delete object[key];
      object[key] = value;
      break;
    }
    default:
      if (key !== undefined) object[key] = freshValue(next);
  }
};

/** Whole numbers below a bound, of one seed. */
const numbersFrom = (seed: number): ((below: number) => number) => {
  const chance = chanceFrom(seed);
  return (below) => Math.floor(chance() * below);
};

const examples = readdirSync('examples')
  .filter((file) => file.endsWith('.quilt.json'))
  .map((file) => JSON.parse(readFileSync(`examples/${file}`, 'utf8')) as Json);
const text = (value: unknown): string => JSON.stringify(value);
const disturbed = (editing: Editing<Json>, next: (below: number) => number, gesture?: string): Editing<Json> =>
  edited(editing, {
    what: 'Edit',
    ...(gesture === undefined ? {} : { gesture }),
    change: (draft) => disturb(draft as Draft, next),
  });

test('a hundred random edits are undone and redone byte for byte, also after being written down', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(examples.length - 1), (seed, which) => {
      const next = numbersFrom(seed);
      let editing = beginEditing(examples[which] as Json);
      const states = [text(editing.document)];
      for (let i = 0; i < 100; i++) {
        editing = disturbed(editing, next);
        if (editing.steps.length === states.length) states.push(text(editing.document));
      }
      for (const [how, begun] of [
        ['at once', editing],
        ['read again', JSON.parse(text(editing)) as Editing<Json>],
      ] as const) {
        let walked = begun;
        for (const state of states.toReversed()) {
          assert.equal(text(walked.document), state, `undo, ${how}`);
          walked = undone(walked);
        }
        for (const state of states) {
          assert.equal(text(walked.document), state, `redo, ${how}`);
          walked = redone(walked);
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('edits of one gesture are taken back together', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(examples.length - 1), (seed, which) => {
      const next = numbersFrom(seed);
      const begun = disturbed(beginEditing(examples[which] as Json), next);
      let editing = begun;
      for (let i = 0; i < 10; i++) editing = disturbed(editing, next, 'drag');
      assert.ok(editing.steps.length <= begun.steps.length + 1);
      const back = editing.steps.length > begun.steps.length ? undone(editing) : editing;
      assert.equal(text(back.document), text(begun.document));
    }),
    { numRuns: 100 },
  );
});

test('two makers who meet lose nothing: after the merge, undo gives exactly what the other had', () => {
  let met = 0;
  fc.assert(
    fc.property(fc.nat(), fc.nat(examples.length - 1), (seed, which) => {
      const next = numbersFrom(seed);
      const common = beginEditing(examples[which] as Json);
      const [mine, hers] = [disturbed(disturbed(common, next), next), disturbed(common, next)];
      const both = merged({ common, mine, hers });
      if (both === null) return;
      let back = both;
      while (back.done > hers.done) back = undone(back);
      assert.equal(text(back.document), text(hers.document));
      // and in the other order the same comes of it, but for the order of keys that both put in one place
      const other = merged({ common, mine: hers, hers: mine });
      if (other === null) return;
      met += 1;
      assert.deepEqual(both.document, other.document);
    }),
    { numRuns: 400 },
  );
  assert.ok(met > 100, `only ${met} of 400 pairs met both ways`);
});
