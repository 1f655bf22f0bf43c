import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { limits } from '#craft/limits';
import { scanText } from './scan-text.ts';

test('a fault is told with its line, column, sign and place', () => {
  const faults = scanText('{\n  "a": [1, 2,\n  x]}', limits);
  // counted by hand
  assert.deepEqual(faults, [{ code: 'design/not-json', path: '/a/2', line: 3, column: 3, found: 'x' }]);
  const ended = scanText('{"a": "b', limits);
  assert.deepEqual(ended, [{ code: 'design/not-json', path: '/a', line: 1, column: 9, found: null }]);
});

test('each key that stands twice in one object is told, and the same key in two objects is not', () => {
  assert.deepEqual(scanText('{"a": {"x": 1}, "b": {"x": 2}}', limits), []);
  // the second is the same key written with an escape
  assert.deepEqual(scanText('{"a": {"x": 1, "\\u0078": 2}, "b": 0,\n "a": 3}', limits), [
    { code: 'design/key-twice', path: '/a/x', line: 1, column: 16, key: 'x' },
    { code: 'design/key-twice', path: '/a', line: 2, column: 2, key: 'a' },
  ]);
});

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** Syntax faults only: keys named twice are JSON all the same. */
const scansAsJson = (text: string): boolean =>
  scanText(text, { depth: 1000, problems: 200 }).every(({ code }) => code !== 'design/not-json');

test('what the scan takes for JSON is what JSON.parse takes for it', () => {
  const edges = [
    '',
    ' ',
    '1',
    '-',
    '-0',
    '01',
    '1.',
    '.5',
    '1e5',
    '1e',
    '"\\u12"',
    '"\\x"',
    '"\t"',
    'nul',
    'true1',
    '[]',
    '[1,]',
  ];
  for (const text of [
    ...edges,
    '{}',
    '{"a"}',
    '{"a":}',
    '{,}',
    '[,]',
    '[[]',
    ']',
    '"',
    '"\\',
    '{"a":1}}',
    '1 2',
    '\u00a01',
    '{1:2}',
  ]) {
    assert.equal(scansAsJson(text), isJson(text), JSON.stringify(text));
  }
  const tokens = fc.constantFrom(...'{}[],:"\\ \n019-+.eE', 'true', 'null', '"a"', '"\\u0041"', '1.5e3');
  fc.assert(
    fc.property(fc.array(tokens, { maxLength: 12 }), (parts) => {
      const text = parts.join('');
      assert.equal(scansAsJson(text), isJson(text), text);
    }),
    { seed: 51, numRuns: 3000 },
  );
  fc.assert(
    fc.property(fc.json(), fc.nat(), fc.string({ maxLength: 1 }), (json, place, sign) => {
      assert.equal(scansAsJson(json), true, json);
      const at = place % (json.length + 1);
      const broken = json.slice(0, at) + sign + json.slice(at + 1);
      assert.equal(scansAsJson(broken), isJson(broken), broken);
    }),
    { seed: 52, numRuns: 1000 },
  );
});
