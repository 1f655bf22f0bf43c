// Files brought into the workroom, dropped or picked: what opens, what is refused, and that what lay on the desk lies there still.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { drawn, kept, type Opened, openDemo, openHome, openWorkroom } from './page.ts';

interface Dropped {
  readonly name: string;
  readonly text: string;
}

const dropped = (name: string, folder = 'examples'): Dropped => ({
  name: `${name}.quilt.json`,
  text: readFileSync(`${folder}/${name}.quilt.json`, 'utf8'),
});

/** Lets files go over the middle of the page, as a hand would. */
const drop = async (page: Page, files: readonly Dropped[]): Promise<void> => {
  const held = await page.evaluateHandle((all) => {
    const transfer = new DataTransfer();
    for (const { name, text } of all) transfer.items.add(new File([text], name, { type: 'application/json' }));
    return transfer;
  }, files);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: held });
  await page.getByText('Let go to open it').waitFor();
  await page.dispatchEvent('body', 'drop', { dataTransfer: held });
};

/** Puts away the sheet that is open, by its key, once the keys are its own. */
const putAway = async (page: Page): Promise<void> => {
  await page.locator('[role=dialog]:focus-within').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
};

/** Dots of the drawing that are as red as what is lit. */
const redDots = async (page: Page): Promise<number> => {
  const { data, info } = await sharp(await page.locator('.drawing-canvas').screenshot())
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  let red = 0;
  for (let i = 0; i < info.width * info.height; i++) {
    const [r = 0, g = 0, b = 0] = data.subarray(3 * i, 3 * i + 3);
    if (r > 130 && g < 90 && b < 70) red += 1;
  }
  return red;
};

const title = (page: Page) => page.getByRole('textbox', { name: 'Name of the quilt' });
const at = (page: Page): string => /quilt\/([^/]+)/.exec(page.url())?.[1] ?? '';

describe('opening files', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  it('a document that is dropped on a quilt is a quilt of its own, and the one on the desk is kept as it was', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    const first = page.url();
    await page.getByRole('button', { name: 'Rows: one less' }).click();
    await title(page).fill('On the desk');
    await drop(page, [dropped('orchard-gate')]);
    await page.waitForURL((url) => url.hash !== new URL(first).hash);
    await drawn(page);
    assert.equal(await title(page).inputValue(), 'Orchard Gate');
    await page.goto(first);
    await drawn(page);
    assert.equal(await title(page).inputValue(), 'On the desk');
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.equal(await title(page).inputValue(), 'Harvest Home');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('of several files at once each is told: which opened, and why one was refused', async () => {
    const { page, context } = await opened.page();
    await openHome(page, opened.local);
    await drop(page, [
      dropped('orchard-gate'),
      dropped('double-comma', 'examples/broken'),
      dropped('unknown-fabric', 'examples/broken'),
      { name: 'shopping.txt', text: 'thread, needles' },
    ]);
    const sheet = page.getByRole('dialog', { name: '2 of 4 files opened' });
    await sheet.getByRole('heading', { name: 'double-comma.quilt.json cannot be opened' }).waitFor();
    await sheet.getByText('line 5, column 16').waitFor();
    await sheet.getByRole('heading', { name: 'shopping.txt cannot be opened' }).waitFor();
    await sheet.getByText('1 problem still to mend in it').waitFor();
    await sheet.getByRole('button', { name: 'Close' }).click();
    // both stand in the list at once
    await page.getByRole('link', { name: /Orchard Gate/ }).waitFor();
    assert.equal(await page.locator('.quilt-list').first().getByRole('listitem').count(), 2);
    await context.close();
  });

  it('what is no text, too long, or no longer there is refused in words', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local);
    await kept(page);
    const was = page.url();
    const give = async (file: { name: string; mimeType: string; buffer: Buffer }) => {
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.keyboard.press('Control+o')]);
      await chooser.setFiles(file);
    };
    await give({ name: 'cloth.json', mimeType: 'application/json', buffer: Buffer.from([0xff, 0xd8, 0xff, 0xe0]) });
    await page
      .getByRole('dialog', { name: 'cloth.json cannot be opened' })
      .getByText('not text in UTF-8')
      .first()
      .waitFor();
    await putAway(page);
    await give({ name: 'long.json', mimeType: 'application/json', buffer: Buffer.alloc(8_500_000, ' ') });
    await page.getByRole('dialog', { name: 'long.json cannot be opened' }).waitFor();
    await putAway(page);
    assert.equal(page.url(), was);
    await context.close();
  });

  it('where the desk is not kept nobody is taken away from it', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local);
    await kept(page);
    const was = page.url();
    // the browser takes new quilts and no longer this one
    await page.evaluate((id) => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (value: { id?: string }, ...rest: []) {
        if (value.id === id) throw new DOMException('no more', 'QuotaExceededError');
        return put.call(this, value, ...rest);
      };
    }, at(page));
    await title(page).fill('Only here');
    await page.locator('.keeping.is-failed').waitFor();
    await drop(page, [dropped('orchard-gate')]);
    await page.getByRole('dialog', { name: '1 of 1 file opened' }).waitFor();
    await page.getByRole('button', { name: 'Close' }).click();
    assert.equal(page.url(), was);
    assert.equal(await title(page).inputValue(), 'Only here');
    await context.close();
  });

  it('a fault is lit in the drawing of all that can be drawn, and its problem leads to the view that mends it', async () => {
    const { page, context, faults } = await opened.page();
    await openHome(page, opened.numeric);
    // of its cloths none is nearly as red as what is lit
    await drop(page, [dropped('gap', 'examples/broken')]);
    const told = page.getByRole('region', { name: 'Problems' });
    await told.getByText(/has a hole of 2.25 square inches/).waitFor();
    await page.getByRole('listbox', { name: /^The quilt/ }).waitFor();
    let red = 0;
    for (const endMs = Date.now() + 10_000; red <= 200 && Date.now() < endMs; ) red = await redDots(page);
    assert.ok(red > 200, `${red} dots`);
    await told.getByRole('link', { name: 'Block Half-square pair' }).click();
    await page.waitForURL(/draft\/pair$/);
    await page.getByRole('listbox', { name: /^The block Half-square pair/ }).waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('every document with problems that has the form of one opens, says them, and stands in every view', async () => {
    const rest = readdirSync('examples/broken')
      .filter((name) => name.endsWith('.quilt.json'))
      .map((name) => name.replace(/\.quilt\.json$/, ''));
    let open = 0;
    let seen = 0;
    // several browsers side by side: most of the time one waits for what may still come
    const one = async () => {
      const { page, context, faults } = await opened.page();
      await openHome(page, opened.local);
      for (let name = rest.pop(); name !== undefined; name = rest.pop()) {
        if ((await becomesOf(page, name)) === 'refused') continue;
        open += 1;
        await visited(page, { name, faults });
        if (!(await isDrawn(page))) continue;
        seen += 1;
        await editedByKeys(page);
        assert.deepEqual(faults, [], `${name}: edited`);
      }
      await context.close();
    };
    await Promise.all([one(), one(), one()]);
    assert.ok(open > 80 && seen > 60, `${open} open, ${seen} are drawn`);
  });
});

