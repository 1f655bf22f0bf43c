import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { finishTold } from './finish.ts';
import { totalLines } from './money.ts';

const plan = (of: { readonly price?: number; readonly finish?: object }) => {
  const planned = planQuilt(
    {
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      currency: 'EUR',
      fabrics: [{ id: 'ash', colour: '#aa8844', ...(of.price === undefined ? {} : { price: of.price }) }],
      blocks: [{ id: 'b', from: 'nine-patch', size: '9', colourings: { default: { light: 'ash', dark: 'ash' } } }],
      top: { rows: [[{ block: 'b' }]] },
      ...(of.finish === undefined ? {} : { finish: of.finish }),
    },
    { budget: { steps: 0 } },
  );
  assert.ok(planned.ok);
  return planned.value;
};
const told = (of: Parameters<typeof plan>[0]) => {
  const made = plan(of);
  return totalLines(made, clothSignsFor(made)).map((line) => line.replaceAll('\u00a0', ' '));
};

test('the batting is told beside the cloth, where it has a price', () => {
  // nine squares of 3 1/2 in lie in one strip of 40 in: 3 1/2 in and 2 for squaring are 5 1/2, up to a quarter of a yard
  assert.deepEqual(told({ price: 10 }), ['All cloth as it is bought: 2.50 EUR.']);
  const finish = { batting: { price: 30 } };
  assert.deepEqual(told({ price: 10, finish }), [
    'All cloth as it is bought: 2.50 EUR.',
    'With the batting: 32.50 EUR.',
  ]);
  assert.deepEqual(told({ finish }), ['The batting: 30.00 EUR.']);
  assert.deepEqual(told({}), []);
});

test('the page of the batting says what it costs', () => {
  const line = (finish: object): string | undefined => {
    const made = plan({ finish });
    const parts = finishTold({ plan: made, signs: clothSignsFor(made), album: new Map() });
    return parts.find(({ topic }) => topic === 'batting')?.parts[0]?.lines[0]?.replaceAll('\u00a0', ' ');
  };
  assert.match(line({ batting: { price: 30 } }) ?? '', / It costs 30\.00 EUR\.$/);
  assert.doesNotMatch(line({ batting: {} }) ?? '', /costs/);
});
