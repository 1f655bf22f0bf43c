// The pressing of a block and of the top in a real Chromium: by its address, by keys, and by touching a seam.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { type Opened, openDemo, openWorkroom } from './page.ts';

describe('how it is pressed', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(async () => {
    await opened.close();
  });

  it('is reached from the block, walked through by keys, and read back from its address', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.local, 'Twelve Fields');
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page
      .getByRole('link', { name: /^Jacob’s Ladder/ })
      .first()
      .click();
    await page.getByRole('link', { name: 'How it is pressed' }).click();
    await page.getByRole('heading', { name: 'Jacob’s Ladder, pressed' }).waitFor();
    // by hand: five four-patches and four halved squares are 28 patches, joined by one seam less
    assert.equal(await page.locator('.pressed-seam').count(), 27);
    assert.match(page.url(), /\/sew\/ladder\/pressing$/);
    await page.keyboard.press('ArrowRight');
    await page
      .getByRole('status')
      .filter({ hasText: /^Step 1, / })
      .waitFor();
    await page.keyboard.press('ArrowRight');
    await page
      .getByRole('status')
      .filter({ hasText: /^Step 2, .*Press toward/ })
      .waitFor();
    assert.match(page.url(), /\/sew\/ladder\/pressing\/2$/);
    await page.reload();
    await page
      .getByRole('status')
      .filter({ hasText: /^Step 2, / })
      .waitFor();
    await page.locator('.pressed-seam[data-thing="7"]').first().click({ force: true });
    await page
      .getByRole('status')
      .filter({ hasText: /^Step 7, / })
      .waitFor();
    await page.goBack();
    await page
      .getByRole('status')
      .filter({ hasText: /^Step 2, / })
      .waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });
});
