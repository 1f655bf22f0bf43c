import assert from 'node:assert/strict';
import { test } from 'node:test';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { fontFiles } from './fonts.ts';
import { linePath, openFace } from './letters.ts';
import { openOutliner } from './outlined.ts';

const [regular] = fontFiles().map(openFace);
assert.ok(regular);

interface Box {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** Of all points of a path with absolute M, L and Q, points off the curve among them. */
const boxOf = (path: string): Box => {
  const figures = [...path.matchAll(/-?[\d.]+/g)].map(([figure]) => Number(figure));
  const xs = figures.filter((_, i) => i % 2 === 0);
  const ys = figures.filter((_, i) => i % 2 === 1);
  return { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] };
};

/** Of all points of a path whose steps are relative, as the compiler writes its letters. */
const relativeBoxOf = (path: string): Box => {
  const [xs, ys]: [number[], number[]] = [[], []];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [, command = '', rest = ''] of path.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const f = [...rest.matchAll(/-?[\d.]+(?:e-?\d+)?/g)].map(([figure]) => Number(figure));
    const [a = 0, b = 0, c = 0, d = 0] = f;
    if (command === 'M') [x, y, startX, startY] = [a, b, a, b];
    else if (command === 'm') [x, y, startX, startY] = [x + a, y + b, x + a, y + b];
    else if (command === 'l') [x, y] = [x + a, y + b];
    else if (command === 'h') x += a;
    else if (command === 'v') y += a;
    else if (command === 'q') {
      xs.push(x + a);
      ys.push(y + b);
      [x, y] = [x + c, y + d];
    } else if (command === 'Z') [x, y] = [startX, startY];
    else assert.fail(`the command ${command}`);
    if (command !== 'M') {
      xs.push(x);
      ys.push(y);
    }
  }
  return { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] };
};

test('letters have the outlines and the widths that the compiler of the pages gives them', () => {
  const compiler = NodeCompiler.create({ workspace: '/none', fontArgs: [{ fontPaths: [...fontFiles()] }] });
  // é and ½ are put together from parts; W and i are wide and narrow
  for (const text of ['W', 'i', 'é', '½', '×', 'g', 'R1', 'B42']) {
    const size = 20;
    const source = `#set page(width: 200pt, height: 100pt, margin: 0pt)\n#set text(font: "Source Sans 3", size: ${size}pt, kerning: false)\n${text}`;
    compiler.mapShadow('/none/main.typ', Buffer.from(source));
    const { result } = compiler.compile({ mainFilePath: '/none/main.typ' });
    assert.ok(result);
    const svg = compiler.plainSvg(result);
    const uses = [...svg.matchAll(/<use xlink:href="#(\w+)" x="([\d.]+)"/g)];
    assert.equal(uses.length, [...text].length, text);
    let left = 0;
    for (const [i, [, id, x]] of uses.entries()) {
      const sign = [...text][i] ?? '';
      const theirs = relativeBoxOf(new RegExp(`<symbol id="${id}"[^>]*>\\s*<path d="([^"]*)"`).exec(svg)?.[1] ?? '');
      const ours = boxOf(linePath({ text: sign, face: regular, size, at: [0, 0], anchor: 'start' }));
      const near = (a: number, b: number) => Math.abs(a - b) <= 0.002;
      assert.ok(near(ours.x[0], theirs.x[0]) && near(ours.x[1], theirs.x[1]), `${sign}: ${ours.x} and ${theirs.x}`);
      // theirs stand with y up
      assert.ok(near(ours.y[0], -theirs.y[1]) && near(ours.y[1], -theirs.y[0]), `${sign}: ${ours.y} and ${theirs.y}`);
      assert.ok(near(left, Number(x)), `${sign} begins at ${left}, theirs at ${x}`);
      left += (regular.advance(regular.glyphOf(sign.codePointAt(0) ?? 0)) * size) / regular.unitsPerEm;
    }
    compiler.resetShadow();
  }
});

test('a line stands at its beginning, its middle or its end', () => {
  const at = (anchor: 'start' | 'middle' | 'end') =>
    boxOf(linePath({ text: 'HH', face: regular, size: 10, at: [50, 0], anchor })).x;
  const [start, middle, end] = [at('start'), at('middle'), at('end')];
  const width = (2 * regular.advance(regular.glyphOf(72)) * 10) / regular.unitsPerEm;
  assert.ok(start[0] > 50 && Math.abs((middle[0] + middle[1]) / 2 - 50) < 0.01 && end[1] < 50);
  assert.ok(Math.abs(start[0] - end[0] - width) < 0.01);
});

test('words in a picture become outlines in their colour, escapes read as the signs that they stand for', () => {
  const outlined = openOutliner();
  const line = (words: string) =>
    outlined(`<g><text x="10" y="20" font-family="Source Sans 3" font-size="8" fill="#6a6458">${words}</text></g>`);
  assert.match(line('A'), /^<g><path fill="#6a6458" d="M[^"]+Z"\/><\/g>$/);
  const strokes = (words: string): number => line(words).split('M').length;
  assert.equal(strokes('&amp;lt;'), strokes('&amp;') + strokes('lt;') - 1);
});
