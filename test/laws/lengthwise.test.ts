// Laws of strips that lie along the cloth: a lengthwise border or a panel of backing stands beside other pieces of the same cloth in
// one layout.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import type { FabricPlan } from '#craft';
import { type Demand, planLayout } from '#craft/cutting';
import { length } from '#craft/measure';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

const demandsOf = ({ pieces }: FabricPlan, roles: (role: string) => boolean): readonly Demand[] =>
  pieces.flatMap(({ cut, count, for: uses }) =>
    uses.some(({ role }) => roles(role))
      ? [{ across: cut[0], along: cut[1], count, mayTurn: uses.every(({ role }) => role === 'block') }]
      : [],
  );

/** Pieces that no other role shares, laid on a length of their own. */
const alone = (fabric: FabricPlan, roles: (role: string) => boolean): number =>
  planLayout({ width: fabric.laid.layout.width, demands: demandsOf(fabric, roles), budget: { steps: 2 } }).layout
    .length;

const isLong = (role: string): boolean => role === 'border' || role === 'backing';

/** A top of plain squares with lengthwise borders, border and squares of one cloth. */
const bordered = (of: {
  readonly side: number;
  readonly across: number;
  readonly down: number;
  readonly border: number;
}): Written =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40 }],
    blocks: [plainBlock('square', of.side, of.side)],
    top: setOf('square', {
      across: of.across,
      down: of.down,
      borders: [{ width: of.border, fabric: 'dark', grain: 'lengthwise' }],
    }),
  });

test('a lengthwise border stands beside other pieces, which take no more cloth', () => {
  // by hand: 4 × 10 squares of 5 finish 20 × 50; borders of 3 are cut 3 1/2 × 50 1/2 and 26 1/2: a strip 50 1/2 high
  // holds them side by side, 14 in of its 40, and in the other 26 four squares of 5 1/2 in a row nine deep, 36 of 40
  const { laid } = only(planned(bordered({ side: 5, across: 4, down: 10, border: 3 }), 2).fabrics);
  const [strip] = laid.layout.strips.toSorted((a, b) => b.height - a.height);
  assert.ok(strip);
  const kinds = new Set(strip.parts.flatMap(({ pieces }) => pieces.map(({ of }) => of)));
  assert.ok(kinds.size > 1, 'borders stand alone');
  assert.equal(strip.height, 50.5);
  assert.ok(laid.layout.length <= 50.5 + 5.5, `${laid.layout.length}`);
});

test('borders laid together with the rest are never longer than both on lengths of their own', () => {
  fc.assert(
    fc.property(
      fc.record({
        side: fc.integer({ min: 4, max: 16 }).map((n) => n / 2),
        across: fc.integer({ min: 1, max: 6 }),
        down: fc.integer({ min: 1, max: 8 }),
        border: fc.integer({ min: 2, max: 12 }).map((n) => n / 2),
      }),
      (size) => {
        const fabric = only(planned(bordered(size), 2).fabrics);
        const apart = alone(fabric, isLong) + alone(fabric, (role) => !isLong(role));
        assert.ok(fabric.laid.layout.length <= apart + 1e-9, `${fabric.laid.layout.length} of ${apart}`);
      },
    ),
    { seed: 91, numRuns: 25 },
  );
});

for (const name of ['lantern-lane', 'orchard-gate', 'harvest-home-throw', 'hedge-sparrow', 'crumb-tin']) {
  test(`${name}: borders and backing laid with the rest of their cloth are never longer than apart`, () => {
    const file = new URL(`../../examples/${name}.quilt.json`, import.meta.url);
    const plan = planned(JSON.parse(readFileSync(file, 'utf8')) as Written, 2);
    for (const fabric of plan.fabrics) {
      if ('sheets' in fabric.laid) continue;
      const long = alone(fabric, isLong);
      const rest = alone(fabric, (role) => !isLong(role));
      if (long === 0) continue;
      assert.ok(length(fabric.laid.layout.length) <= long + rest + 1e-9, `${fabric.id}`);
    }
  });
}