/** What becomes of a document with problems that is dropped: told either way. */
const becomesOf = async (page: Page, name: string): Promise<'opened' | 'refused'> => {
  const before = at(page);
  await drop(page, [dropped(name, 'examples/broken')]);
  const sheet = page.getByRole('dialog');
  await Promise.race([
    sheet.waitFor(),
    page.waitForURL((url) => (/quilt\/([^/]+)/.exec(url.hash)?.[1] ?? '') !== before),
  ]);
  if (await sheet.isVisible()) {
    assert.match((await sheet.textContent()) ?? '', /cannot be opened/, name);
    await putAway(page);
    return 'refused';
  }
  const said = page.locator('.notice .problems li').first();
  await said.waitFor().catch(() => assert.fail(`${name}: no problem is told`));
  return 'opened';
};

const stops = ['Draft', 'Colour', 'Cut', 'Sew', 'Finish', 'Print', 'Compare', 'Set'] as const;

/** Goes to every view, and to the drawing last. */
const visited = async (page: Page, of: { readonly name: string; readonly faults: readonly string[] }) => {
  const set = page.url();
  for (const stop of stops) {
    await page.goto(set.replace(/set$/, stop.toLowerCase()));
    await page.getByRole('main', { name: stop }).waitFor();
    await page.waitForTimeout(60);
    assert.deepEqual(of.faults, [], `${of.name} at ${stop}`);
  }
};

const theDrawing = (page: Page) => page.getByRole('listbox', { name: /^The quilt/ });

/** Whether something stands in for what is wrong; else it is told that nothing can be drawn yet. */
const isDrawn = async (page: Page): Promise<boolean> => {
  const drawing = theDrawing(page);
  await drawing.or(page.getByText('It can be drawn when what stands above is mended.')).waitFor();
  return drawing.isVisible();
};

/** What stands in for a fault can be chosen and edited like all else. */
const editedByKeys = async (page: Page): Promise<void> => {
  for (const key of ['Home', 'End']) {
    await theDrawing(page).focus();
    for (const pressed of [key, 't', 'm', 'Enter', 'Escape', 'Delete', 'Control+z']) await page.keyboard.press(pressed);
  }
};
