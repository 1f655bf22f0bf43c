// Twenty simulated students at the form beside the steps: what they measured is written down as it stands on their paper, and the
// answer is that of the command, in two sentences and a picture.
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { type BlockPlan, planQuilt } from '#craft';
import { diagnose } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { example, measuredText, readingsOf, type Student, students } from '#documents';
import { toNumber } from '#ground/exact';
import { adviceOn } from '#paper/diagnosis';
import { kept, type Opened, openWorkroom, sideBySide } from './page.ts';

/** What the command tells of it, as test/house/diagnose-line.test.ts has it. */
const toldOf = (student: Student, measured: string): string => {
  const planned = planQuilt(example(student.example), { budget: { steps: 0 } });
  assert.ok(planned.ok);
  const { quilt, blocks } = planned.value;
  const block = blocks.find(({ id }) => id === student.block) as BlockPlan;
  const found = diagnose({ block, seam: length(toNumber(quilt.seam)), unit: quilt.unit, measured });
  assert.ok(found.ok, measured);
  const { verdict } = found.value;
  assert.equal(verdict.kind === 'cut' ? `cut ${verdict.piece}` : verdict.kind, student.expects);
  const { what, mend } = adviceOn(found.value);
  return `${what} ${mend}`;
};

describe('what students measured, at the form', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  const all = Object.entries(students).map(([name, student], i) => ({ name, student, seed: i + 1 }));
  for (const file of new Set(all.map(({ student }) => student.example))) {
    const own = all.filter(({ student }) => student.example === file);
    it(`${file}: ${own.map(({ name }) => name).join('; ')}`, async () => {
      const { page, context, faults } = await opened.page();
      await page.goto(opened.local);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      await chooser.setFiles(`examples/${file}.quilt.json`);
      await page.getByRole('link', { name: /^Sew/ }).waitFor();
      await kept(page);
      const quilt = page.url().replace(/\/[a-z]+$/, '');
      for (const { student, seed } of own) {
        await page.goto(`${quilt}/sew/${student.block}/size`);
        await page.getByText('The answer stands here as soon as a size is written down.').waitFor();
        const readings = readingsOf(student, seed);
        for (const { step, width, height } of readings) {
          await page.getByRole('textbox', { name: `Width after step ${step}`, exact: true }).fill(width);
          await page.getByRole('textbox', { name: `Height after step ${step}`, exact: true }).fill(height);
        }
        await page.keyboard.press('Enter');
        const told = toldOf(student, measuredText(readings));
        await page.locator('.sew-wrong-what', { hasText: told }).waitFor();
        await page.getByRole('img', { name: /^The unit after step/ }).waitFor();
        await page.getByRole('button', { name: 'Take all sizes out' }).click();
      }
      assert.deepEqual(faults, []);
      await context.close();
    });
  }
});
