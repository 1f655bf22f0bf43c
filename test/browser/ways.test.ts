// Ways to make in a real Chromium: the plot of choices, what one changes before it is taken, one step of undo, and one unit by itself.
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { kept, type Opened, openWorkroom, sideBySide } from './page.ts';

const openWays = async (page: Page, at: string, file: string): Promise<string> => {
  await page.goto(`${at}#/demo/${file}`);
  await page.waitForURL(/#\/quilt\//);
  const id = /quilt\/([^/]+)/.exec(page.url())?.[1] ?? assert.fail(page.url());
  await page.goto(`${at}#/quilt/${id}/cut`);
  await page.getByRole('link', { name: 'Ways to make' }).click();
  await page.getByRole('heading', { name: 'Ways to make' }).waitFor();
  return id;
};

const found = (page: Page) => page.getByText('All 30 choices were planned').waitFor({ timeout: 60_000 });
const geese = (page: Page) => page.getByLabel(/^48 flying geese/);
const wayOf = async (page: Page): Promise<string> =>
  geese(page).evaluate((field) => (field as HTMLSelectElement).selectedOptions[0]?.text ?? '');

describe('ways to make', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened.close());

  it('a choice is compared at its own address, taken in one step and undone in one', async () => {
    const { page, context, faults } = await opened.page();
    await openWays(page, opened.numeric, 'lantern-lane');
    await found(page);
    assert.equal(await wayOf(page), 'one by one');
    // the least cloth, by the keys
    await page.keyboard.press('n');
    await page.waitForURL(/\/cut\/~ways\/[\d.]+$/);
    await page.getByRole('heading', { name: 'Choice 1' }).waitFor();
    const compared = (await page.locator('.side').textContent()) ?? '';
    assert.match(compared, /four at a time instead of one by one/);
    assert.match(compared, /less cloth/);
    await page.getByRole('button', { name: 'Make the units so' }).click();
    await page.getByText('The quilt is made so.').waitFor({ timeout: 60_000 });
    assert.match(await wayOf(page), /^four at a time/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Make the units so' }).waitFor({ timeout: 60_000 });
    assert.equal(await wayOf(page), 'one by one');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('between the job and the units nothing of the plot or the list is cut off, from the phone to the desk', async () => {
    const { page, context } = await opened.page({ width: 820, height: 1180, touch: 'touch' });
    await openWays(page, opened.numeric, 'lantern-lane');
    await found(page);
    for (const width of [390, 820, 1024, 1180, 1280]) {
      await page.setViewportSize({ width, height: 1180 });
      const hidden = await page.evaluate(() =>
        ['.ways-stage', '.table-room', '.ways-plot-sheet'].map((of) => {
          const { scrollWidth = 0, clientWidth = 0 } = document.querySelector(of) ?? {};
          return scrollWidth - clientWidth;
        }),
      );
      assert.deepEqual(hidden, [0, 0, 0], `at ${width}`);
    }
    await page.getByRole('columnheader', { name: 'Against the quilt as it is' }).waitFor();
    assert.equal(
      await page
        .getByRole('row', { name: /^Choice 1 / })
        .getByRole('cell')
        .count(),
      4,
    );
    await context.close();
  });

  it('on a phone a mark is taken by touch, and one unit is given a way by itself, which Sew then tells', async () => {
    const { page, context, faults } = await opened.page({ width: 390, height: 844, touch: 'touch' });
    const id = await openWays(page, opened.numeric, 'lantern-lane');
    await found(page);
    await page.locator('.ways-mark', { hasText: '2' }).tap();
    await page.getByRole('heading', { name: 'Choice 2' }).waitFor();
    await geese(page).selectOption({ label: 'by flipped corners' });
    await kept(page);
    await page.goto(`${opened.numeric}#/quilt/${id}/sew/star/1`);
    await page.getByRole('heading', { name: /by flipped corners/ }).waitFor();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `wider than the phone by ${wide}`);
    assert.deepEqual(faults, []);
    await context.close();
  });
});
