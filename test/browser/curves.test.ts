// Curves in a real Chromium: laid and bent in Draft by keys and by pointer, and a curved seam in Sew and its template in Print.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt } from '#craft';
import { example } from '#documents';
import { patternPages } from '#paper';
import { type Opened, openDemo, openWorkroom, sideBySide } from './page.ts';

const hand = (page: Page) => page.getByRole('application');
const pieces = (page: Page, wanted: string): Promise<void> =>
  page.locator('.facts dd', { hasText: wanted }).first().waitFor();

/** In squares of a grid of eight, on the page. */
const onGrid = async (page: Page, x: number, y: number): Promise<readonly [number, number]> => {
  const box = (await page.locator('.drawing-canvas').boundingBox()) ?? assert.fail('no drawing');
  const margin = Math.min(28, box.width / 14, box.height / 14);
  const side = Math.min(box.width, box.height) - 2 * margin;
  return [box.x + (box.width - side) / 2 + (x * side) / 8, box.y + (box.height - side) / 2 + (y * side) / 8];
};

const times = async (page: Page, count: number, key: string): Promise<void> => {
  for (let i = 0; i < count; i++) await hand(page).press(key);
};

describe('curves', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  it('divides a square by a quarter round by keys alone, bends it by a written radius and by dragging, and takes it all back', async () => {
    const { page, context, faults } = await opened.page();
    await page.goto(opened.numeric);
    await page.getByRole('button', { name: 'Blank, in inches' }).click();
    await page.getByRole('listbox', { name: /^The block First block/ }).waitFor();
    await pieces(page, '1, 0 seams');
    await page.keyboard.press('c');
    await hand(page).focus();
    await times(page, 6, 'ArrowRight');
    await hand(page).press('Enter');
    await times(page, 6, 'ArrowLeft');
    await times(page, 6, 'ArrowDown');
    await hand(page).press('Enter');
    const radius = page.getByRole('textbox', { name: 'Radius' });
    // marks 6 in from the corner: the quarter round about it
    assert.equal(await radius.inputValue(), '6');
    await hand(page).press('Enter');
    await pieces(page, '2, 1 seam');
    await page.getByText('Has curved seams, each in one run.').waitFor();
    // the edge is taken by its middle, and bent by a written radius; what does not reach is told
    const middle = 6 * Math.SQRT1_2;
    await page.mouse.click(...(await onGrid(page, middle, middle)));
    await page.mouse.click(...(await onGrid(page, middle, middle)));
    await page.getByRole('button', { name: 'Bend it' }).waitFor();
    await radius.fill('3');
    await radius.press('Enter');
    await page.getByText('So small a radius does not reach from end to end').first().waitFor();
    await radius.fill('10');
    await radius.press('Enter');
    await page.getByRole('button', { name: 'Bend it' }).click();
    await page.getByText('The edge is bent, with the patches on both sides of it.').waitFor({ state: 'attached' });
    // dragged to the straight line between its ends
    const rise = 10 - Math.sqrt(100 - 18);
    const [x, y] = await onGrid(page, 3 + rise * Math.SQRT1_2, 3 + rise * Math.SQRT1_2);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 10, y - 10, { steps: 3 });
    await page.mouse.move(...(await onGrid(page, 3, 3)), { steps: 6 });
    await page.mouse.up();
    await page.getByText('Sews in straight seams.').waitFor();
    await pieces(page, '2, 1 seam');
    for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
    await pieces(page, '1, 0 seams');
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('bends an edge of Mill Pond by keys and takes it back; its curved seams are sewn and its templates printed in the same words', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.local, 'Mill Pond');
    await page.goto(page.url().replace(/\/set.*$/, '/draft/shell'));
    await page.getByRole('listbox', { name: /^The block Shell/ }).waitFor();
    await pieces(page, '5, 4 seams');
    await page.keyboard.press('c');
    await hand(page).focus();
    // from the corner where a rib leaves the rim to the one where it comes to the hinge
    await times(page, 3, '.');
    await hand(page).press('Enter');
    await times(page, 3, '.');
    await hand(page).press('Enter');
    await page.getByRole('button', { name: 'Straight' }).waitFor();
    await hand(page).press('Enter');
    await page.getByText('The edge is bent, with the patches on both sides of it.').waitFor({ state: 'attached' });
    await page.keyboard.press('Control+z');
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());

    const planned = planQuilt(example('mill-pond'), { budget: { steps: 0 } });
    assert.ok(planned.ok);
    const { facts } = patternPages(planned.value, { chapters: ['blocks'] });
    const printed = facts.blocks.flatMap(({ steps }) => steps);
    const step = printed.findIndex(({ machine }) => /hollow/.test(machine));
    assert.ok(step >= 0);
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page.getByRole('link', { name: /^Begin/ }).press('Enter');
    const at = (number: number) => page.locator(`.sew-step:not(.is-behind)[aria-label="Step ${number}"]`).waitFor();
    await at(1);
    for (let i = 0; i < step; i++) {
      await page.keyboard.press('ArrowRight');
      await at(i + 2);
    }
    const plain = (text: string): string => text.replaceAll('\u200b', '');
    await page.getByRole('heading', { name: plain(printed[step]?.heading ?? '') }).waitFor();
    await page.locator('.sew-words > p', { hasText: plain(printed[step]?.machine ?? '') }).waitFor();
    assert.ok((await page.locator('.sew-board path').count()) > 2);
    assert.ok((await page.locator('.sew-machine path').count()) > 2);

    await page.keyboard.press('Control+p');
    await page.getByText(/^\d+ pages on .* Set in/).waitFor({ timeout: 60_000 });
    const chapter = page.getByRole('checkbox', { name: /^Templates/ });
    assert.ok(await chapter.isChecked());
    assert.deepEqual(faults, []);
    await context.close();
  });
});
