import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lightnessOf, parseColour } from '#craft/fabric';

test('short and long hex colours come back long and lower case', () => {
  assert.deepEqual(parseColour('#EFE6D0'), { ok: true, value: '#efe6d0' });
  assert.deepEqual(parseColour('#Fa0'), { ok: true, value: '#ffaa00' });
});

test('anything else is refused', () => {
  for (const found of ['', 'red', '#12', '#12345g', '#12345678', 'efe6d0', '#efe6d0 ', 'rgb(1,2,3)']) {
    assert.deepEqual(parseColour(found), { ok: false, problems: [{ fault: 'not-a-colour', found }], more: 0 }, found);
  }
});

test('lightness is CIE L* under D65', () => {
  // CIE 15 L*, IEC 61966-2-1 sRGB, worked apart from this code: cases colour-mid-grey and colour-yellow
  assert.ok(Math.abs(lightnessOf('#777777') - 50.034439) < 1e-4, `${lightnessOf('#777777')}`);
  // the source rounds the sRGB matrix to four places, which moves yellow by 0.0003
  assert.ok(Math.abs(lightnessOf('#ffff00') - 97.138247) < 1e-3, `${lightnessOf('#ffff00')}`);
  // by definition
  assert.ok(Math.abs(lightnessOf('#000000')) < 1e-9);
  assert.ok(Math.abs(lightnessOf('#ffffff') - 100) < 1e-4, `${lightnessOf('#ffffff')}`);
});
