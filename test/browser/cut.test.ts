// Cut in a real Chromium: the cloths and what is bought of them, pieces and where they go, directions with their ticks, the left hand,
// and layouts that become better while one looks.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt, type QuiltPlan } from '#craft';
import { clothSignsFor, signOf } from '#paper/cloth';
import { boughtText } from '#paper/pages';
import { openSolver } from '#solver';
import { becomes, kept, type Opened, openWorkroom, plain, type Tried } from './page.ts';

const openCut = async (page: Page, at: string, file: string): Promise<string> => {
  await page.goto(`${at}#/demo/${file}`);
  await page.waitForURL(/#\/quilt\//);
  const id = /quilt\/([^/]+)/.exec(page.url())?.[1] ?? assert.fail(page.url());
  await page.goto(`${at}#/quilt/${id}/cut`);
  await page.getByRole('navigation', { name: 'Cloths' }).waitFor();
  return id;
};

const cloths = async (page: Page): Promise<readonly string[]> =>
  (await page.locator('.cut-cloths a:not([href*="~ways"])').allInnerTexts()).map((text) =>
    plain(text.trim().replace(/\s*\n\s*/g, ': ')),
  );

const inWords = (plan: QuiltPlan): readonly string[] => {
  const signs = clothSignsFor(plan);
  return plan.fabrics.map((fabric) => {
    const { letter, name } = signOf(signs, fabric.id);
    return `${letter} ${name}: ${plain(boughtText(plan, fabric))}`;
  });
};

const searchEnds = (page: Page) => page.locator('.search-line[aria-busy=false]').waitFor({ timeout: 60_000 });
const unrolled = (page: Page) => page.getByRole('listbox', { name: /^Cloth .* unrolled/ });
const chosenPiece = (page: Page) => page.locator('.cut-view .stage [role=option][aria-selected=true]');

const best = async (file: string): Promise<QuiltPlan> => {
  const planned = planQuilt(readFileSync(`examples/${file}.quilt.json`, 'utf8'), { solver: await openSolver() });
  assert.ok(planned.ok);
  return planned.value;
};

describe('cutting', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened.close());

  for (const file of ['twelve-fields', 'lantern-lane']) {
    it(`layouts of ${file} become better while one looks, and end as the command line has them`, async () => {
      const plan = await best(file);
      const { page, context, faults } = await opened.page();
      await openCut(page, opened.numeric, file);
      await page.getByRole('button', { name: 'These will do' }).waitFor();
      await searchEnds(page);
      await becomes(() => cloths(page), inWords(plan));
      const bound = plain(await page.locator('.cut-view .side section p').first().textContent());
      assert.match(bound, /No layout/);
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  describe('of one quilt, opened once', () => {
    let tried: Tried;
    /** Its address. */
    let quilt: string;
    before(async () => {
      tried = await opened.page();
      quilt = `${opened.numeric}#/quilt/${await openCut(tried.page, opened.numeric, 'harvest-home-throw')}`;
      await searchEnds(tried.page);
    });
    after(() => tried.context.close());

    it('a piece that is come to by keys or pointed at is told, and a patch of the quilt leads to its pieces', async () => {
      const { page, faults } = tried;
      await unrolled(page).focus();
      await page.keyboard.press('End');
      // README: A1 are the centres of the log cabins, 36 of 3½ in
      assert.match(plain(await chosenPiece(page).textContent()), /^A1, 3½ in, for Log cabin A, strip \d/);
      await becomes(async () => plain(await page.locator('.this-piece h2').textContent()), 'A1');
      assert.match(
        plain(await page.locator('.this-piece p').first().textContent()),
        /36 of 3½ in, square\. For Log cabin A\./,
      );
      // the pointer over the first strip, before anything is chosen anew
      const box = (await page.locator('.cut-view .stage .drawing-canvas').boundingBox()) ?? assert.fail('no drawing');
      await page.mouse.move(box.x + box.width / 2, box.y + 110);
      await becomes(async () => plain(await page.locator('.piece-line').textContent()), 'A2, 40 × 2½ in, for Binding');
      await page.mouse.move(5, 5);
      await becomes(async () => plain(await page.locator('.this-piece h2').textContent()), 'A1');
      const quilt = page.getByRole('listbox', { name: 'Where it goes in the quilt' });
      await quilt.focus();
      await page.keyboard.press('Home');
      await page.waitForURL(/\/cut\/slate$/);
      await becomes(async () => /^G\d/.test(plain(await page.locator('.this-piece h2').textContent())), true);
      // into a block by keys, and from patch to patch, each of its own cloth
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      const seen = new Set<string>();
      for (const key of ['End', 'ArrowUp', 'ArrowUp', 'ArrowLeft', 'ArrowLeft']) {
        await page.keyboard.press(key);
        await page.waitForTimeout(300);
        seen.add(plain(await page.locator('.this-piece h2').textContent()));
      }
      assert.ok(seen.size >= 3, [...seen].join());
      await page.getByRole('listbox', { name: 'Where it goes in Log cabin' }).focus();
      await page.keyboard.press('Home');
      await page.waitForTimeout(400);
      const first = plain(await page.locator('.this-piece h2').textContent());
      await page.keyboard.press('End');
      await becomes(async () => plain(await page.locator('.this-piece h2').textContent()) !== first, true);
      assert.equal(
        await page.evaluate(() => document.activeElement?.getAttribute('aria-label')),
        'Where it goes in Log cabin',
      );
      assert.deepEqual(faults, []);
    });

    it('steps are ticked off by keys, stay ticked after a reload, and each strip has an address', async () => {
      const { page } = tried;
      await page.goto(`${quilt}/cut`);
      await kept(page);
      await page.getByRole('link', { name: 'Step by step' }).click();
      const progress = page.locator('.cut-progress [role=status]');
      await becomes(async () => plain(await progress.textContent()).replace(/of \d+/, 'of n'), '0 of n steps done.');
      await page.locator('body').press('x');
      await page.keyboard.press('x');
      await becomes(async () => plain(await progress.textContent()).slice(0, 4), '2 of');
      assert.equal(await page.locator('.cut-tick.is-done').count(), 2);
      await page.goto(`${quilt}/cut/ember/steps/2`);
      await page.reload();
      await becomes(async () => plain(await progress.textContent()).slice(0, 4), '2 of');
      await page.locator('.cut-strips [aria-current=step]').getByText('2', { exact: true }).waitFor();
      await page.getByRole('button', { name: 'Begin again' }).click();
      await becomes(async () => plain(await progress.textContent()).slice(0, 4), '0 of');
    });

    it('drawn for the left hand, strips begin at the right and letters stay as they are', async () => {
      const { page } = tried;
      await page.goto(`${quilt}/cut/oat/steps`);
      await page.getByText('from left to right').first().waitFor();
      await page.getByRole('checkbox', { name: 'Left-handed' }).check();
      await page.getByText('from right to left').first().waitFor();
      assert.equal(await page.getByText('from left to right').count(), 0);
      await page.reload();
      await page.getByText('from right to left').first().waitFor();
    });

    it('another way shows what it comes to before it is taken, becomes that, and can be undone', async () => {
      const { page, faults } = tried;
      await page.goto(`${quilt}/cut/slate`);
      await searchEnds(page);
      const way = page.getByRole('button', { name: /^No piece turned/ });
      await way.and(page.getByRole('button', { disabled: false })).waitFor({ timeout: 30_000 });
      assert.match(plain(await way.textContent()), /⅛ yd more of G/);
      const before = await cloths(page);
      await way.click();
      await page.getByRole('button', { name: /^Pieces turned where that helps/ }).waitFor();
      await searchEnds(page);
      // 1½ yd and an eighth
      await becomes(async () => (await cloths(page)).at(-1), 'G Slate: 1⅝ yd');
      await page.getByRole('button', { name: 'Undo' }).click();
      await searchEnds(page);
      await becomes(() => cloths(page), before);
      assert.deepEqual(faults, []);
    });
  });

  it('“These will do” ends a search at once and keeps what it has found', async () => {
    const { page, context, faults } = await opened.page();
    await openCut(page, opened.numeric, 'lantern-lane');
    const key = page.getByRole('button', { name: 'These will do' });
    await key.waitFor();
    const first = await page.locator('.cut-view .side section p').first().textContent();
    // until something better is there than the first layouts
    await becomes(async () => (await page.locator('.cut-view .side section p').first().textContent()) !== first, true);
    const better = await page.locator('.cut-view .side section p').first().textContent();
    await key.click();
    await key.waitFor({ state: 'detached' });
    await page.waitForTimeout(400);
    const after = await page.locator('.cut-view .side section p').first().textContent();
    assert.notEqual(after, first);
    assert.ok(after === better || after?.includes('No layout'));
    assert.deepEqual(faults, []);
    await context.close();
  });
});
