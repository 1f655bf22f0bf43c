import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, planOf } from '#paper/specimen';
import { noticesOf } from './notices.ts';

test('notices name blocks and cloths as the pages do, leave out what only a designer needs, and tell a block’s cuts off the marks at once', () => {
  // by hand: eighths are the marks, and a third of an inch falls on none
  const third = { id: 'thirds', title: 'Three in a row', from: 'rail-fence', size: '5' };
  const plan = planOf(
    documentOf({
      blocks: [{ ...third, colourings: { default: { light: 'oat', medium: 'brick', dark: 'bark', accent: 'brick' } } }],
      top: { set: 'straight', rows: [[{ block: 'thirds' }, { block: 'thirds' }]] },
    }),
  );
  assert.ok(plan.notes.some(({ code }) => code === 'design/unused-tone'));
  const off = plan.notes.filter(({ code }) => code === 'cutting/off-marks');
  assert.ok(off.length > 1);
  const notices = noticesOf(plan);
  assert.equal(notices.filter((notice) => notice.includes('fall between two marks')).length, 1);
  assert.match(notices.join(' '), /Block “Three in a row”, pieces A, B and C: their exact cuts fall between two marks/);
  assert.doesNotMatch(notices.join(' '), /“thirds”|names the tone|not proven/);
});
