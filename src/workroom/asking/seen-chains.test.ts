import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { example } from '#documents';
import { patternPages } from '#paper';
import { lookAt } from './index.ts';

const names = ['twelve-fields', 'weir-street'] as const;

test('the chains on the screen are those of the printed chapter, word for word, and their members are steps of their blocks', () => {
  for (const name of names) {
    const outcome = planQuilt(example(name), { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    const plan = outcome.value;
    const plainly = (text: string): string => text.replaceAll('\u200b', '');
    const printed = patternPages(plan, { chapters: ['chains'] }).facts.chains?.rounds ?? [];
    const seen = lookAt(plan, 'chains', {});
    const pictures = lookAt(plan, 'chainPictures', {});
    assert.ok(seen.rounds.length > 1, name);
    assert.deepEqual(
      seen.rounds.map(({ title, sum, batches }) => [
        title,
        sum,
        batches.map(({ number, words: { make, members, press, measures } }) => [
          `${number}`,
          make,
          members,
          press,
          measures,
          pictures[number - 1]?.alt,
        ]),
      ]),
      printed.map(({ title, sum, batches }) => [
        title,
        sum,
        batches.map(({ number, make, members, press, measures, picture }) => [
          number,
          make,
          members.map(plainly),
          plainly(press),
          measures,
          plainly(picture.alt),
        ]),
      ]),
      name,
    );
    // what is counted of a batch is counted of the steps: each of a block off foundations once, as the entries have them
    const steps = lookAt(plan, 'sewing', {}).filter(({ kind }) => kind === 'block');
    const members = seen.rounds.flatMap(({ batches }) => batches.flatMap((batch) => batch.members));
    assert.deepEqual(
      members.map(({ entry, step, key, total }) => [entry, step, key, total]).toSorted(),
      steps
        .filter((_, i) => plan.blocks[i]?.foundations === null)
        .flatMap((entry) => entry.steps.map(({ number, key, total }) => [entry.key, number, key, total]))
        .toSorted(),
    );
  }
});

test('in the list a batch has the cloths that it has at the machine, where blocks are scrappy too', () => {
  const fillsIn = (svg: string): ReadonlySet<string> =>
    new Set([...svg.matchAll(/<path d="M[^"]*Z" fill="(#\w{6})"/g)].map(([, fill = '']) => fill));
  for (const name of ['crumb-tin', 'twelve-fields']) {
    const outcome = planQuilt(example(name), { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    const plan = outcome.value;
    lookAt(plan, 'chainPictures', {}).forEach(({ svg }, i) => {
      const shown = lookAt(plan, 'chainStep', { batch: i + 1, letters: 'usual', hand: 'right' });
      assert.ok(shown !== 'nowhere');
      assert.deepEqual(fillsIn(svg), fillsIn(shown.board.svg), `${name}, batch ${i + 1}`);
    });
    // of each patch of the tin the cloth is drawn from several
    if (name === 'crumb-tin')
      assert.ok(plan.blocks.some(({ pieces }) => pieces.some((piece) => piece.fabrics.length > 1)));
  }
});

test('a batch is shown as its step is in the block that shows it, and counted over all blocks', () => {
  for (const name of names) {
    const outcome = planQuilt(example(name), { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    const plan = outcome.value;
    for (const batch of lookAt(plan, 'chains', {}).rounds.flatMap(({ batches }) => batches)) {
      const shown = lookAt(plan, 'chainStep', { batch: batch.number, letters: 'usual', hand: 'right' });
      const [first] = batch.members;
      const step = lookAt(plan, 'sewingStep', {
        entry: first.entry,
        step: first.step,
        letters: 'usual',
        hand: 'right',
      });
      assert.ok(shown !== 'nowhere' && step !== 'nowhere');
      assert.deepEqual(
        [shown.board.svg, shown.machine.svg.replace(/<title>.*?<\/title>/s, ''), shown.take, shown.turn],
        [step.board.svg, step.machine.svg.replace(/<title>.*?<\/title>/s, ''), step.take, step.turn],
      );
      assert.equal(shown.words.heading, step.words.heading);
      assert.equal(shown.words.make, `make ${batch.words.make}`);
    }
  }
  const outcome = planQuilt(example('weir-street'), { budget: { steps: 0 } });
  assert.ok(outcome.ok);
  assert.equal(lookAt(outcome.value, 'chainStep', { batch: 999, letters: 'usual', hand: 'right' }), 'nowhere');
});
