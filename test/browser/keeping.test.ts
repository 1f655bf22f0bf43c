// What the browser keeps, by each of the ways that it may allow: its database, its plain storage, nothing. And how much a browser has
// to fetch before the workroom is there.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { gzipSync } from 'node:zlib';
import type { BrowserContext, Page } from 'playwright-core';
import { chanceFrom } from '#ground/chance';
import { drawn, kept, type Opened, openDemo, openWorkroom } from './page.ts';

const title = (page: Page) => page.getByRole('textbox', { name: 'Name of the quilt' });

/** Before any script of the page runs. Written as text: a function would be sent with names that only a compiler knows. */
const without = (context: BrowserContext, what: 'database' | 'storage'): Promise<unknown> => {
  const names = what === 'database' ? ['indexedDB'] : ['indexedDB', 'localStorage'];
  const closings = names.map(
    (name) =>
      `Object.defineProperty(window, '${name}', { get() { throw new DOMException('closed', 'SecurityError'); } });`,
  );
  return context.addInitScript({ content: closings.join('\n') });
};

/** One row or column less where there are many, else one more. */
const oneOf = async (page: Page, what: 'Rows' | 'Columns'): Promise<void> => {
  const count = Number(await page.getByRole('textbox', { name: what, exact: true }).inputValue());
  await page.getByRole('button', { name: `${what}: one ${count > 5 ? 'less' : 'more'}` }).click();
};

/** The document as the browser's database has it, keys in their order. */
const storedText = async (page: Page): Promise<string> => {
  await kept(page);
  const id = /quilt\/([^/]+)/.exec(page.url())?.[1] ?? '';
  return (await page.evaluate(`new Promise((resolve, reject) => {
    const opening = indexedDB.open('seamstead');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const reading = opening.result.transaction('quilts').objectStore('quilts').get('${id}');
      reading.onerror = () => reject(reading.error);
      reading.onsuccess = () => {
        opening.result.close();
        resolve(JSON.stringify(reading.result.document));
      };
    };
  })`)) as string;
};

describe('what is kept', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  it('is kept in the plain storage where there is no database, steps included', async () => {
    const { page, context, faults } = await opened.page();
    await without(context, 'database');
    await openDemo(page, opened.numeric);
    assert.deepEqual(
      await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('/quilt/')).length),
      1,
    );
    await title(page).fill('In plain storage');
    await kept(page);
    await page.reload();
    await drawn(page);
    assert.equal(await title(page).inputValue(), 'In plain storage');
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.equal(await title(page).inputValue(), 'Harvest Home');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('is held in the page where the browser keeps nothing, and the page says so', async () => {
    const { page, context } = await opened.page();
    await without(context, 'storage');
    await openDemo(page, opened.numeric);
    await page.getByText('Held until you close this page').waitFor();
    await title(page).fill('In the page');
    await page.getByRole('link', { name: 'Seamstead' }).click();
    await page.getByRole('link', { name: /In the page/ }).waitFor();
    await context.close();
  });

  it('goes back byte for byte after twenty rows of edits with reloads between them', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric, 'Heron Hanging');
    const chance = chanceFrom(20);
    // every one of them changes the quilt, whatever it is by then
    const edits: readonly ((page: Page) => Promise<void>)[] = [
      (to) => oneOf(to, 'Rows'),
      (to) => oneOf(to, 'Columns'),
      async (to) => {
        const isPinwheel = (await to.getByRole('button', { name: 'Pinwheel' }).getAttribute('aria-pressed')) === 'true';
        await to.getByRole('button', { name: isPinwheel ? 'Barn raising' : 'Pinwheel' }).click();
      },
    ];
    const states = [await storedText(page)];
    for (let row = 0; row < 20; row++) {
      for (let n = 0; n < 3; n++) {
        await title(page).fill(`Row ${row}, ${n}`);
        await edits[Math.floor(chance() * edits.length)]?.(page);
      }
      states.push(await storedText(page));
      await kept(page);
      if (row % 4 === 3) {
        await page.reload();
        await drawn(page);
      }
    }
    const undo = page.getByRole('button', { name: 'Undo' });
    let at = states.length - 1;
    while (await undo.isEnabled()) {
      await undo.click();
      // a row is several steps: its states are met on the way
      if (at > 0 && (await storedText(page)) === states[at - 1]) at -= 1;
    }
    assert.equal(at, 0, `the state before row ${at} never came back`);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('asks little: the first script at most 230 kB compressed, the whole page at most 700 kB without letters and solver', () => {
    const folder = join('dist', 'workroom', 'assets');
    const sizes = readdirSync(folder)
      .filter((file) => /\.(js|css)$/.test(file))
      .map((file) => ({ file, kB: gzipSync(readFileSync(join(folder, file)), { level: 9 }).length / 1000 }));
    const page = readFileSync(join('dist', 'workroom', 'index.html'), 'utf8');
    const first = sizes.filter(({ file }) => page.includes(file));
    const sum = (list: typeof sizes) => list.reduce((all, { kB }) => all + kB, 0);
    assert.ok(first.length >= 2, 'the page names its script and its look');
    assert.ok(sum(first) <= 230, `${sum(first).toFixed(0)} kB at first`);
    assert.ok(sum(sizes) <= 700, `${sum(sizes).toFixed(0)} kB in all`);
  });
});
