import assert from 'node:assert/strict';
import { test } from 'node:test';
import { faultInXml } from '#paper/specimen';
import { element, escaped, numberText, picture } from './svg.ts';

test('coordinates are rounded to a thousandth and zero has no sign', () => {
  assert.deepEqual([1 / 3, -0.0001, 2, 1e-9, 12.3456].map(numberText), ['0.333', '0', '2', '0', '12.346']);
  assert.throws(() => numberText(Number.NaN), RangeError);
});

test('words of a maker cannot leave their place', () => {
  const hostile = '</title><script>"&\u0000\u001b\ud800';
  assert.equal(escaped(hostile), '&lt;/title&gt;&lt;script&gt;&quot;&amp;');
  const { svg } = picture({ widthPt: 10, heightPt: 10, alt: hostile, parts: [element('rect', { fill: hostile })] });
  assert.equal(faultInXml(svg), null);
});

test('the check for well-formed XML sees what is not', () => {
  assert.notEqual(faultInXml('<a><b></a></b>'), null);
  assert.notEqual(faultInXml('<a x="1<2"/>'), null);
  assert.notEqual(faultInXml('<a>fish & chips</a>'), null);
  assert.notEqual(faultInXml('<a>'), null);
});
