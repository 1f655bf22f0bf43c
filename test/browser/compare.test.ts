// Compare in a real Chromium: two versions side by side to one scale, restore points that outlive the page, and going back in one step.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt } from '#craft';
import { becomes, drawn, kept, type Opened, openDemo, openWorkroom, plain } from './page.ts';

/** What a line says: the first, the second, the difference. */
const lineOf = async (page: Page, name: string): Promise<string> =>
  (
    await page
      .locator('.differences tbody tr', { has: page.getByRole('rowheader', { name, exact: true }) })
      .locator('td')
      .allTextContents()
  )
    .map(plain)
    .join(' | ');

const toCompare = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('menuitem', { name: 'To Compare' }).click();
  await page.getByRole('heading', { name: 'Restore points' }).waitFor();
};

/** The text of the file that is saved. */
const fileOf = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: 'Save to a file' }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks).toString('utf8');
};

const points = (page: Page) => page.locator('.point-list input');
const pointNames = async (page: Page): Promise<string> =>
  (await points(page).evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))).join(' | ');

describe('comparing versions', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened.close());

  it('a point kept by one key before a choice is weighed against what came of it, as the plans of both say', async () => {
    const { page, faults } = await opened.page({ width: 390 });
    await openDemo(page, opened.numeric);
    await page.keyboard.press('k');
    await page.getByText('Restore point kept: As it began').waitFor();
    await page.getByRole('button', { name: 'Add a border' }).click();
    await kept(page);
    await toCompare(page);
    await becomes(() => lineOf(page, 'Size'), '64 × 64 in | 70 × 70 in | 6 in wider and 6 in longer');
    const text = readFileSync('examples/harvest-home-throw.quilt.json', 'utf8');
    const document = JSON.parse(text) as { top: { borders: object[] }; fabrics: { id: string }[] };
    const border = { width: '3', fabric: document.fabrics.at(-1)?.id };
    const other = { ...document, top: { ...document.top, borders: [...document.top.borders, border] } };
    const [was, is] = [document, other].map((one) => {
      const planned = planQuilt(one, { budget: { steps: 0 } });
      assert.ok(planned.ok);
      return planned.value.time.seams;
    }) as [number, number];
    await becomes(() => lineOf(page, 'Seams'), `${was} | ${is} | ${is - was} more`);
    // 64 + 64 + 64 + 64 and 12 in of tail; 70 in a side
    assert.equal(await lineOf(page, 'Binding'), '268 in | 292 in | 24 in longer');
    assert.equal(await lineOf(page, 'Backing'), '72 × 72 in | 78 × 78 in | 6 in wider and 6 in longer');
    assert.equal(await lineOf(page, 'Blocks'), '36 | 36 | the same');
    // to one scale
    const widths = await page
      .locator('.pictures canvas')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().width));
    assert.ok(Math.abs((widths[0] ?? 0) / (widths[1] ?? 1) - 64 / 70) < 0.001, widths.join());
    const rooms = await page
      .locator('.pictures figure')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().width));
    assert.ok(
      widths.every((width, n) => width <= (rooms[n] ?? 0) + 1),
      `${widths.join()} in ${rooms.join()}`,
    );
    assert.deepEqual(faults, []);
  });

  it('what is weighed follows every edit, and undo', async () => {
    const { page, faults } = await opened.page();
    await openDemo(page, opened.local);
    await page.getByRole('button', { name: 'Add a border' }).click();
    await toCompare(page);
    await becomes(() => lineOf(page, 'Size'), '64 × 64 in | 70 × 70 in | 6 in wider and 6 in longer');
    await page.getByRole('button', { name: 'Undo' }).click();
    await becomes(() => lineOf(page, 'Size'), '64 × 64 in | 64 × 64 in | the same');
    await page.getByText('In all these figures the two are the same.').waitFor();
    await page.getByRole('button', { name: 'Redo' }).click();
    await becomes(() => lineOf(page, 'Size'), '64 × 64 in | 70 × 70 in | 6 in wider and 6 in longer');
    await page.keyboard.press('x');
    await becomes(() => lineOf(page, 'Size'), '70 × 70 in | 64 × 64 in | 6 in narrower and 6 in shorter');
    // an address of what is weighed
    await page.reload();
    await becomes(() => lineOf(page, 'Size'), '70 × 70 in | 64 × 64 in | 6 in narrower and 6 in shorter');
    assert.deepEqual(faults, []);
  });

  it('going back to a point is one step, byte for byte, and undo brings back what was', async () => {
    const { page, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    const begun = await fileOf(page);
    await page.keyboard.press('k');
    await page.getByText('Restore point kept').waitFor();
    await page.getByRole('button', { name: 'Add a border' }).click();
    await page.getByRole('button', { name: 'Sawtooth', exact: false }).first().waitFor();
    await page.getByRole('textbox', { name: 'Name of the quilt' }).fill('Another');
    await kept(page);
    const later = await fileOf(page);
    assert.notEqual(later, begun);
    await toCompare(page);
    await page.getByRole('button', { name: 'Go back to As it began' }).click();
    await page.locator('.job-stops:not(.is-behind)').waitFor();
    assert.equal(await fileOf(page), begun);
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.equal(await fileOf(page), later);
    await page.getByRole('button', { name: 'Redo' }).click();
    assert.equal(await fileOf(page), begun);
    await kept(page);
    assert.deepEqual(faults, []);
  });

  it('points outlive the page, are told to another tab, renamed, removed and brought back, and go with their quilt', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.keyboard.press('k');
    await page.keyboard.press('k');
    await toCompare(page);
    await becomes(() => pointNames(page), 'As it began 2 | As it began');
    const other = await context.newPage();
    await other.goto(page.url());
    await becomes(() => pointNames(other), 'As it began 2 | As it began');
    await points(other).first().fill('Before the borders');
    await other.keyboard.press('Enter');
    await becomes(() => pointNames(page), 'Before the borders | As it began');
    await page.reload();
    await becomes(() => pointNames(page), 'Before the borders | As it began');
    await page.getByRole('button', { name: 'Remove Before the borders' }).click();
    await becomes(() => pointNames(other), 'As it began');
    await page.waitForFunction(() => document.activeElement?.textContent === 'Bring it back');
    await page.keyboard.press('Enter');
    await becomes(() => pointNames(other), 'Before the borders | As it began');
    const name = await page.getByRole('textbox', { name: 'Name of the quilt' }).inputValue();
    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('button', { name: `Remove ${name}` }).click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.getByText('None yet in this browser').waitFor();
    const left = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const opening = indexedDB.open('seamstead');
          opening.onsuccess = () => {
            const counting = opening.result.transaction('steps').objectStore('steps').count();
            counting.onsuccess = () => resolve(counting.result);
          };
        }),
    );
    assert.equal(left, 0);
    assert.deepEqual(faults, []);
  });

  it('where the browser has no database points are kept in its plain storage, and one without room is told of', async () => {
    const { page, context } = await opened.page();
    // as text: a function would be sent with names that only a compiler knows
    await context.addInitScript({
      content: `Object.defineProperty(window, 'indexedDB', { get() { throw new DOMException('closed', 'SecurityError'); } });`,
    });
    await openDemo(page, opened.numeric);
    await page.keyboard.press('k');
    await page.getByText('Restore point kept').waitFor();
    await page.evaluate(() => {
      let text = 'x'.repeat(1_000_000);
      for (let n = 0; text.length > 100; n++) {
        try {
          localStorage.setItem(`fill ${n}`, text);
        } catch {
          text = text.slice(0, text.length / 2);
        }
      }
    });
    await page.keyboard.press('k');
    await page.getByText('the browser’s storage is full').first().waitFor();
    await toCompare(page);
    await becomes(() => pointNames(page), 'As it began');
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage)) if (key.startsWith('fill')) localStorage.removeItem(key);
    });
    await page.getByRole('button', { name: 'Keep a restore point' }).first().click();
    await becomes(() => pointNames(page), 'As it began 2 | As it began');
    await page.reload();
    await becomes(() => pointNames(page), 'As it began 2 | As it began');
  });

  it('a step, another size and another quilt are weighed too, and a version becomes a quilt of its own', async () => {
    const { page, faults } = await opened.page();
    await openDemo(page, opened.local, 'Lantern Lane');
    await kept(page);
    await openDemo(page, `${opened.local}#/`);
    await page.getByRole('textbox', { name: /Outer border/ }).fill('5');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Every place' }).click();
    await page.getByRole('button', { name: 'Add a border' }).click();
    await toCompare(page);
    const first = page.getByRole('combobox', { name: 'First' });
    await first.selectOption({ label: 'Before “Add a border”' });
    await becomes(() => lineOf(page, 'Size'), '67 × 67 in | 73 × 73 in | 6 in wider and 6 in longer');
    await first.selectOption({ label: 'Lantern Lane' });
    await page.locator('.pictures figcaption', { hasText: 'Lantern Lane' }).waitFor();
    await page.locator('.differences tbody tr', { hasText: 'only in the first' }).first().waitFor();
    await first.selectOption({ label: 'As it began' });
    await becomes(() => lineOf(page, 'Size'), '64 × 64 in | 73 × 73 in | 9 in wider and 9 in longer');
    await page.getByRole('button', { name: 'A quilt of its own: As it began' }).click();
    await drawn(page);
    assert.equal(
      await page.getByRole('textbox', { name: 'Name of the quilt' }).inputValue(),
      'Harvest Home, As it began',
    );
    assert.deepEqual(faults, []);
  });

  it('another quilt is planned anew when another tab changes it', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local, 'Lantern Lane');
    const lantern = page.url();
    await openDemo(page, `${opened.local}#/`);
    await toCompare(page);
    await page.getByRole('combobox', { name: 'First' }).selectOption({ label: 'Lantern Lane' });
    await becomes(() => lineOf(page, 'Size'), '42 × 52 in | 64 × 64 in | 22 in wider and 12 in longer');
    const other = await context.newPage();
    await other.goto(lantern);
    await drawn(other);
    await other.getByRole('button', { name: 'Add a border' }).click();
    await becomes(() => lineOf(page, 'Size'), '48 × 58 in | 64 × 64 in | 16 in wider and 6 in longer');
  });

  it('a quilt that cannot be sewn is told of in its place, and the other version stands', async () => {
    const { page } = await opened.page();
    await openDemo(page, opened.local);
    await page.getByRole('textbox', { name: /Outer border/ }).fill('1/64');
    await page.keyboard.press('Enter');
    await page.getByRole('region', { name: 'Problems' }).waitFor();
    await toCompare(page);
    await page.locator('.pictures figure', { hasText: 'Now' }).getByText('It cannot be sewn as it stands').waitFor();
    await page.locator('.pictures figure', { hasText: 'As it began' }).locator('canvas').waitFor();
    await page.getByRole('button', { name: 'Go back to this one: As it began' }).click();
    await page.getByRole('region', { name: 'Problems' }).waitFor({ state: 'detached' });
  });

  it('where a version never could be sewn, no lines are waited for: what to do is told', async () => {
    const { page, faults } = await opened.page();
    await page.goto(opened.numeric);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'From a file' }).click(),
    ]);
    const document = JSON.parse(readFileSync('examples/harvest-home-throw.quilt.json', 'utf8')) as { finish: object };
    const buffer = Buffer.from(JSON.stringify({ ...document, finish: { binding: { fabric: 'lost' } } }));
    await chooser.setFiles({ name: 'lost.quilt.json', mimeType: 'application/json', buffer });
    await page.getByRole('region', { name: 'Problems' }).waitFor();
    await toCompare(page);
    const line = page.getByRole('region', { name: 'Line by line' });
    await becomes(
      () => line.textContent(),
      'There are no figures before it can be sewn: mend what is listed, or choose another.',
    );
    assert.deepEqual(faults, []);
  });

  it('tells a size that no ruler has as the pages tell it, and no figure runs into the next one', async () => {
    const { page, context } = await opened.page({ width: 820, height: 1180, touch: 'touch' });
    const heron = JSON.parse(readFileSync('examples/heron-hanging.quilt.json', 'utf8'));
    const row = Array.from({ length: 3 }, () => ({ block: 'cabin' }));
    const between = Array.from({ length: 2 }, () => [{ plain: 'deep' }, { plain: 'deep' }]);
    const set = { set: 'on-point', rows: [row, row, row], between, settingFabric: 'sand' };
    const text = JSON.stringify({ ...heron, top: { ...set, borders: heron.top.borders } });
    await page.goto(opened.numeric);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'From a file' }).click(),
    ]);
    await chooser.setFiles({
      name: 'on-point.quilt.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await drawn(page);
    await toCompare(page);
    // by hand: three blocks of 24 cm on point and two borders of 2 and 6 cm are 3 · 24 · √2 + 16 = 117.82 cm
    await becomes(() => lineOf(page, 'Size'), 'about 117.8 × 117.8 cm | about 117.8 × 117.8 cm | the same');
    const wide = () =>
      page
        .locator('.differences td, .differences th')
        .evaluateAll((cells) =>
          cells.filter((cell) => cell.scrollWidth > cell.clientWidth).map((cell) => cell.innerHTML),
        );
    for (const width of [820, 1024, 1280, 390]) {
      await page.setViewportSize({ width, height: 1180 });
      assert.deepEqual(await wide(), [], `at ${width}`);
    }
    await context.close();
  });
});
