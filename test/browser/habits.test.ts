// Habits in a real Chromium: looking closer by wheel, two fingers and keys; units that change no stored value; work that can be
// ended; what is wrong, where it lies.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { type Opened, openDemo, openWorkroom } from './page.ts';

/** Where along its middle row the drawing is painted, in shares of the width. */
const painted = (page: Page): Promise<{ from: number; to: number }> =>
  page.evaluate(async () => {
    await new Promise((resolve) => setTimeout(resolve, 300));
    const canvas = document.querySelector<HTMLCanvasElement>('.drawing-canvas') as HTMLCanvasElement;
    const to = canvas.getContext('2d') as CanvasRenderingContext2D;
    const { data } = to.getImageData(0, Math.round(canvas.height / 2), canvas.width, 1);
    const columns = Array.from({ length: canvas.width }, (_, x) => x).filter((x) => (data[x * 4 + 3] ?? 0) > 200);
    return { from: (columns[0] ?? 0) / canvas.width, to: (columns.at(-1) ?? 0) / canvas.width };
  });
const widthOf = ({ from, to }: { from: number; to: number }): number => to - from;

const savedText = async (page: Page): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks).toString('utf8');
};

const like = async (page: Page, choice: string): Promise<void> => {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('menuitem', { name: 'How you like it' }).click();
  await page.getByRole('radio', { name: choice, exact: true }).check();
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
};

describe('habits', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  it('the drawing is moved and looked at closer by wheel, by keys and by buttons, and whole again', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const whole = await painted(page);
    const box = await page.locator('.drawing-canvas').boundingBox();
    assert.ok(box);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.keyboard.down('Control');
    await page.mouse.wheel(0, 120);
    await page.keyboard.up('Control');
    const smaller = await painted(page);
    assert.ok(widthOf(smaller) < 0.8 * widthOf(whole), 'ctrl and wheel');
    await page.mouse.wheel(60, 0);
    const aside = await painted(page);
    assert.ok(aside.from < smaller.from && Math.abs(widthOf(aside) - widthOf(smaller)) < 0.01, 'wheel alone');

    const list = page.getByRole('listbox', { name: /^The quilt/ });
    await list.press('0');
    assert.ok(Math.abs(widthOf(await painted(page)) - widthOf(whole)) < 0.005, '0');
    await list.press('-');
    assert.ok(widthOf(await painted(page)) < 0.9 * widthOf(whole), '-');
    await list.press('+');
    assert.ok(Math.abs(widthOf(await painted(page)) - widthOf(whole)) < 0.005, '+');
    await list.press('Control+ArrowRight');
    assert.ok((await painted(page)).from < whole.from, 'the command key and an arrow');
    await page.getByRole('button', { name: 'Whole' }).click();
    assert.ok(Math.abs((await painted(page)).from - whole.from) < 0.005, 'Whole');
    await page.getByRole('button', { name: 'Smaller' }).click();
    assert.ok(widthOf(await painted(page)) < 0.9 * widthOf(whole), 'Smaller');
    await context.close();
  });

  it('two fingers move it and make it smaller and larger; one finger moves it and a tap chooses', async () => {
    const { page, context } = await opened.page({ width: 820, height: 1100, touch: 'touch' });
    await openDemo(page, opened.numeric);
    const whole = await painted(page);
    const box = await page.locator('.drawing-canvas').boundingBox();
    assert.ok(box);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const hand = await context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly (readonly [number, number])[]) =>
      hand.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(([px, py], id) => ({ x: px, y: py, id })),
      });
    await touch('touchStart', [[x - 120, y]]);
    await touch('touchStart', [
      [x - 120, y],
      [x + 120, y],
    ]);
    for (let step = 1; step <= 6; step++) {
      await touch('touchMove', [
        [x - 120 + step * 10, y],
        [x + 120 - step * 10, y],
      ]);
    }
    await touch('touchEnd', []);
    const pinched = await painted(page);
    // from 240 px apart to 120: half as large
    assert.ok(Math.abs(widthOf(pinched) / widthOf(whole) - 0.5) < 0.06, `${widthOf(pinched) / widthOf(whole)}`);

    await touch('touchStart', [[x, y]]);
    for (let step = 1; step <= 5; step++) await touch('touchMove', [[x - step * 12, y]]);
    await touch('touchEnd', []);
    const moved = await painted(page);
    assert.ok(Math.abs(moved.from - pinched.from + 60 / box.width) < 0.02, 'one finger');
    assert.equal(await page.locator('[role=option][aria-selected=true]').count(), 0, 'moving chooses nothing');
    await page.touchscreen.tap(x - 60, y + 10);
    await page.locator('[role=option][aria-selected=true]').waitFor({ state: 'attached' });
    await context.close();
  });

  it('in centimetres and back, every figure is shown in them and nothing stored is touched', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    const before = await savedText(page);
    const border = page.getByRole('textbox', { name: /Outer border/ });
    assert.equal(await border.inputValue(), '3½');
    await like(page, 'in centimetres');
    // 64 in and 3½ in, by 2.54
    await page.getByText('162.56 × 162.56 cm').first().waitFor();
    assert.equal(await border.inputValue(), '8.89');
    await border.focus();
    await page.keyboard.press('Enter');
    assert.equal(await savedText(page), before);
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    // what is typed is meant in the unit that is shown, and kept as it was written
    await border.fill('10');
    await page.keyboard.press('Enter');
    assert.match(await savedText(page), /"width": "10 cm"/);
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.equal(await savedText(page), before);
    await like(page, 'as the quilt has them');
    assert.equal(await border.inputValue(), '3½');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('a search says that it goes on, and ends when it is told to', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const line = page.getByText('Looking for layouts that take less cloth');
    await line.waitFor();
    await page.getByRole('button', { name: 'These will do' }).click();
    await line.waitFor({ state: 'detached' });
    await context.close();
  });

  it('a cloth too narrow is told with what, where and how to mend it, and its pieces are lit', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('link', { name: /^Colour/ }).click();
    const shot = () => page.locator('.drawing-canvas').screenshot();
    await page
      .getByRole('button', { name: /^Ember/ })
      .first()
      .click();
    await page.waitForTimeout(300);
    const plain = await shot();
    await page.getByRole('textbox', { name: /Usable width/ }).fill('1');
    await page.keyboard.press('Enter');
    const problems = page.getByRole('region', { name: 'Problems' });
    await problems.waitFor();
    assert.match((await problems.textContent()) ?? '', /Cloth Ember/);
    assert.ok((await problems.locator('p').count()) >= 3, 'what, how to mend it, where');
    await page.waitForTimeout(300);
    const isLit = await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.drawing-canvas') as HTMLCanvasElement;
      const { data } = (canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(
        0,
        0,
        canvas.width,
        canvas.height,
      );
      let count = 0;
      for (let i = 0; i < data.length; i += 4)
        if (data[i] === 0xa1 && data[i + 1] === 0x3d && data[i + 2] === 0x2b) count += 1;
      return count;
    });
    assert.ok(isLit > 200, `${isLit} pixels of the mark`);
    assert.notDeepEqual(await shot(), plain);
    await page.getByRole('button', { name: 'Undo' }).click();
    await problems.waitFor({ state: 'hidden' });
    await context.close();
  });
});
