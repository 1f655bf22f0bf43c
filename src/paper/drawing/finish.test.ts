import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { clothSignsFor, signOf } from '#paper/cloth';
import { documentOf, faultInXml, planOf } from '#paper/specimen';
import { drawBacking } from './backing.ts';
import { drawBias } from './bias.ts';
import { textWidthPt } from './ink.ts';
import { drawSleeve } from './sleeve.ts';

const rows = Array.from({ length: 16 }, () => Array.from({ length: 12 }, () => ({ block: 'fly' })));
const plan = planOf(documentOf({ top: { set: 'straight', rows } }));
const signs = clothSignsFor(plan);

test('a backing shows every panel with its cut size, and the top in its middle', () => {
  const { backing } = plan.finish;
  if (backing === null) throw new Error('the specimen has a backing');
  // by hand: the top is 36 × 48, so the backing is 44 × 56: two panels on cloth 40 wide
  assert.equal(backing.panels, 2);
  const drawing = drawBacking({
    plan,
    backing,
    sign: signOf(signs, backing.fabric),
    fitPt: [200, 150],
    alt: 'Backing',
  });
  assert.equal(faultInXml(drawing.svg), null);
  assert.ok(drawing.widthPt <= 200 && drawing.heightPt <= 150);
  assert.equal(drawing.svg.match(/<rect /g)?.length, 3);
  const [, top] = drawing.svg.match(/<rect ([^>]*stroke-dasharray[^>]*)>/) ?? [];
  const of = (name: string): number => Number(top?.match(new RegExp(` ?${name}="([^"]*)"`))?.[1]);
  assert.ok(Math.abs(of('x') * 2 + of('width') - drawing.widthPt) < 0.01);
  assert.ok(Math.abs(of('y') * 2 + of('height') - drawing.heightPt) < 0.01);
});

test('the size of a panel that is too narrow for it stands outside on a leader, and the drawing keeps to its room', () => {
  const { backing } = plan.finish;
  if (backing === null) throw new Error('the specimen has a backing');
  const sign = signOf(signs, backing.fabric);
  const draw = (cuts: (typeof backing)['cuts']) =>
    drawBacking({ plan, backing: { ...backing, cuts, run: 'upright' }, sign, fitPt: [180, 128], alt: 'Backing' });
  const lettersIn = (svg: string) =>
    [...svg.matchAll(/<text x="([^"]*)"[^>]*font-size="([^"]*)"[^>]*>([^<]*)</g)].map(([, x, sizePt, text]) => ({
      text: text?.replaceAll('\u00a0', ' '),
      x: Number(x),
      sizePt: Number(sizePt),
    }));
  const panelsIn = (svg: string) =>
    [...svg.matchAll(/<rect x="([^"]*)" y="[^"]*" width="([^"]*)"[^>]*fill="#/g)].map(([, x, width]) => ({
      x: Number(x),
      to: Number(x) + Number(width),
    }));
  const [wide, high] = backing.cuts[0] as (typeof backing.cuts)[number];
  const narrow = length(5);
  const right = draw([
    [wide, high],
    [narrow, high],
  ]);
  const [inside, outside] = lettersIn(right.svg);
  const [first, last] = panelsIn(right.svg);
  assert.deepEqual([inside?.text, outside?.text], ['40 × 44 in', '5 × 44 in']);
  assert.ok((inside?.x ?? 0) > (first?.x ?? 0) && (inside?.x ?? 0) < (first?.to ?? 0));
  assert.ok((outside?.x ?? 0) > (last?.to ?? 0) + 5, `${outside?.x} beside ${last?.to}`);
  assert.ok((outside?.x ?? 0) + textWidthPt('5 × 44 in', 7) <= right.widthPt + 0.01);
  assert.ok(right.widthPt <= 180 && right.heightPt <= 128);
  // many panels, none of them with room: those of the left half are led to the left
  const all = draw(Array.from({ length: 6 }, () => [narrow, high] as const));
  const [left] = lettersIn(all.svg);
  assert.ok((left?.x ?? 0) - textWidthPt('5 × 44 in', 7) >= -0.01 && (left?.x ?? 0) < (panelsIn(all.svg)[0]?.x ?? 0));
  assert.equal(lettersIn(all.svg).length, 6);
  assert.ok(all.widthPt <= 180 && all.heightPt <= 128);
});

