// Set in a real Chromium: several places at once by pointer, touch and keys; every way of setting; sections, frames, borders and
// sizes to reach; and the file that comes of it.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt } from '#craft';
import { becomes, drawn, kept, type Opened, openDemo, openWorkroom } from './page.ts';

const figureOf = (page: Page, stop: string) =>
  page.locator('.job-stops li', { has: page.getByText(stop, { exact: true }) }).locator('.job-figure');
const size = async (page: Page) => ((await figureOf(page, 'Set').textContent()) ?? '').replaceAll('\u00a0', ' ');
const quilt = (page: Page) => page.getByRole('listbox', { name: /^The quilt/ });
const chosen = (page: Page) => page.locator('[role=option][aria-selected=true]').allTextContents();
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' }).click();

/** How every block lies: its turn by its place. */
const turns = async (page: Page): Promise<readonly string[]> =>
  (await page.locator('[role=option]').allTextContents())
    .filter((words) => /row \d+, place/.test(words))
    .map((words) => `${/(between, )?row \d+, place \d+/.exec(words)?.[0]} ${/turned (\d+)/.exec(words)?.[1] ?? 0}`);

/** In the middle of a place of the throw, 6 × 6 blocks of 9 in borders of 5 in. */
const middleOf = async (page: Page, row: number, place: number) => {
  const box = await page.locator('.drawing-canvas').boundingBox();
  assert.ok(box);
  const margin = Math.min(28, box.width / 14, box.height / 14);
  const scale = Math.min(box.width - 2 * margin, box.height - 2 * margin) / 64;
  const at = (n: number): number => (5 + 9 * (n - 0.5)) * scale;
  return {
    x: box.x + (box.width - 64 * scale) / 2 + at(place),
    y: box.y + (box.height - 64 * scale) / 2 + at(row),
  };
};

/** The file that is saved, as a plan: or the test fails with its problems. */
const planOfFile = async (page: Page) => {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: 'Save to a file' }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  const planned = planQuilt(Buffer.concat(chunks).toString('utf8'), { budget: { steps: 0 } });
  assert.ok(planned.ok, planned.ok ? '' : JSON.stringify(planned.problems.map(({ code, path }) => [code, path])));
  return planned.value;
};

