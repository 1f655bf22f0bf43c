import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt, type QuiltPlan } from '#craft';
import type { QuiltDocument } from '#craft/design';
import { example, examples } from '#documents';
import { patternPages } from '#paper';
import { lookAt } from './looks.ts';

const planOf = (document: QuiltDocument): QuiltPlan => {
  const planned = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(planned.ok, document.title);
  return planned.value;
};
const plans = examples().map((document) => [document.title ?? '', planOf(document)] as const);

const overlap = (a: readonly number[], b: readonly number[]): boolean => {
  const [ax = 0, ay = 0, aw = 0, ah = 0] = a;
  const [bx = 0, by = 0, bw = 0, bh = 0] = b;
  return ax + aw > bx + 1e-6 && bx + bw > ax + 1e-6 && ay + ah > by + 1e-6 && by + bh > ay + 1e-6;
};

test('unrolled, a cloth of every example has each piece as often as its list counts it, inside, none on another, for either hand', () => {
  for (const [file, plan] of plans) {
    for (const { id, pieces, ends } of plan.fabrics) {
      for (const hand of ['right', 'left'] as const) {
        const seen = structuredClone(lookAt(plan, 'cutting', { cloth: id, hand }));
        assert.ok(seen.shown, file);
        const counts = new Map<number, number>();
        for (const panel of seen.shown.panels) {
          for (const [i, piece] of panel.pieces.entries()) {
            counts.set(piece.of, (counts.get(piece.of) ?? 0) + panel.count);
            const [x, y, width, height] = piece.box;
            assert.ok(x >= -1e-6 && y >= -1e-6, `${file} ${id}`);
            assert.ok(x + width <= panel.width + 1e-6 && y + height <= panel.length + 1e-6, `${file} ${id}`);
            for (const other of panel.pieces.slice(i + 1)) assert.ok(!overlap(piece.box, other.box), `${file} ${id}`);
            for (const { box } of panel.remnants) assert.ok(!overlap(piece.box, box), `${file} ${id} remnant`);
            for (const box of panel.squaring) assert.ok(!overlap(piece.box, box), `${file} ${id} squaring`);
          }
        }
        const laid = pieces.map((_, index) => counts.get(index) ?? 0);
        const folded = plan.fabrics.find((one) => one.id === id)?.fold?.chosen ?? null;
        // of what is cut in two layers each is drawn once
        if (folded === null)
          assert.deepEqual(
            laid,
            pieces.map(({ count }) => count),
            `${file} ${id} ${ends === null}`,
          );
      }
    }
  }
});

test('for the left hand every piece lies as far from the right selvage as it lay from the left, turned as before', () => {
  const plan = planOf(example('harvest-home-throw'));
  const [right, left] = (['right', 'left'] as const).map(
    (hand) => lookAt(plan, 'cutting', { cloth: 'oat', hand }).shown,
  );
  const [one, other] = [right?.panels[0], left?.panels[0]];
  assert.ok(one && other);
  assert.deepEqual(
    other.pieces.map(({ box: [x, y, width, height], of, turned }) => [40 - x - width, y, of, turned, height]),
    one.pieces.map(({ box: [x, y, , height], of, turned }) => [x, y, of, turned, height]),
  );
  const steps = (['right', 'left'] as const).map((hand) =>
    lookAt(plan, 'cutSteps', { cloth: 'oat', hand, widthPt: 400 }),
  );
  const texts = steps.map((seen) => seen?.leads.flatMap(({ strips }) => strips.map(({ text }) => text)).join(' '));
  assert.match(texts[0] ?? '', /from left to right/);
  assert.match(texts[1] ?? '', /from right to left/);
  assert.doesNotMatch(texts[1] ?? '', /from left to right/);
  // letters are not mirrored: no picture is turned over
  assert.doesNotMatch(steps[1]?.leads[0]?.strips[0]?.picture ?? '', /scale\(-1/);
});

test('directions on the screen are those of the pattern printed for the same hand, and each has a key of its own', () => {
  for (const [file, plan] of plans) {
    for (const hand of ['right', 'left'] as const) {
      const printed = JSON.stringify(patternPages(plan, { chapters: ['cutting'], hand }).facts);
      for (const { id } of plan.fabrics) {
        const seen = lookAt(plan, 'cutSteps', { cloth: id, hand, widthPt: 400 });
        assert.ok(seen);
        const steps = [...seen.leads.flatMap((lead) => [lead, ...lead.strips]), ...seen.apart];
        assert.equal(new Set(steps.map(({ key }) => key)).size, steps.length);
        for (const { text } of steps)
          assert.ok(printed.includes(JSON.stringify(text).slice(1, -1)), `${file}, ${hand}: ${text}`);
      }
    }
  }
});

test('folded cloth has its selvages at the end where the hand begins', () => {
  const plan = planOf({ ...example('harvest-home-throw'), cutting: { fold: true } });
  const folded = plan.fabrics.find(({ fold }) => fold?.chosen);
  assert.ok(folded);
  const edges = (['right', 'left'] as const).map((hand) =>
    lookAt(plan, 'cutting', { cloth: folded.id, hand }).shown?.panels.map((panel) => panel.edges),
  );
  assert.deepEqual(edges[0]?.[0], ['selvages', 'fold']);
  assert.deepEqual(edges[1]?.[0], ['fold', 'selvages']);
});

test('a cloth that nothing is cut from shows nothing, and the first is shown where none is named', () => {
  const plan = planOf(example('harvest-home-throw'));
  assert.equal(lookAt(plan, 'cutting', { cloth: 'nothing', hand: 'right' }).shown, null);
  assert.equal(lookAt(plan, 'cutting', { cloth: null, hand: 'right' }).shown?.id, 'ember');
  assert.equal(lookAt(plan, 'cutSteps', { cloth: 'nothing', hand: 'right', widthPt: 400 }), null);
});

test('how diamonds nest in a strip at an angle is shown with its directions, for the left hand turned by a half turn', () => {
  const colourings = { default: { light: 'oat', dark: 'slate', medium: 'plum' } };
  const { finish: _, ...throwQuilt } = example('harvest-home-throw');
  const plan = planOf({
    ...throwQuilt,
    blocks: [{ id: 'star', from: 'lemoyne-star', size: '12', colourings }],
    top: { rows: [[{ block: 'star' }]] },
  });
  const nested = (hand: 'right' | 'left') =>
    plan.fabrics.flatMap(({ id }) => lookAt(plan, 'cutSteps', { cloth: id, hand, widthPt: 400 })?.nested ?? []);
  const pictures = nested('right');
  assert.ok(pictures.length > 0);
  // the tips of a LeMoyne star are diamonds of 45 degrees
  assert.ok(pictures.every((picture) => picture.includes('45°')));
  const turned = nested('left');
  assert.equal(turned.length, pictures.length);
  assert.ok(
    turned.every((picture, i) => picture !== pictures[i] && picture.length > 0.9 * (pictures[i] as string).length),
  );
});
