import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FabricPlan } from '#craft';
import { clothSignsFor, signOf } from '#paper/cloth';
import { faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawCloth } from './cloth.ts';

const plan = planOf(specimenDocument);
const signs = clothSignsFor(plan);
const drawn = (fabric: FabricPlan) =>
  drawCloth({
    fabric,
    sign: signOf(signs, fabric.id),
    unit: 'in',
    print: null,
    fitPt: [480, 560],
    alt: (part, parts) => `${part}/${parts}`,
  });

const patternsOf = ({ directions }: FabricPlan) =>
  directions.parts.flatMap(({ heights }) => heights.flatMap(({ patterns }) => patterns));

test('each kind of strip is drawn once, with every piece in it', () => {
  for (const fabric of plan.fabrics) {
    const svg = drawn(fabric)
      .map((one) => one.svg)
      .join('');
    const kinds = patternsOf(fabric);
    const left = kinds.flatMap(({ offcuts }) => offcuts).filter(({ remnant }) => remnant !== null);
    const ends = fabric.directions.parts.filter(({ end }) => end !== null && end.remnant !== null);
    const pieces = kinds.flatMap(({ strip }) => strip.parts.flatMap((part) => part.pieces));
    // the pale ground of each strip is dashed, its pieces are not
    assert.equal(svg.match(/<rect [^>]*dasharray/g)?.length, kinds.length);
    assert.equal(svg.match(/<rect /g)?.length, kinds.length + pieces.length + left.length + ends.length);
  }
});

test('a layout is to scale: widths and heights share one', () => {
  const fabric = plan.fabrics[2] as FabricPlan;
  const [first] = patternsOf(fabric);
  const svg = drawn(fabric)[0]?.svg ?? '';
  const [, width, height] = /<rect [^>]*width="([\d.]+)" height="([\d.]+)"[^>]*dasharray/.exec(svg) ?? [];
  const scale = Number(width) / fabric.laid.layout.width;
  assert.ok(Math.abs(Number(height) - (first?.strip.height ?? 0) * scale) < 0.002);
});

test('every layout is well-formed and fits the page', () => {
  for (const fabric of plan.fabrics) {
    for (const { svg, widthPt, heightPt } of drawn(fabric)) {
      assert.equal(faultInXml(svg), null);
      assert.ok(widthPt <= 480 && heightPt <= 560);
    }
  }
});