describe('setting a quilt', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`turns several places at once by keys, in one step that a reload keeps (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await openDemo(page, opened[where]);
      const was = await turns(page);
      await quilt(page).focus();
      await page.keyboard.press('End');
      for (let i = 0; i < 6 && !/place/.test((await chosen(page))[0] ?? ''); i++) await page.keyboard.press('ArrowUp');
      await page.keyboard.press('Shift+ArrowLeft');
      await page.keyboard.press('Shift+ArrowUp');
      assert.equal((await chosen(page)).length, 3);
      await page.getByRole('heading', { name: '3 places' }).waitFor();
      // one less again
      await page.keyboard.press('Space');
      assert.equal((await chosen(page)).length, 2);
      const places = (await chosen(page)).map((words) => /row \d+, place \d+/.exec(words)?.[0]);
      await page.keyboard.press('t');
      const turned = was.map((one) => {
        const [, place, turn] = /^(.*) (\d+)$/.exec(one) ?? [];
        return places.includes(place) ? `${place} ${(Number(turn) + 90) % 360}` : one;
      });
      await becomes(() => turns(page), turned);
      assert.equal((await chosen(page)).length, 2);
      await kept(page);
      await page.reload();
      await drawn(page);
      await becomes(() => turns(page), turned);
      await undo(page);
      await becomes(() => turns(page), was);
      assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('takes one place more by the command key and a click, and swaps two', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    const [one, other] = [await middleOf(page, 1, 1), await middleOf(page, 2, 3)];
    await page.mouse.click(one.x, one.y);
    await page.getByLabel('What lies here').selectOption({ label: 'Ember' });
    await page.getByRole('heading', { name: /^Plain piece/ }).waitFor();
    await page.keyboard.down('Control');
    await page.mouse.click(other.x, other.y);
    await page.keyboard.up('Control');
    await page.getByRole('heading', { name: '2 places' }).waitFor();
    await page.getByRole('button', { name: 'Swap the two' }).click();
    const lines = async () =>
      (await page.locator('[role=option]').allTextContents()).map((words) => words.replaceAll('\u00a0', ' '));
    await becomes(
      async () =>
        (await lines()).some((words) =>
          /^Piece [A-Z]+, plain piece, Ember, 9 × 9 in finished, cut 9½ × 9½ in, row 2, place 3/.test(words),
        ),
      true,
    );
    assert.ok((await lines()).some((words) => /^Log cabin, row 1, place 1/.test(words)));
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('takes places by touch one after another, and fills a row, a column and all of a block', async () => {
    const { page, context, faults } = await opened.page({ width: 390, height: 844, touch: 'touch' });
    await openDemo(page, opened.numeric);
    const several = page.getByRole('button', { name: 'Choose several' });
    await several.tap();
    await page.locator('.drawing-canvas').scrollIntoViewIfNeeded();
    for (const [row, place] of [
      [1, 1],
      [3, 4],
      [6, 6],
    ] as const) {
      const { x, y } = await middleOf(page, row, place);
      await page.touchscreen.tap(x, y);
    }
    assert.equal((await chosen(page)).length, 3);
    await page.getByRole('button', { name: 'The column' }).tap();
    assert.equal((await chosen(page)).length, 6);
    await page.getByRole('button', { name: 'All like this' }).tap();
    assert.equal((await chosen(page)).length, 36);
    await page.getByRole('button', { name: '180°' }).tap();
    await becomes(async () => (await turns(page)).every((line) => line.endsWith(' 180')), true);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('sets the quilt on point, in sections and straight again, each in one step, and loses no block', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    const was = await turns(page);
    await page.getByRole('button', { name: 'On point', exact: true }).click();
    // 6 · √2 · 9 in and borders of 10 in: 86.368, told to the ruler's eighth
    await becomes(() => size(page), 'about 86⅜ × 86⅜ in');
    await page.getByRole('button', { name: '½ in' }).click();
    await page.getByRole('combobox', { name: 'Between the blocks' }).selectOption({ label: 'Log cabin' });
    await page.getByRole('button', { name: 'Fill', exact: true }).click();
    await becomes(async () => (await turns(page)).length, 36 + 25);
    await page.getByRole('button', { name: 'Straight furrow' }).click();
    await becomes(
      async () =>
        new Set((await turns(page)).filter((line) => line.startsWith('row 1,')).map((line) => line.slice(-3))).size,
      1,
    );
    assert.equal((await planOfFile(page)).top.set.placed.length, 36 + 25);
    for (let i = 0; i < 4; i++) await undo(page);
    await becomes(() => turns(page), was);
    await page.getByRole('button', { name: 'In sections', exact: true }).click();
    await becomes(() => size(page), '64 × 64 in');
    await page.getByRole('button', { name: 'Straight', exact: true }).click();
    await becomes(() => turns(page), was);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('sets blocks of different sizes in sections, part by part, and writes a document that can be sewn', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    for (const count of ['Rows', 'Columns']) {
      await page.getByRole('textbox', { name: count, exact: true }).fill('1');
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'In sections', exact: true }).click();
    await becomes(() => size(page), '19 × 19 in');
    const part = page.getByRole('listitem').getByRole('button', { name: 'Log cabin', exact: true });
    await part.click();
    await page.getByRole('combobox', { name: 'What to put beside it' }).selectOption('strip');
    await page.getByRole('button', { name: 'Right', exact: true }).click();
    await page.getByRole('textbox', { name: 'Width of the strip' }).fill('2');
    await page.keyboard.press('Enter');
    await becomes(() => size(page), '21 × 19 in');
    await page.getByRole('button', { name: 'To the left', exact: true }).click();
    await part.click();
    await page.getByRole('combobox', { name: 'What to put beside it' }).selectOption('strip');
    await page.getByRole('button', { name: 'Below', exact: true }).click();
    await page.getByRole('button', { name: 'Take out', exact: true }).click();
    await becomes(() => size(page), '21 × 19 in');
    const { top } = await planOfFile(page);
    assert.deepEqual([top.set.width, top.set.height], [21, 19]);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('frames smaller blocks up to the common size by one tap', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('link', { name: /^Draft/ }).click();
    await page.getByRole('button', { name: 'Add from the collection' }).click();
    await page.getByRole('searchbox', { name: 'By name' }).fill('ohio');
    await page.getByRole('button', { name: /^Ohio Star/ }).click();
    await page.getByRole('textbox', { name: 'Side' }).fill('6');
    await page.keyboard.press('Enter');
    await page.getByRole('link', { name: /^Set/ }).click();
    await drawn(page);
    const { x, y } = await middleOf(page, 2, 2);
    await page.mouse.click(x, y);
    await page.getByLabel('What lies here').selectOption({ label: 'Ohio Star' });
    await page.getByRole('region', { name: 'Problems' }).waitFor();
    await page.getByRole('button', { name: 'Frame the 1 smaller block up to 9 × 9 in' }).click();
    await page.getByRole('region', { name: 'Problems' }).waitFor({ state: 'detached' });
    await becomes(() => size(page), '64 × 64 in');
    assert.equal((await planOfFile(page)).blocks.find(({ id }) => id === 'ohio-star')?.finished[0], 9);
    await undo(page);
    await page.getByRole('region', { name: 'Problems' }).waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('adds a pieced border that fits, another that is made to, and changes the order of borders', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('button', { name: 'flying geese' }).click();
    // 64 in are 8 geese of 8 in, 4 in high
    await page.getByText('8 along the top, 8 along a side, each 8 in long.').waitFor();
    await becomes(() => size(page), '72 × 72 in');
    await page.getByRole('button', { name: '4 in long, 16 × 16' }).click();
    await becomes(() => size(page), '68 × 68 in');
    await page.getByRole('button', { name: 'Further in: Outer border' }).click();
    // now it goes round 57 in: 15 of 4 in, with spacers of 1½
    await page.getByText(/15 along the top, 15 along a side, each 4\sin long; spacers 1½\sin/).waitFor();
    await page.getByRole('button', { name: /the strip inside it 1\sin wide/ }).click();
    await page.getByText('14 along the top, 14 along a side, each 4 in long.').waitFor();
    const { top } = await planOfFile(page);
    assert.deepEqual(
      top.set.borders.map(({ kind }) => kind),
      ['butted', 'pieced', 'butted'],
    );
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('comes to the size of a bed by one tap, and notes the bed', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('combobox', { name: 'For' }).selectOption('queen');
    await page.getByText('84 × 102 in covers it').waitFor();
    const ways = page.locator('.ways button');
    await becomes(() => ways.count(), 3);
    await ways.first().click();
    await becomes(() => size(page), '84 × 102 in');
    assert.equal((await planOfFile(page)).quilt.finish.bed?.size, 'queen');
    await undo(page);
    await becomes(() => size(page), '64 × 64 in');
    await page.getByRole('combobox', { name: 'For' }).selectOption('own');
    await page.getByRole('textbox', { name: 'Width in', exact: true }).first().fill('80');
    await page.getByRole('textbox', { name: 'Length' }).fill('98');
    await page.keyboard.press('Enter');
    await ways.first().click();
    await becomes(() => size(page), '80 × 98 in');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('does it all by the list of commands too', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const find = async (words: string) => {
      await page.keyboard.press('Control+k');
      await page.keyboard.type(words);
      await page.keyboard.press('Enter');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    };
    // what is not known yet cannot be chosen
    await page.locator('.arrangements[aria-busy=false]').waitFor();
    await find('every place');
    assert.equal((await chosen(page)).length, 36);
    const was = await turns(page);
    await find('turn what is chosen');
    await becomes(async () => (await turns(page)).every((line, i) => line !== was[i]), true);
    await find('arrange pinwheel');
    await find('on point');
    await becomes(() => size(page), 'about 86⅜ × 86⅜ in');
    await find('pieced border sawtooth');
    await page.getByRole('combobox', { name: /pieced of/ }).waitFor();
    await context.close();
  });
});
