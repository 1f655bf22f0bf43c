import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { noteText } from '#paper/words';

test('a cut off the marks is told with both sizes and how far it is off', () => {
  // worded by hand
  const note = {
    code: 'cutting/off-marks',
    level: 'warning',
    path: '/blocks/0',
    block: 'fly',
    label: 'B',
    friendly: null,
  } as const;
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

test('the nearest size without a cut off the marks is named where there is one, and what adds up over the block', () => {
  const note = { path: '/blocks/0', block: 'fly', level: 'warning' } as const;
  const off = { ...note, code: 'cutting/off-marks', label: 'B', exact: length(2.833), size: length(2.875) } as const;
  assert.match(
    noteText({ ...off, friendly: [length(9), length(9)] }, 'in'),
    /sewing\. The nearest size of the block at which every cut falls on a mark is 9 × 9 in\.$/,
  );
  assert.equal(
    noteText({ ...note, code: 'accuracy/drift', across: length(0.125), down: length(-0.0625) }, 'in'),
    'Block “fly”: cut on the nearest marks, its pieces add up to ⅛ in too large across and 1/16 in too small down.',
  );
  assert.match(
    noteText({ ...note, code: 'accuracy/drift', across: length(0), down: length(0.06) }, 'cm'),
    /the true size across and 0\.06 cm too large down/,
  );
});

test('each other note names its block', () => {
  const note = { path: '/blocks/0', block: 'cabin' } as const;
  const texts = [
    noteText(
      { ...note, code: 'piecing/not-straight', level: 'note', joining: 'set-in', corners: 5, partial: 0, curved: 0 },
      'in',
    ),
    noteText({ ...note, code: 'piecing/searched', level: 'note', patches: 40 }, 'in'),
    noteText({ ...note, code: 'design/unused-block', level: 'warning' }, 'in'),
  ];
  assert.equal(
    noteText({ ...note, code: 'design/unused-tone', level: 'warning', colouring: 'night', tone: 'l9' }, 'in'),
    'Colouring “night” of block “cabin” names the tone “l9”, which the block does not have. Look for a slip in its name, or take it out.',
  );
  for (const text of texts) assert.match(text, /^Block “cabin” .*\.$/);
  assert.match(texts[0] as string, / 5 inside corners/);
  assert.match(texts[1] as string, / 40 patches/);
});

test('light that is darker than dark is told as that, and not as alike', () => {
  const side = (tone: string, lightness: number) => ({ tones: [tone], fabrics: [`cloth of ${tone}`], lightness });
  const note = { code: 'fabric/values-near', level: 'warning', path: '', block: 'star', colouring: 'default' } as const;
  // worded by hand
  assert.equal(
    noteText({ ...note, light: side('light', 17), dark: side('dark', 83) }, 'in'),
    'Light is darker than dark in block “star”, colouring “default”: “cloth of light” (tone “light”), lightness 17, against “cloth of dark” (tone “dark”), lightness 83. If it is not meant so, let the two change places.',
  );
  assert.match(
    noteText({ ...note, light: side('light', 60), dark: side('dark', 62) }, 'in'),
    /^Light and dark do not read apart in block .* 15 or more is seen at a glance/,
  );
});
