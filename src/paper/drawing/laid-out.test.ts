import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawLaidBlock, drawLaidTop, stepsTaking } from './laid-out.ts';
import { drawTopMachine } from './top-machine.ts';
import { drawTopStep } from './top-step.ts';

const plan = planOf(specimenDocument);
const signs = clothSignsFor(plan);
const [cabin] = plan.blocks as [BlockPlan];
const laidAt = (at: number): string =>
  drawLaidBlock({ block: cabin, signs, fitPt: [200, 200], alt: 'Laid out', at }).svg;
const thingsOf = (svg: string, state: string): readonly number[] =>
  [...svg.matchAll(new RegExp(`<g class="laid is-${state}">.*?</g>`, 'gs'))].flatMap(([part]) =>
    [...part.matchAll(/data-thing="(\d+)"/g)].map(([, index]) => Number(index)),
  );

test('of a log cabin the centre and the logs before are sewn, one is next, and the rest comes later', () => {
  // the specimen's cabin: a centre and four logs, patches in the order that they are sewn
  assert.deepEqual(stepsTaking(cabin), [1, 1, 2, 3, 4]);
  const third = laidAt(3);
  assert.deepEqual(
    ['sewn', 'here', 'next', 'later'].map((state) => thingsOf(third, state)),
    [[], [0, 1, 2], [3], [4]],
  );
  assert.deepEqual(thingsOf(laidAt(5), 'sewn'), [0, 1, 2, 3, 4], 'after the last step all is sewn');
});

test('what is sewn lies close and what is not apart; later pieces are dashed, so that grey tells the states apart', () => {
  const gaps = (svg: string): number =>
    Math.abs(
      Number(
        /data-thing="0"[^>]*/.exec(svg) &&
          /d="M(\S+) /.exec(/<path d="[^"]*"[^>]*data-thing="0"/.exec(svg)?.[0] ?? '')?.[1],
      ),
    );
  // at the first step the centre lies by itself; later it is drawn in with all of its unit, further from its own edge
  assert.notEqual(gaps(laidAt(1)), gaps(laidAt(4)));
  const first = laidAt(1);
  assert.equal([...first.matchAll(/stroke-dasharray/g)].length, 3);
  assert.ok(!laidAt(5).includes('stroke-dasharray'));
});

test('every seam of the top has well-formed pictures', () => {
  for (const step of plan.top.steps) {
    const drawn = { plan, step, signs, fitPt: [300, 200], alt: 'A seam' } as const;
    for (const picture of [drawTopStep(drawn), drawTopMachine(drawn), drawLaidTop({ ...drawn, at: step.number })]) {
      if (picture === null) continue;
      assert.equal(faultInXml(picture.svg), null);
      assert.equal(faultInIds(picture.svg), null);
    }
  }
});

test('a top of more patches than a picture can show is drawn from afar, a block in the mean of its colours', () => {
  const rows = Array.from({ length: 25 }, () => Array.from({ length: 25 }, () => ({ block: 'cabin' })));
  const large = planOf({ ...specimenDocument, top: { set: 'straight', rows } });
  const small = planOf({
    ...specimenDocument,
    top: { set: 'straight', rows: [[{ block: 'cabin' }, { block: 'cabin' }]] },
  });
  const coloursOf = (of: typeof plan): ReadonlySet<string> => {
    const { svg } = drawLaidTop({ plan: of, signs: clothSignsFor(of), fitPt: [200, 200], alt: 'Laid out', at: 9999 });
    return new Set([...svg.matchAll(/ fill="(#[0-9a-f]{6})"/g)].map(([, colour]) => colour ?? ''));
  };
  assert.equal(coloursOf(large).size, 1);
  assert.ok(coloursOf(small).size > 1);
});