test('the square of a bias binding is drawn three times in all, as square, sheet and lined sheet, of one area', () => {
  const { svg } = drawBias({ sign: signOf(signs, 'bark'), side: '21 in', alt: 'Bias' });
  assert.equal(faultInXml(svg), null);
  const areas = [...svg.matchAll(/<path d="M([^"]*)Z" fill="#4a3426"/g)].map(([, path]) => {
    const points = (path as string).split('L').map((corner) => corner.split(' ').map(Number) as [number, number]);
    return Math.abs(
      points.reduce((sum, [x, y], i) => {
        const [nx, ny] = points[(i + 1) % points.length] as [number, number];
        return sum + (x * ny - nx * y) / 2;
      }, 0),
    );
  });
  assert.equal(areas.length, 3);
  for (const area of areas) assert.ok(Math.abs(area - (areas[0] as number)) < 0.01);
});

test('a sleeve lies in the middle of the upper edge of the back, as high and long as it is finished', () => {
  const made = planOf(
    documentOf({ top: { set: 'straight', rows }, finish: { sleeve: { fabric: 'bark' }, binding: { fabric: 'oat' } } }),
  );
  const { sleeve } = made.finish;
  if (sleeve === null) throw new Error('the specimen has a sleeve');
  const signs = clothSignsFor(made);
  const draw = (edge: boolean) =>
    drawSleeve({
      plan: made,
      sleeve,
      sign: signOf(signs, 'bark'),
      back: null,
      edge: edge ? signOf(signs, 'oat') : null,
      widthPt: 302,
      alt: 'Sleeve',
    });
  const drawing = draw(true);
  assert.equal(faultInXml(drawing.svg), null);
  // the top is 36 wide, on 300 pt; the sleeve stops an inch short of either side and is 4 high (src/craft/finishing/sleeve.ts)
  const [, box = ''] = drawing.svg.match(/<rect ([^>]*fill="#4a3426"[^>]*)>/) ?? [];
  const of = (name: string): number => Number(box.match(new RegExp(` ?${name}="([^"]*)"`))?.[1]);
  const near = (found: number, wanted: number) => assert.ok(Math.abs(found - wanted) < 0.01, `${found}, ${wanted}`);
  near(of('width'), (34 * 300) / 36);
  near(of('height'), (4 * 300) / 36);
  near(of('x') * 2 + of('width'), 302);
  assert.match(drawing.svg, />34\u00a0×\u00a04\u00a0in</);
  // on a quilt of 4 in a sleeve of 2 × 4 in is no higher than on others
  const small = planOf(documentOf({ top: { rows: [[{ block: 'fly' }]] }, finish: { sleeve: { fabric: 'bark' } } }));
  const { heightPt } = drawSleeve({
    plan: small,
    sleeve: small.finish.sleeve ?? sleeve,
    sign: signOf(clothSignsFor(small), 'bark'),
    back: null,
    edge: null,
    widthPt: 302,
    alt: 'Sleeve',
  });
  assert.ok(heightPt <= 74, `${heightPt}`);
  // without a binding it begins at the edge itself
  const [, bare = ''] = draw(false).svg.match(/<rect ([^>]*fill="#4a3426"[^>]*)>/) ?? [];
  assert.match(bare, / y="1"/);
  assert.equal(draw(false).svg.match(/<path /g)?.length, 2);
  assert.equal(drawing.svg.match(/<path /g)?.length, 3);
});
