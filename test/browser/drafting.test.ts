// Drafting in a real Chromium: by taps and by keys alone, with faults told at their place; and blocks carried from quilt to quilt.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { drawn, kept, type Opened, openDemo, openWorkroom, sideBySide } from './page.ts';

const hand = (page: Page) => page.getByRole('application');
const blockList = (page: Page, name: string) => page.getByRole('listbox', { name: new RegExp(`^The block ${name}`) });
const fact = (page: Page, name: string) =>
  page.locator('.facts dt', { hasText: name }).locator('xpath=following-sibling::dd[1]');

const blank = async (page: Page, at: string): Promise<void> => {
  await page.goto(at);
  await page.getByRole('button', { name: 'Blank, in inches' }).click();
  await blockList(page, 'First block').waitFor();
};

/** A tap on a place of the grid of eight squares a side. */
const tap = async (page: Page, x: number, y: number): Promise<void> => {
  const box = await page.locator('.drawing-canvas').boundingBox();
  if (box === null) assert.fail('no drawing');
  const margin = Math.min(28, box.width / 14, box.height / 14);
  const side = Math.min(box.width, box.height) - 2 * margin;
  const [left, top] = [(box.width - side) / 2, (box.height - side) / 2];
  await page.mouse.click(box.x + left + (x * side) / 8, box.y + top + (y * side) / 8);
};

const pieces = async (page: Page, wanted: string): Promise<void> => {
  await fact(page, 'Pieces').getByText(wanted).waitFor();
};

