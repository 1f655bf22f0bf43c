// Finish in a real Chromium: what the printed pages say stands on the screen, every value is changed in place, and what a way takes is
// told before it is taken.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { finishTold } from '#paper/pages';
import { becomes, drawn, kept, type Opened, openDemo, openWorkroom, plain } from './page.ts';

const examples = readdirSync('examples').filter((name) => name.endsWith('.quilt.json'));

const openFile = async (page: Page, at: string, name: string): Promise<void> => {
  await page.goto(at);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'From a file' }).click(),
  ]);
  await chooser.setFiles(`examples/${name}`);
  await drawn(page);
  await toFinish(page);
};

const toFinish = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: /^Finish/ }).click();
  await page.getByRole('heading', { name: 'Backing', exact: true }).waitFor();
};

const partOf = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
/** A row of the table of all parts: what it is, and what it takes. */
const rowOf = (page: Page, name: string) => page.getByRole('row', { name: new RegExp(`^${name} `) });

describe('finishing a quilt', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened.close());

  it('a file whose finish is at fault is mended in Finish, before it was ever planned', async () => {
    const { page, context, faults } = await opened.page();
    await page.goto(opened.numeric);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'From a file' }).click(),
    ]);
    await chooser.setFiles('examples/broken/narrow-binding.quilt.json');
    await page.getByRole('link', { name: 'The finish: binding' }).click();
    const binding = partOf(page, 'Binding');
    const cut = binding.getByRole('textbox', { name: 'Strips cut' });
    await page.getByRole('heading', { name: 'Binding', exact: true }).and(page.locator(':focus')).waitFor();
    assert.equal(await binding.getByText('is asked for').count(), 0);
    await cut.fill('2 1/4');
    await cut.press('Enter');
    await page.getByRole('region', { name: 'Problems' }).waitFor({ state: 'detached' });
    await rowOf(page, 'Binding').getByText('cut 2¼ in straight').waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('says what the pages say and draws what they draw, for every example', async () => {
    for (const name of examples) {
      const { page, context, faults } = await opened.page();
      await openFile(page, opened.local, name);
      const planned = planQuilt(readFileSync(`examples/${name}`, 'utf8'), { budget: { steps: 0 } });
      assert.ok(planned.ok);
      const plan = planned.value;
      const parts = finishTold({ plan, signs: clothSignsFor(plan), album: new Map() }).flatMap((one) => one.parts);
      const lines = parts.flatMap((part) => part.lines).map(plain);
      const shown = (await page.locator('.finish-told > p, .finish-told li').allTextContents()).map(plain);
      assert.deepEqual(
        lines.filter((line) => !shown.includes(line)),
        [],
        name,
      );
      const pictures = parts.flatMap(({ picture }) => (picture === undefined ? [] : [plain(picture.alt)]));
      const titles = (await page.locator('.finish-told svg title').allTextContents()).map(plain);
      assert.deepEqual(
        pictures.filter((alt) => !titles.includes(alt)),
        [],
        name,
      );
      assert.equal(titles.length, pictures.length + (plan.top.set.borders.length === 0 ? 0 : 1), name);
      assert.deepEqual(faults, [], name);
      await context.close();
    }
  });

  it('over plain http each value is changed in its place, redrawn, and taken back by one undo', async () => {
    const { page, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await toFinish(page);
    const backing = partOf(page, 'Backing');
    // 64 × 64 in and 4 in over on each side
    await becomes(
      () => rowOf(page, 'Backing').locator('td').first().textContent(),
      '72 × 72 in, 2 panels, seams from top to bottom',
    );
    await backing.getByRole('textbox', { name: /^Beyond the top/ }).fill('6');
    await page.keyboard.press('Enter');
    await becomes(
      () => rowOf(page, 'Backing').locator('td').first().textContent(),
      '76 × 76 in, 2 panels, seams from top to bottom',
    );
    assert.match(plain((await backing.locator('svg text').allTextContents()).join(' ')), /40 × 76 in/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await becomes(
      () => rowOf(page, 'Backing').locator('td').first().textContent(),
      '72 × 72 in, 2 panels, seams from top to bottom',
    );
    const binding = partOf(page, 'Binding');
    await binding.getByRole('textbox', { name: /^Strips cut/ }).fill('2 1/4');
    await page.keyboard.press('Enter');
    await binding.getByRole('button', { name: /^On the bias/ }).click();
    await page.getByRole('heading', { name: 'Binding on the bias' }).waitFor();
    await becomes(
      () => rowOf(page, 'Binding').locator('td').first().textContent(),
      '268 in, cut 2¼ in on the bias, 0 joins',
    );
    await partOf(page, 'Quilting')
      .getByRole('textbox', { name: /^Lines apart/ })
      .fill('8');
    await page.keyboard.press('Enter');
    // 64 in in spans of at most 8: 7 lines each way
    await page.locator('.finish-told p', { hasText: /7 from top to bottom, 8\sin apart/ }).waitFor();
    await page.getByRole('button', { name: 'Add a bed' }).click();
    await becomes(
      () => rowOf(page, 'The bed').locator('td').first().textContent(),
      '63 × 97 in asked for: this quilt is smaller',
    );
    assert.match(
      (await partOf(page, 'The bed').locator('.finish-warning').textContent()) ?? '',
      /lacks 33\sin in length/,
    );
    await kept(page);
    await page.reload();
    await page.getByRole('heading', { name: 'Binding on the bias' }).waitFor();
    assert.deepEqual(faults, []);
  });

  it('what a way takes is told before it is chosen, and is what is then bought', async () => {
    const { page, faults } = await opened.page();
    await openFile(page, opened.local, 'crumb-tin.quilt.json');
    const all = async () =>
      /All cloth as it is bought: ([\d.]+)/.exec((await page.locator('.finish-sum').textContent()) ?? '')?.[1];
    const way = partOf(page, 'Backing').getByRole('button', { name: /^From top to bottom/ });
    await becomes(() => way.textContent(), 'From top to bottom ⅜ yd more of Oat, 3.75 crowns more');
    assert.equal(await all(), '58.50');
    await way.click();
    await page.getByText('All cloth as it is bought: 62.25').waitFor();
    await becomes(() => way.textContent(), 'From top to bottom as it is');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('All cloth as it is bought: 58.50').waitFor();
    // at twice the price
    await page.getByRole('textbox', { name: /^Oat, a yard/ }).fill('20');
    await page.keyboard.press('Enter');
    await becomes(() => way.textContent(), 'From top to bottom ⅜ yd more of Oat, 7.50 crowns more');
    assert.deepEqual(faults, []);
  });

  it('by keys alone a quilt without a finish gets what it lacks, and every part has its address', async () => {
    const { page, faults } = await opened.page();
    await page.goto(opened.numeric);
    await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
    await page.getByRole('link', { name: /^Set/ }).waitFor();
    await page.keyboard.press('6');
    await page.getByText('No backing, batting or binding yet.').waitFor();
    await page.keyboard.press('a');
    await page.getByText('No backing, batting or binding yet.').waitFor({ state: 'detached' });
    await becomes(
      () =>
        page
          .getByRole('link', { name: /^Finish/ })
          .locator('.job-figure')
          .textContent(),
      '44 × 44 cm back',
    );
    await page.keyboard.press('Control+z');
    await page.getByText('No backing, batting or binding yet.').waitFor();
    const at = page.url();
    await page.goto(`${at}/binding`);
    await page.waitForFunction(() => document.activeElement?.textContent === 'Binding');
    await page.reload();
    await page.waitForFunction(() => document.activeElement?.textContent === 'Binding');
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement?.textContent), 'Add a binding');
    await page.keyboard.press('Enter');
    await page.getByRole('textbox', { name: /^Strips cut/ }).waitFor();
    // the key is gone, and who works by keys stays at the binding
    await page.waitForFunction(() => document.activeElement?.id === 'finish-binding');
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement?.tagName), 'SELECT');
    assert.deepEqual(faults, []);
  });

  it('what cannot be sewn is told with its mend, and the last finish that could be planned stays in sight', async () => {
    const { page } = await opened.page();
    await openDemo(page, opened.local);
    await toFinish(page);
    await partOf(page, 'Binding')
      .getByRole('textbox', { name: /^Strips cut/ })
      .fill('1/2');
    await page.keyboard.press('Enter');
    const problem = page.getByRole('region', { name: 'Problems' });
    await problem.getByText('The finish: binding').waitFor();
    assert.equal(await partOf(page, 'Binding').locator('svg').count(), 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await problem.waitFor({ state: 'detached' });
  });
});
