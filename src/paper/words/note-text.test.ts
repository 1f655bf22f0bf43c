import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { noteText } from '#paper/words';

test('a cut off the marks is told with both sizes and how far it is off', () => {
  // worded by hand
  const note = { code: 'cutting/off-marks', level: 'warning', path: '/blocks/0', block: 'fly', label: 'B' } as const;
  assert.equal(
    noteText({ ...note, exact: length(2.8333333333333335), size: length(2.875) }, 'in'),
    'Block “fly”, piece B: the exact cut 2 5/6 in falls between two marks of the ruler. It is cut at 2⅞ in, 0.042 in too large, and is not trimmed after sewing.',
  );
  assert.equal(
    noteText({ ...note, exact: length(2.504), size: length(2.5) }, 'in'),
    'Block “fly”, piece B: the exact cut 2.504 in falls between two marks of the ruler. It is cut at 2½ in, 0.004 in too small, and is not trimmed after sewing.',
  );
  assert.match(
    noteText({ ...note, exact: length(6.37), size: length(6.4) }, 'cm'),
    /cut at 6\.4 cm, 0\.03 cm too large/,
  );
});

test('each other note names its block', () => {
  const note = { path: '/blocks/0', block: 'cabin' } as const;
  const texts = [
    noteText({ ...note, code: 'piecing/not-straight', level: 'note', joining: 'set-in', corners: 5, partial: 0 }, 'in'),
    noteText({ ...note, code: 'piecing/searched', level: 'note', patches: 40 }, 'in'),
    noteText({ ...note, code: 'design/unused-block', level: 'warning' }, 'in'),
  ];
  assert.equal(
    noteText({ ...note, code: 'design/unused-tone', level: 'warning', colouring: 'night', tone: 'l9' }, 'in'),
    'Colouring “night” of block “cabin” names the tone “l9”, which the block does not have.',
  );
  for (const text of texts) assert.match(text, /^Block “cabin” .*\.$/);
  assert.match(texts[0] as string, / 5 inside corners/);
  assert.match(texts[1] as string, / 40 patches/);
});
