import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawValueLadder, lightToDark } from './value-ladder.ts';

const signs = clothSignsFor(planOf(specimenDocument));

test('the ladder runs from light to dark in greys, with letters and L*', () => {
  // by hand: oat is the lightest of the specimen's cloths, bark the darkest
  assert.deepEqual(
    lightToDark(signs).map(({ letter }) => letter),
    ['B', 'A', 'C'],
  );
  const { svg, widthPt } = drawValueLadder({ signs, widthPt: 480, alt: 'Ladder' });
  assert.equal(faultInXml(svg), null);
  assert.ok(widthPt <= 480);
  for (const [, colour] of svg.matchAll(/<rect [^>]*fill="(#[0-9a-f]{6})"/g))
    assert.match(colour as string, /^#(..)\1\1$/);
  assert.deepEqual(
    [...svg.matchAll(/font-weight="600"[^>]*>([A-Z])</g)].map(([, letter]) => letter),
    ['B', 'A', 'C'],
  );
});

test('many cloths stand in several rows within the page', () => {
  const many = new Map(
    Array.from({ length: 40 }, (_, i) => {
      const sign = [...signs.values()][i % 3];
      return [`f${i}`, { ...(sign as NonNullable<typeof sign>), fabric: `f${i}` }] as const;
    }),
  );
  const { widthPt, heightPt } = drawValueLadder({ signs: many, widthPt: 480, alt: 'Ladder' });
  assert.ok(widthPt <= 480);
  // by hand: 40 cloths, 16 abreast, three rows of 44 pt
  assert.equal(heightPt, 132);
});