describe('drafting', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`rules a seam by two taps and another by keys alone, and takes both back (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await blank(page, opened[where]);
      await pieces(page, '1, 0 seams');
      await page.getByRole('button', { name: 'Rule a seam' }).click();
      await tap(page, 0, 0);
      await tap(page, 8, 8);
      await pieces(page, '2, 1 seam');
      // by keys: from the corner before along the edge to the middle of the top, and down to the seam
      await page.keyboard.press('.');
      await hand(page).press('ArrowRight');
      for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Lead it here' }).waitFor();
      for (let i = 0; i < 4; i++) await hand(page).press('ArrowDown');
      await page.keyboard.press('Enter');
      await pieces(page, '3, 2 seams');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
      await pieces(page, '1, 0 seams');
      assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('lays a patch, tells a gap and an overlap when it is moved, and mends both at one stroke each', async () => {
    const { page, context, faults } = await opened.page();
    await blank(page, opened.numeric);
    await page.getByRole('button', { name: 'Lay a patch' }).click();
    await page.getByRole('textbox', { name: 'Side' }).first().fill('2');
    await page.keyboard.press('Enter');
    await tap(page, 0.5, 0.5);
    // a square in the corner leaves one patch with a notch, whose inner corner is set in
    await pieces(page, '2, 1 seam');
    await page.getByText('Has corners to set in.').waitFor();
    await page.getByRole('button', { name: 'Move patches' }).click();
    await hand(page).press('ArrowRight');
    await page.getByText('1 gap: no patch lies there').waitFor();
    await page.getByText('1 overlap: two patches lie there').waitFor();
    await page.getByText('Still to mend before the quilt can be sewn').waitFor();
    await kept(page);
    // the first page has its name, and says why there is no picture; the block is told by the name that it has there
    const draft = page.url();
    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('link', { name: /still to mend New quilt/ }).waitFor();
    await page.getByRole('link', { name: /still to mend First block/ }).waitFor();
    await page.goto(draft.replace(/draft.*/, 'set'));
    await page
      .getByText(/^.?Block “First block” has a hole of /)
      .first()
      .waitFor();
    await page.goto(draft);
    await page.reload();
    await page.getByText('1 gap: no patch lies there').waitFor();
    await page.getByRole('button', { name: 'Fill the gap' }).click();
    await page.getByRole('button', { name: 'Cut away what lies under' }).click();
    await pieces(page, '3, ');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('makes a block oblong, rules a seam on it, and square again', async () => {
    const { page, context, faults } = await opened.page();
    await blank(page, opened.numeric);
    await page.getByRole('checkbox', { name: 'Oblong' }).check();
    await page.getByRole('textbox', { name: /^Down/ }).last().fill('12');
    await page.keyboard.press('Enter');
    await fact(page, 'Finished').getByText('8 × 12 in').waitFor();
    // a size that a ruler has keeps it as long as it is wide: 7¾ · 12 / 8 = 11⅝
    await page.getByRole('button', { name: '7¾ × 11⅝ in' }).click();
    await fact(page, 'Finished').getByText('7¾ × 11⅝ in').waitFor();
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Rule a seam' }).click();
    await hand(page).focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await pieces(page, '2, 1 seam');
    await page.getByRole('button', { name: 'Choose patches' }).click();
    await blockList(page, 'First block').press('Home');
    // half of 8 × 12 in, and twice the usual seam of ¼ in each way
    await page.getByText('cut 8½ × 6½ in').first().waitFor({ state: 'attached' });
    await page.getByRole('checkbox', { name: 'Oblong' }).uncheck();
    await fact(page, 'Finished').getByText('8 × 8 in').waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('makes a pinwheel by keys alone: a triangle laid, repeated round the middle, mirrored, joined and taken back', async () => {
    const { page, context, faults } = await opened.page();
    await blank(page, opened.numeric);
    await page.keyboard.press('p');
    const shape = page.getByRole('combobox', { name: 'Shape' });
    await shape.focus();
    await page.keyboard.press('h');
    await page.getByRole('textbox', { name: 'Side' }).first().focus();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('4');
    await page.keyboard.press('Enter');
    await hand(page).focus();
    await page.keyboard.press('Enter');
    await pieces(page, '2, 1 seam');
    await page.keyboard.press('Shift+R');
    // four triangles, and between them one patch of four points
    await pieces(page, '5, ');
    await page.keyboard.press('e');
    const list = blockList(page, 'First block');
    await list.focus();
    await page.keyboard.press('Shift+A');
    await page.getByRole('heading', { name: '5 patches chosen' }).waitFor();
    await page.keyboard.press('m');
    await page.keyboard.press('t');
    await pieces(page, '5, ');
    await page.keyboard.press('j');
    await pieces(page, '1, 0 seams');
    // joined, turned, mirrored and repeated were four gestures: before them the first triangle lies alone
    for (let i = 0; i < 4; i++) await page.keyboard.press('Control+z');
    await pieces(page, '2, 1 seam');
    await page.keyboard.press('Control+z');
    await pieces(page, '1, 0 seams');
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('makes a log cabin a drawing and takes a seam of it out, and gives the cabin back', async () => {
    const { page, context, faults } = await opened.page();
    await blank(page, opened.local);
    await page.getByRole('button', { name: 'Add a log cabin' }).click();
    await blockList(page, 'Log cabin').waitFor();
    await pieces(page, '13, 12 seams');
    await page.getByRole('button', { name: 'Make a drawing of it' }).click();
    await page.getByRole('button', { name: 'Rule a seam' }).waitFor();
    await pieces(page, '13, 12 seams');
    const list = blockList(page, 'Log cabin');
    await list.press('Home');
    await page.keyboard.press('Shift+ArrowDown');
    await page.getByRole('heading', { name: '2 patches chosen' }).waitFor();
    await page.keyboard.press('j');
    await pieces(page, '12, ');
    await page.keyboard.press('Control+z');
    await pieces(page, '13, 12 seams');
    await page.keyboard.press('Control+z');
    await page.getByRole('textbox', { name: 'Rounds', exact: true }).waitFor();
    await pieces(page, '13, 12 seams');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('has a log cabin pieced on foundations: its pieces are cut with room, its sheets are printed, and both are taken back', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('link', { name: /^Draft/ }).click();
    await fact(page, 'On foundations').getByText('in one').waitFor();
    const list = blockList(page, 'Log cabin');
    await list.press('Home');
    const outermost = (size: string) =>
      list
        .getByRole('option', { selected: true })
        .filter({ hasText: `Piece K, Honey, cut ${size} in` })
        .waitFor({ state: 'attached' });
    await outermost('8½ × 1½');
    const onFoundations = page.getByRole('checkbox', { name: 'Pieced on foundations' });
    await onFoundations.check();
    // two allowances more than its 8 × 1 in on every side: docs/formulas.md#foundation
    await outermost('9 × 2');
    await page.keyboard.press('Control+p');
    await page.getByRole('checkbox', { name: 'Foundations · usual', checked: true }).waitFor();
    await page.getByRole('link', { name: /^Draft/ }).click();
    await onFoundations.uncheck();
    await list.press('Home');
    await outermost('8½ × 1½');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    assert.ok(!(await onFoundations.isChecked()));
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('carries a block to another quilt with its cloths, and begins a quilt with it', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('link', { name: /^Draft/ }).click();
    await blockList(page, 'Log cabin').waitFor();
    await page.getByRole('button', { name: 'Copy for another quilt' }).click();
    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
    await blockList(page, 'First block').waitFor();
    await page.locator('body').press('Control+v');
    await blockList(page, 'Log cabin').waitFor();
    // 9 in, as large as it was
    await fact(page, 'Finished').getByText('22.86 × 22.86 cm').waitFor();
    await kept(page);

    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('button', { name: 'Begin a quilt with Log cabin' }).first().click();
    await drawn(page);
    assert.equal(await page.getByRole('textbox', { name: 'Name of the quilt' }).inputValue(), 'New quilt');
    assert.deepEqual(faults, []);
    await context.close();
  });
});
