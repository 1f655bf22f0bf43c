import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { quiltForBed } from '#craft/finishing';
import { length } from '#craft/measure';
import { example, measuresOf, pictureOf } from '#documents';
import { becomeSize, borderSteps, drawnFor } from './target-edits.ts';
import { targetSizes } from './target-sizes.ts';

const choicesFor = (document: QuiltDocument, wanted: readonly [number, number]) => {
  const picture = pictureOf(document);
  const drawn = drawnFor(document, { measured: measuresOf(document), picture });
  assert.ok(drawn);
  return { picture, choices: targetSizes({ drawn, wanted, ...borderSteps[document.unit], most: 60 }) };
};

test('a throw of blocks of 9 in comes to 80 × 98 in by hand as by the choice', () => {
  // 8 × 10 blocks are 72 × 90; the inner border of 1½ makes 75 × 93, an outer one of 2½ makes 80 × 98
  const { choices } = choicesFor(example('harvest-home-throw'), [80, 98]);
  assert.deepEqual(choices[0], { rows: 10, columns: 8, border: 2.5, size: [80, 98] });
  assert.equal(choices.length, 3);
  assert.equal(new Set(choices.map(({ rows, columns }) => `${rows} ${columns}`)).size, 3);
});

test('every size that is offered is the one that it makes', () => {
  // a queen bed with a drop of 12 in and a tuck of 10 in: 84 × 102 in (mattress 60 × 80, docs/sources.md S42)
  const queen = quiltForBed({ bed: 'queen', drop: length(12), tuck: length(10), unit: 'in' });
  assert.deepEqual(queen, [84, 102]);
  // plain, by a rule, with sashing, on point
  for (const name of ['harvest-home-throw', 'drying-barn', 'lantern-lane', 'bramble-lane', 'orchard-gate']) {
    const document = example(name);
    if (document.top.set === 'sections' || document.unit !== 'in') continue;
    const { choices, picture } = choicesFor(document, queen);
    assert.ok(choices.length > 0, name);
    for (const choice of choices) {
      const own = structuredClone(document);
      becomeSize(own, { choice, picture, bed: { size: 'queen' }, cloth: own.fabrics[0]?.id ?? '' });
      const [width, height] = measuresOf(own).rings.at(-1) ?? [0, 0];
      if (document.top.borders?.some((border) => 'pieced' in border)) continue; // its spacers change with what it goes round
      assert.ok(
        Math.abs(width - choice.size[0]) < 1e-6 && Math.abs(height - choice.size[1]) < 1e-6,
        `${name} ${width}`,
      );
      assert.deepEqual(own.finish?.bed, { size: 'queen' });
    }
  }
});

test('sashing counts: without it round the outside one sash fewer than blocks, with it one more', () => {
  for (const outer of [false, true]) {
    const document = example('harvest-home-throw');
    document.top.sashing = { width: '1', fabric: 'oat', outer };
    document.top.borders = [];
    // by hand: 5 blocks of 9 and four sashes are 49; with sashes all round 51
    const side = outer ? 51 : 49;
    const { choices } = choicesFor(document, [side, side]);
    assert.deepEqual(choices[0], { rows: 5, columns: 5, border: 0, size: [side, side] });
  }
});

test('a strip that is there stays, and none is wider than is offered', () => {
  const { choices } = choicesFor(example('harvest-home-throw'), [64, 64]);
  assert.ok(choices.every(({ border }) => border > 0 && border <= 12));
  const { choices: far } = choicesFor(example('harvest-home-throw'), [64, 300]);
  assert.ok(far.every(({ border }) => border <= 12));
});

test('sections have the size of their parts', () => {
  const document = example('twelve-fields');
  assert.equal(drawnFor(document, { measured: measuresOf(document), picture: null }), null);
});
