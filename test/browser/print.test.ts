// Print: pages as they will lie on paper, files to take along, and that they are those of the command line, byte for byte.

import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { after, before, describe, it } from 'node:test';
import type { Download, Page } from 'playwright-core';
import sharp from 'sharp';
import { main } from '#cli';
import { kept, type Opened, openDemo, openWorkroom } from './page.ts';

const bytesOf = async (download: Download): Promise<Buffer> => readFileSync(await download.path());

/** What is saved when that is done. */
const saved = async (page: Page, act: () => Promise<unknown>): Promise<Download> => {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), act()]);
  return download;
};

const pagesAreSet = async (page: Page): Promise<void> => {
  await page.getByText(/^(One page|\d+ pages) on .* Set in/).waitFor({ timeout: 60_000 });
  await page.getByText('Setting the pages').waitFor({ state: 'detached' });
};

/** The files that the command line writes for a document, by their names. */
const written = async (document: Buffer, ...wishes: readonly string[]): Promise<(name: string) => Buffer> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-print-'));
  try {
    const file = join(folder, 'saved.quilt.json');
    writeFileSync(file, document);
    const quiet = () => new Writable({ write: (_chunk, _encoding, done) => done() });
    const terminal = { stdin: Readable.from([]), stdout: quiet(), stderr: quiet() };
    const out = join(folder, 'out');
    for (const argv of [
      ['plan', file, '--out', out, ...wishes],
      ['draw', file, '--out', out, '--as', 'colour'],
    ])
      assert.equal(await main({ argv, ...terminal }), 0, argv.join(' '));
    const files = new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name))]));
    return (name) => files.get(name) ?? assert.fail(`the command line writes no ${name}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const documentOf = async (page: Page): Promise<Buffer> => {
  await kept(page);
  return bytesOf(await saved(page, () => page.getByRole('button', { name: 'Save the document' }).click()));
};

const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const chapter = (page: Page, name: RegExp) => page.getByRole('checkbox', { name });
const printed = (page: Page) => page.getByRole('combobox', { name: 'Print', exact: true });
const facts = async (page: Page): Promise<string> =>
  ((await page.locator('.print-facts').textContent()) ?? '').replaceAll('\u00a0', ' ');
const countOf = async (page: Page): Promise<number> => Number(/^(\d+) pages/.exec(await facts(page))?.[1] ?? 1);

/** Fewer actions than this make a pattern out of nothing. */
const mostActions = 25;

describe('printing', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`goes from blank to a printed pattern in at most 25 actions by pointer (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await page.goto(opened[where]);
      let actions = 0;
      const click = async (name: string | RegExp) => {
        actions += 1;
        await page.getByRole('button', { name }).or(page.getByRole('link', { name })).first().click();
      };
      await click('Blank, in inches');
      await click('Add a log cabin');
      await click(/^Set/);
      await click('Barn raising');
      await click('Add a border');
      await click('Print the pattern');
      await pagesAreSet(page);
      const pdf = await saved(page, () => click('Save the PDF'));
      assert.ok(actions <= mostActions, `${actions} actions`);
      assert.equal(pdf.suggestedFilename(), 'new-quilt.pdf');
      const theirs = await written(await documentOf(page));
      assert.ok((await bytesOf(pdf)).equals(theirs('pattern.pdf')), 'the command line prints another');
      assert.deepEqual(faults, []);
      await context.close();
    });

    it(`does the same by keys alone (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await page.goto(opened[where]);
      await page.getByRole('heading', { name: 'Your quilts' }).waitFor();
      let actions = 0;
      const press = async (keys: string) => {
        actions += 1;
        await page.keyboard.press(keys);
      };
      const find = async (words: string) => {
        await press('Control+k');
        actions += 1;
        await page.keyboard.type(words);
        await press('Enter');
      };
      await press('n');
      await key(page, 'Add a log cabin').waitFor();
      await press('l');
      await page.getByRole('listbox', { name: /Log cabin/ }).waitFor();
      await press('2');
      await key(page, 'Barn raising')
        .and(page.getByRole('button', { disabled: false }))
        .waitFor();
      await find('barn raising');
      await page.locator('.job-stops:not(.is-behind)').waitFor();
      await find('add a border');
      await press('Control+p');
      await pagesAreSet(page);
      const pdf = await saved(page, () => press('Control+p'));
      assert.ok(actions <= mostActions, `${actions} actions`);
      const theirs = await written(await documentOf(page));
      assert.ok((await bytesOf(pdf)).equals(theirs('pattern.pdf')), 'the command line prints another');
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('prints every demo as the command line does, on letter and on A4, for either hand, with chapters, a handout and the run sheets', async () => {
    for (const [title, paper, isOwnChoice, hand] of [
      ['Harvest Home', 'a4', true, 'right'],
      ['Lantern Lane', 'letter', false, 'left'],
      ['Twelve Fields', 'letter', true, 'right'],
      ['Heron Hanging', 'a4', false, 'left'],
    ] as const) {
      const { page, context } = await opened.page();
      await openDemo(page, opened.numeric, title);
      await page.keyboard.press('Control+p');
      // where none was chosen yet: the heron is drawn in centimetres, the others in inches
      const begins = title === 'Heron Hanging' ? 'A4' : 'US letter';
      await page.locator('button[aria-pressed="true"]', { hasText: begins }).waitFor();
      await key(page, paper === 'a4' ? 'A4' : 'US letter').click();
      await key(page, `the ${hand} hand`).click();
      const wishes = ['--paper', paper, '--hand', hand, '--handout', 'all', '--run-sheet'];
      if (isOwnChoice) {
        for (const one of [/^Swatches/, /^Labels/]) await chapter(page, one).check();
        for (const one of [/^Cautions/, /^Finishing/, /^The top/]) await chapter(page, one).uncheck();
        const chapters =
          'cover,quilt,cloth,colourways,cutting,pieces,blocks,templates,swatches,labels,glossary,corrections';
        wishes.push('--chapters', chapters);
      }
      await pagesAreSet(page);
      const theirs = await written(await documentOf(page), ...wishes);
      const same = async (name: string, button: string) => {
        const mine = await bytesOf(await saved(page, () => key(page, button).click()));
        assert.ok(mine.equals(theirs(name)), `${title}: ${name} is another`);
      };
      await same('pattern.pdf', 'Save the PDF');
      await same('cutting.csv', 'The cut list as CSV');
      await same('plan.json', 'The plan as JSON');
      await same('quilt.svg', 'The quilt as SVG, in lines');
      await same('quilt.png', 'The quilt as PNG, in dots');
      const pictures = page.getByRole('combobox', { name: 'A picture of' });
      const block = (await pictures.locator('option').nth(1).getAttribute('value')) ?? '';
      await pictures.selectOption(block);
      await same(`${block}.svg`, `${await pictures.locator('option').nth(1).textContent()} as SVG, in lines`);
      await same(`${block}.png`, `${await pictures.locator('option').nth(1).textContent()} as PNG, in dots`);
      const handout = (await printed(page).locator('option').nth(1).getAttribute('value')) ?? '';
      assert.match(handout, /^handout\//);
      await printed(page).selectOption(handout);
      await pagesAreSet(page);
      assert.match(page.url(), new RegExp(`print/${handout}$`));
      await same(`${handout.replace('/', '-')}.pdf`, 'Save the PDF');
      await printed(page).selectOption('run-sheet');
      await pagesAreSet(page);
      await same('run-sheet.pdf', 'Save the PDF');
      await context.close();
    }
  });

  it('prints other sizes in the same pattern, and photographs of cloth change no page', async () => {
    const { page, context } = await opened.page();
    await page.goto(opened.local);
    const own = JSON.parse(readFileSync('examples/bramble-lane.quilt.json', 'utf8'));
    const image = `data:image/png;base64,${(
      await sharp({ create: { width: 8, height: 8, channels: 3, background: '#806040' } })
        .png()
        .toBuffer()
    ).toString('base64')}`;
    own.fabrics[0].photo = { image, width: '4' };
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), key(page, 'From a file').click()]);
    await chooser.setFiles({
      name: 'own.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(own)),
    });
    await page.getByRole('listbox', { name: /^The quilt/ }).waitFor();
    await key(page, 'Print the pattern').click();
    await pagesAreSet(page);
    const alone = await countOf(page);
    const size = own.sizes[0];
    await page.getByRole('checkbox', { name: size.title }).check();
    await pagesAreSet(page);
    await page.waitForFunction(
      (before) => !document.querySelector('.print-facts')?.textContent?.startsWith(`${before} `),
      alone,
    );
    const theirs = await written(await documentOf(page), '--sizes', size.id);
    const mine = await bytesOf(await saved(page, () => key(page, 'Save the PDF').click()));
    assert.ok(mine.equals(theirs('pattern.pdf')));
    // what was chosen is chosen still when one comes back
    await page.reload();
    await pagesAreSet(page);
    assert.ok(await page.getByRole('checkbox', { name: size.title }).isChecked());
    await context.close();
  });

  it('turns its pages by buttons, keys and thumbnails, and shows them larger', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.keyboard.press('Control+p');
    await pagesAreSet(page);
    const count = await countOf(page);
    const shows = (n: number) => page.getByRole('img', { name: `Page ${n} of ${count}`, exact: true }).waitFor();
    await shows(1);
    assert.ok(await key(page, 'Page before').isDisabled());
    await key(page, 'Next page').click();
    await shows(2);
    await page.keyboard.press('PageDown');
    await shows(3);
    await page.keyboard.press('PageUp');
    await shows(2);
    await key(page, 'Page 4').click();
    await shows(4);
    await page.keyboard.press('End');
    await shows(count);
    assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('aria-label')), `Page ${count}`);
    assert.ok(await key(page, 'Next page').isDisabled());
    await page.keyboard.press('Home');
    await shows(1);
    const widths = () =>
      page
        .locator('.print-paper img')
        .evaluate((image: HTMLImageElement) => [image.clientWidth, image.naturalWidth] as const);
    const [whole] = await widths();
    await key(page, 'Page larger').click();
    await key(page, 'Page larger').click();
    await page.waitForFunction((least) => {
      const image = document.querySelector<HTMLImageElement>('.print-paper img');
      return image !== null && image.clientWidth > least && image.naturalWidth >= image.clientWidth;
    }, 1.9 * whole);
    await page.getByRole('region', { name: 'Page', exact: true }).focus();
    await page.keyboard.press('0');
    await page.waitForFunction((width) => document.querySelector('.print-paper img')?.clientWidth === width, whole);
    await page.keyboard.press('ArrowRight');
    await shows(2);
    await context.close();
  });

  it('says of a page whose picture has not come that it is being drawn, at the very place where it will stand', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    let isHeld = true;
    await page.route('**/api/page/*', async (route) => {
      while (isHeld) await new Promise((resolve) => setTimeout(resolve, 20));
      await route.continue().catch(() => undefined);
    });
    const places = async () =>
      Promise.all(['.print-paper', '.thumbnail >> nth=0'].map((of) => page.locator(of).boundingBox()));
    let before: unknown;
    try {
      await page.keyboard.press('Control+p');
      await page.getByText('Drawing page 1 …').waitFor();
      assert.ok((await page.locator('.thumbnail.is-coming').count()) > 1);
      before = await places();
    } finally {
      isHeld = false;
    }
    await page.getByRole('img', { name: /^Page 1 of/ }).waitFor();
    await page.locator('.thumbnail >> nth=0 >> img').waitFor();
    assert.equal(await page.getByText('Drawing page').count(), 0);
    assert.deepEqual(await places(), before);
    await context.close();
  });

  it('asks for the newest wish alone, and says how long the pages took', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const given: string[] = [];
    page.on('requestfailed', (request) => void given.push(request.url()));
    let isHeld = true;
    await page.route('**/api/pages/*', async (route) => {
      while (isHeld) await new Promise((resolve) => setTimeout(resolve, 20));
      await route.continue().catch(() => undefined);
    });
    try {
      await page.keyboard.press('Control+p');
      const asked = page.waitForRequest(/api\/pages/);
      await asked;
      const second = page.waitForRequest(/api\/pages.*a4/);
      await key(page, 'A4').click();
      await second;
      assert.equal(given.filter((url) => url.includes('paper=letter')).length, 1, given.join(' '));
    } finally {
      isHeld = false;
    }
    await pagesAreSet(page);
    assert.match(await facts(page), /^\d+ pages on A4, \d+ kB\. Set in \d+\.\d s\.$/);
    // who does not see the pages hears that they are there
    await page
      .getByRole('status')
      .getByText(`${await countOf(page)} pages are set.`)
      .waitFor();
    await context.close();
  });

  it('says what to do where the printer is silent, slow, or refuses, and loses nothing', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.keyboard.press('Control+p');
    await pagesAreSet(page);
    const count = await countOf(page);
    // gone: the last pages stand, and the way out is told
    await page.route('**/api/**', (route) => route.abort());
    await key(page, 'A4').click();
    const alert = page.getByRole('alert');
    await alert.getByText('The program that prints does not answer.').waitFor();
    await alert.getByText(/still runs, then try again/).waitFor();
    assert.equal(await page.getByText(`Page 1 of ${count}`).count(), 1);
    await key(page, 'Save the PDF').click();
    await page.getByRole('heading', { name: 'pattern.pdf was not made' }).waitFor();
    await key(page, 'Put this away').click();
    // the document goes without any printer
    await documentOf(page);
    await page.unroute('**/api/**');
    await key(page, 'Try again').click();
    await page.getByText(/pages on A4/).waitFor();
    // slow: it can be given up, and asked for again
    await page.route('**/api/pages/*', () => undefined);
    await key(page, 'US letter').click();
    await page.getByText('Go on working').waitFor({ timeout: 20_000 });
    await key(page, 'Stop').click();
    await page.getByText('older than the quilt').waitFor();
    await page.unroute('**/api/pages/*');
    await key(page, 'Set the pages').click();
    await pagesAreSet(page);
    // refused: as by a server that has another fault
    await page.route('**/api/pages/*', (route) =>
      route.fulfill({
        status: 500,
        contentType: 'application/json',
        body: JSON.stringify({ problems: [{ where: '/', what: 'A fault of ours.', mend: 'Report it.' }], more: 0 }),
      }),
    );
    await key(page, 'A4').click();
    await alert.getByText('A fault of ours.').waitFor();
    await page.unroute('**/api/pages/*');
    await page.getByRole('link', { name: /^Set/ }).click();
    await page.getByRole('listbox', { name: /^The quilt/ }).waitFor();
    await context.close();
  });

  it('waits with the pages while the quilt has a problem, and goes on when it is mended', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('textbox', { name: /Outer border/ }).fill('1/64');
    await page.keyboard.press('Enter');
    await page.getByRole('region', { name: 'Problems' }).waitFor();
    await key(page, 'Print the pattern').click();
    await page.getByText('The pages come when what stands above is mended.').waitFor();
    assert.ok(await key(page, 'Save the PDF').isDisabled());
    assert.ok(await key(page, 'Page larger').isDisabled());
    await key(page, 'Undo').click();
    await pagesAreSet(page);
    await context.close();
  });
});
