import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FabricPlan } from '#craft';
import { directionsFor } from '#craft/directions';
import { length } from '#craft/measure';
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
    hand: 'right',
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

/** The first cloth of the specimen, cut otherwise: 40 wide, panels of 50 and small squares. */
const withPanels = (widths: readonly number[]): FabricPlan => {
  const [fabric] = plan.fabrics as [FabricPlan];
  const piece = (width: number, height: number, of: number) => ({
    at: length(0),
    width: length(width),
    pieces: [{ at: length(0), cut: [length(width), length(height)], turned: false, of } as const],
  });
  const strips = [
    ...widths.map((width, i) => ({ at: length(50 * i), height: length(50), parts: [piece(width, 50, i)] })),
    { at: length(50 * widths.length), height: length(2), parts: [piece(2, 2, widths.length)] },
  ];
  const long = length(50 * widths.length + 2);
  const laid = {
    layout: { width: length(40), length: long, strips },
    bound: long,
    boundKind: 'area',
  } as const;
  return { ...fabric, laid, directions: directionsFor({ laid, allowances: null, unit: 'in' }) };
};

test('a strip longer than the cloth is wide is drawn apart, so that the others stay legible', () => {
  const pictures = drawn(withPanels([30]));
  assert.equal(pictures.length, 2);
  const scales = pictures.map(({ svg }) => Number(/<rect x="1" y="[\d.]+" width="([\d.]+)"/.exec(svg)?.[1]) / 40);
  assert.ok((scales[1] as number) > (scales[0] as number), 'the low strips are drawn larger');
  assert.match(pictures[0]?.svg ?? '', />1</);
  assert.match(pictures[1]?.svg ?? '', />2</);
});

test('two strips longer than the cloth is wide stand side by side in one picture, at one scale', () => {
  const [tall, low, ...more] = drawn(withPanels([30, 20]));
  assert.ok(tall && low && more.length === 0);
  const places = [...tall.svg.matchAll(/<g transform="translate\(([\d.]+) 0\)">/g)].map(([, x]) => Number(x));
  const grounds = [
    ...tall.svg.matchAll(/<rect x="1" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"[^>]*dasharray/g),
  ].map(([, ...figures]) => figures.map(Number));
  assert.equal(places.length, 2);
  assert.deepEqual(grounds[0], grounds[1]);
  const [, width = 0, height = 0] = grounds[0] ?? [];
  assert.ok((places[1] ?? 0) > width, 'the second begins right of the first');
  assert.ok(Math.abs(width / height - 40 / 50) < 1e-3);
  assert.ok(tall.widthPt <= 480);
});
