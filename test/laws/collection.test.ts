// Every block of the collection goes the whole road, at round sizes and odd ones, in inches and in centimetres.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { collection } from '#craft/collection';
import { cloths, only, planned, quilt, setOf } from '../documents/documents.ts';

const fixture = JSON.parse(readFileSync(new URL('../fixtures/traditional-blocks.json', import.meta.url), 'utf8')) as {
  readonly blocks: readonly { readonly id: string; readonly piecing: 'straight' | 'set-in' }[];
};

const sizes = { in: [6, 9, 12, '10 1/2'], cm: [15, 24, 30, 21] } as const;

const colouring = { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' };

for (const { id, name } of collection) {
  // how the trade joins the block: fixtures/traditional-blocks.json; its curved one is not drawn there
  const joining = fixture.blocks.find((block) => block.id.replaceAll('_', '-') === id)?.piecing ?? 'curved';
  test(`${name} plans at four sizes in inches and centimetres, its joining ${joining}`, () => {
    for (const unit of ['in', 'cm'] as const) {
      for (const size of sizes[unit]) {
        const tones = Object.entries(colouring);
        const plan = planned(
          quilt({
            unit,
            fabrics: cloths(unit === 'in' ? 40 : 100),
            blocks: [{ id, from: id, size, colourings: { default: Object.fromEntries(tones) } }],
            top: setOf(id),
          }),
        );
        const block = only(plan.blocks);
        assert.equal(block.joining, joining);
        assert.equal(block.title, name);
        const seams = block.steps.reduce((all, step) => all + step.perBlock, 0);
        if (joining === 'straight') assert.equal(seams, block.patches.length - 1);
        assert.ok(seams > 0 && block.pieces.length > 0);
      }
    }
  });
}

test('the collection’s log cabins come out centre first, log by log in their turning order', () => {
  // by hand, from the drafting of each: fixtures/traditional-blocks.json lists the patches in sewing order
  const orders = {
    'log-cabin': ['left', 'top', 'right', 'bottom'],
    'courthouse-steps': ['top', 'bottom', 'left', 'right'],
    'quarter-log-cabin': ['right', 'bottom'],
  };
  for (const [id, order] of Object.entries(orders)) {
    const plan = planned(
      quilt({ blocks: [{ id, from: id, size: 10, colourings: { default: colouring } }], top: setOf(id) }),
    );
    const { steps } = only(plan.blocks);
    assert.deepEqual(
      steps.map((step) => step.side),
      Array.from({ length: steps.length }, (_, i) => order[i % order.length]),
    );
    assert.equal(steps[0]?.join[0], 'A');
  }
});

test('letters colour a log cabin round by round; a letter goes before its tone', () => {
  const byLetter = { A1: 'light', A2: 'medium', A3: 'light', dark: 'dark', accent: 'dark', C3: 'medium' };
  const document = quilt({
    blocks: [{ id: 'cabin', from: 'log-cabin', size: 7, colourings: { cloths: byLetter } }],
    top: { rows: [[{ block: 'cabin', colouring: 'cloths' }]] },
  });
  const block = only(planned(document).blocks);
  // by hand: the centre, then two light and two dark logs a round
  assert.deepEqual(
    block.patches.map(({ fabric }) => fabric),
    [
      'dark',
      'light',
      'light',
      'dark',
      'dark',
      'medium',
      'medium',
      'dark',
      'dark',
      'light',
      'light',
      'medium',
      'medium',
    ],
  );
});
