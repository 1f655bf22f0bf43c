// The workroom in a real Chromium, by this machine's name and by its number over plain http: what a maker does, and what she must
// never lose.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { becomes, drawn, kept, type Opened, openDemo, openWorkroom, sideBySide } from './page.ts';

const title = (page: Page) => page.getByRole('textbox', { name: 'Name of the quilt' });
const figureOf = (page: Page, stop: string) =>
  page.locator('.job-stops li', { has: page.getByText(stop, { exact: true }) }).locator('.job-figure');

describe('the workroom', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`opens the demo, takes an edit, undoes it, and has all of it after a reload (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await openDemo(page, opened[where]);
      const isSecure = await page.evaluate(() => window.isSecureContext);
      if (where === 'local') assert.ok(isSecure);
      // figures of the plan that the command line prints for this document
      await becomes(() => figureOf(page, 'Set').textContent(), '64 × 64 in');
      await becomes(() => figureOf(page, 'Sew').textContent(), '475 seams · 10 h');

      await page.getByRole('button', { name: 'Rows: one less' }).click();
      await becomes(() => figureOf(page, 'Set').textContent(), '64 × 55 in');
      await title(page).fill('Winter class');
      await kept(page);
      await page.reload();
      await drawn(page);
      await becomes(() => figureOf(page, 'Set').textContent(), '64 × 55 in');
      assert.equal(await title(page).inputValue(), 'Winter class');

      await page.getByRole('button', { name: 'Undo' }).click();
      assert.equal(await title(page).inputValue(), 'Harvest Home');
      await page.getByRole('button', { name: 'Undo' }).click();
      await becomes(() => figureOf(page, 'Set').textContent(), '64 × 64 in');
      assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
      await kept(page);
      await page.reload();
      await drawn(page);
      await page.getByRole('button', { name: 'Redo' }).click();
      await becomes(() => figureOf(page, 'Set').textContent(), '64 × 55 in');
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('has a block turned by keys alone, and says so', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const list = page.getByRole('listbox', { name: /^The quilt/ });
    await list.focus();
    await page.keyboard.press('End');
    const chosen = page.locator('[role=option][aria-selected=true]');
    // from the border at the end back up into the blocks
    for (let i = 0; i < 6 && !/Log cabin/.test((await chosen.textContent()) ?? ''); i++)
      await page.keyboard.press('ArrowUp');
    const before = (await chosen.textContent()) ?? '';
    assert.match(before, /^Log cabin, row 6, place \d.* \d+ of \d+$/);
    await page.keyboard.press('ArrowLeft');
    assert.notEqual(await chosen.textContent(), before);
    await page.keyboard.press('ArrowRight');
    assert.equal(await chosen.textContent(), before);

    const turned = async () => /turned (\d+)/.exec((await chosen.textContent()) ?? '')?.[1] ?? '0';
    const was = Number(await turned());
    await page.keyboard.press('t');
    await becomes(turned, String((was + 90) % 360));
    // into the block: its pieces, with cloth and cut size
    await list.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('listbox', { name: /^Pieces of Log cabin/ }).waitFor();
    await becomes(() => chosen.textContent(), 'Piece A, Ember, cut 3½ × 3½ in, 1 of 13');
    await page.keyboard.press('Escape');
    await list.waitFor();
    await page.keyboard.press('Control+z');
    await becomes(turned, String(was));
    await context.close();
  });

  it('goes back through its addresses and loses no edit', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local);
    await title(page).fill('Kept');
    await page.getByRole('link', { name: 'Seamstead' }).click();
    await page.getByRole('heading', { name: 'Your quilts' }).waitFor();
    await page.getByRole('link', { name: /Kept/ }).waitFor();
    await page.goBack();
    await drawn(page);
    assert.equal(await title(page).inputValue(), 'Kept');
    await context.close();
  });

  it('shows in one tab what another does, and lets the maker choose where both changed one place', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await kept(page);
    const other = await context.newPage();
    await other.goto(page.url());
    await drawn(other);
    await page.getByRole('button', { name: 'Columns: one more' }).click();
    await becomes(() => figureOf(other, 'Set').textContent(), '73 × 64 in');
    await title(other).fill('From the other tab');
    await becomes(() => title(page).inputValue(), 'From the other tab');
    // both at once: one tab is kept from hearing of it until it saves
    await context.setOffline(true);
    await page.evaluate(() => {
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    await title(page).fill('Mine');
    await kept(page);
    await title(other).fill('Theirs');
    await other.getByRole('alert').waitFor();
    await other.getByRole('button', { name: 'What the other tab has' }).click();
    assert.equal(await title(other).inputValue(), 'Mine');
    await context.close();
  });

  it('says what is wrong with a file that it cannot open, and opens one that it can', async () => {
    const { page, context } = await opened.page();
    await page.goto(opened.local);
    const give = async (name: string, text: string) => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
    };
    await give('wrong.json', '{"format": "seamstead-quilt", "version": 1, "unit": "ell"}');
    const sheet = page.getByRole('dialog', { name: 'wrong.json cannot be opened' });
    await sheet.getByText('/unit').waitFor();
    await sheet.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
    await page.getByRole('listbox', { name: /^The block/ }).waitFor();
    await becomes(() => figureOf(page, 'Set').textContent(), '24 × 24 cm');
    // one piece: nothing is sewn, and no minute passes at it
    await becomes(() => figureOf(page, 'Sew').textContent(), 'no seams');
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page.getByText('No seams: nothing is to be sewn.', { exact: true }).waitFor();
    await context.close();
  });

  it('drafts a log cabin by its measures, and a block of the collection found by its name', async () => {
    const { page, context, faults } = await opened.page();
    await page.goto(opened.numeric);
    await page.getByRole('button', { name: 'Blank, in inches' }).click();
    await page.getByRole('button', { name: 'Add a log cabin' }).click();
    const size = () => page.getByRole('listbox', { name: /^The block/ }).getAttribute('aria-label');
    await becomes(size, 'The block Log cabin, 9 × 9 in');
    // a centre of 2½ and three rounds of 1½: 2½ + 9
    await page.getByRole('textbox', { name: 'Centre' }).fill('2 1/2');
    await page.getByRole('textbox', { name: 'Every log' }).fill('1 1/2');
    await page.keyboard.press('Enter');
    await becomes(size, 'The block Log cabin, 11½ × 11½ in');
    await page.getByRole('button', { name: 'Rounds: one less' }).click();
    await becomes(size, 'The block Log cabin, 8½ × 8½ in');
    // the sides in an order of her own: tapped one after another
    for (const side of ['top', 'bottom', 'left', 'right'])
      await page.getByRole('button', { name: new RegExp(`^${side}`) }).click();
    assert.equal(await page.getByRole('combobox', { name: 'Or take' }).inputValue(), 'courthouse steps');
    // two rounds; then two logs of the last one alone: 8½ wide still, for top and bottom come first
    await page.getByRole('textbox', { name: 'Logs in the last round' }).fill('2');
    await page.keyboard.press('Enter');
    await becomes(size, 'The block Log cabin, 5½ × 8½ in');
    await page.getByRole('textbox', { name: 'Centre' }).fill('nothing');
    await page.keyboard.press('Enter');
    await page.getByText('This is not a length above zero').waitFor();
    await becomes(size, 'The block Log cabin, 5½ × 8½ in');

    await page.getByRole('button', { name: 'Add from the collection' }).click();
    await page.getByRole('searchbox', { name: 'By name' }).fill('ohio');
    await page.getByText(/^1 of \d+ blocks$/).waitFor();
    await page.getByRole('button', { name: /^Ohio Star/ }).click();
    await becomes(size, /^The block Ohio Star, /);
    await page.getByText('Sews in straight seams.').waitFor();
    assert.match(page.url(), /draft\/ohio-star$/);
    await page.goBack();
    await becomes(size, /^The block Log cabin, /);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('goes from blank to a throw in a barn raising, saved and opened again, in at most 18 actions by pointer', async () => {
    const { page, context } = await opened.page();
    await page.goto(opened.numeric);
    let actions = 0;
    const act = async (work: () => Promise<unknown>) => {
      actions += 1;
      await work();
    };
    const click = (name: string | RegExp) => act(() => page.getByRole('button', { name }).first().click());
    await click('Blank, in inches');
    await click('Add a log cabin');
    await act(() => page.getByRole('link', { name: /^Set/ }).click());
    await click('Barn raising');
    await becomes(() => figureOf(page, 'Set').textContent(), '54 × 54 in');
    await click('Add a border');
    await becomes(() => figureOf(page, 'Set').textContent(), '60 × 60 in');
    await act(() => title(page).fill('My throw'));
    await kept(page);
    await act(() => page.getByRole('link', { name: 'Seamstead' }).click());
    await act(() => page.getByRole('link', { name: /My throw/ }).click());
    await drawn(page);
    await becomes(() => figureOf(page, 'Set').textContent(), '60 × 60 in');
    assert.equal(await page.getByRole('button', { name: 'Barn raising' }).getAttribute('aria-pressed'), 'true');
    assert.ok(actions <= 18, `${actions} actions`);
    await context.close();
  });

  it('does the same by keys alone', async () => {
    const { page, context } = await opened.page();
    await page.goto(opened.numeric);
    await page.getByRole('heading', { name: 'Your quilts' }).waitFor();
    let actions = 0;
    const press = async (keys: string) => {
      actions += 1;
      await page.keyboard.press(keys);
    };
    /** Finds a command by its words and does it: one action to open, one to write, one to do. */
    const find = async (words: string) => {
      await press('Control+k');
      actions += 1;
      await page.keyboard.type(words);
      await press('Enter');
    };
    await press('n');
    await page.getByRole('button', { name: 'Add a log cabin' }).waitFor();
    await press('l');
    await page.getByRole('listbox', { name: /Log cabin/ }).waitFor();
    await press('2');
    await page.getByRole('button', { name: 'Barn raising', disabled: false }).waitFor();
    await find('barn raising');
    await becomes(() => figureOf(page, 'Set').textContent(), '54 × 54 in');
    await find('add a border');
    await becomes(() => figureOf(page, 'Set').textContent(), '60 × 60 in');
    await kept(page);
    await press('h');
    await page.getByRole('link', { name: /New quilt/ }).waitFor();
    await find('open new quilt');
    await drawn(page);
    await becomes(() => figureOf(page, 'Set').textContent(), '60 × 60 in');
    assert.ok(actions <= 18, `${actions} actions`);
    await context.close();
  });

  it('colours a cloth, looks at it in grey, and warns where light and dark lie near', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('link', { name: /^Colour/ }).click();
    await page
      .getByRole('button', { name: /^Slate/ })
      .first()
      .click();
    const written = page.getByRole('textbox', { name: 'Colour, written' });
    await written.fill('#e9dcc0');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^Plum/ }).first().click();
    await written.fill('#e8d9b8');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^Bark/ }).first().click();
    await written.fill('#e0d2b4');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Light and dark read alike' }).waitFor();
    await becomes(() => figureOf(page, 'Colour').textContent(), '7 cloths · values near');
    for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).click();
    await becomes(() => figureOf(page, 'Colour').textContent(), '7 cloths · values apart');
    await page.getByRole('button', { name: 'In grey' }).click();
    await page.getByRole('listbox', { name: /^The quilt in grey/ }).waitFor();
    // one cloth in another's place: a cloth less
    await page
      .getByRole('button', { name: /^Straw/ })
      .first()
      .click();
    await page
      .getByRole('region', { name: 'This cloth' })
      .or(page.getByRole('complementary'))
      .getByRole('button', { name: 'Oat' })
      .first()
      .click();
    await becomes(() => figureOf(page, 'Colour').textContent(), /^6 cloths/);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('says a problem at its place in the maker’s words, keeps the last good drawing, and lets go of it when mended', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    await page.getByRole('textbox', { name: /^Outer border/ }).fill('1/64');
    await page.keyboard.press('Enter');
    const problems = page.getByRole('region', { name: 'Problems' });
    await problems.getByText('Outer border').first().waitFor();
    await problems
      .getByText(/Make it wider/)
      .first()
      .waitFor();
    assert.ok(await page.getByRole('listbox', { name: /^The quilt/ }).isVisible());
    await page.getByRole('button', { name: 'Undo' }).click();
    await problems.waitFor({ state: 'detached' });
    await context.close();
  });

  it('opens on a demo by its address, and on the same quilt the next time; says where there is none', async () => {
    const { page, context, faults } = await opened.page();
    await page.goto(`${opened.numeric}#/demo/harvest-home-throw`);
    await drawn(page);
    await page.getByRole('textbox', { name: 'Name of the quilt' }).fill('Mine');
    await page.keyboard.press('Enter');
    await kept(page);
    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('link', { name: /Mine/ }).waitFor();
    await page.goto(`${opened.numeric}#/demo/harvest-home-throw`);
    await drawn(page);
    assert.equal(await page.getByRole('textbox', { name: 'Name of the quilt' }).inputValue(), 'Mine');
    // the address that opened it is passed by
    await page.goBack();
    await page.getByRole('heading', { name: 'Your quilts' }).waitFor();
    assert.equal(await page.getByRole('link', { name: /Mine/ }).count(), 1);
    await page.goto(`${opened.numeric}#/demo/none`);
    await page.getByText('There is no such demo.').waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('makes a copy that goes its own way', async () => {
    const { page, context, faults } = await opened.page();
    await openDemo(page, opened.local);
    const address = page.url();
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('menuitem', { name: 'Make a copy of the quilt' }).click();
    await becomes(() => title(page).inputValue(), 'Harvest Home, a copy');
    await drawn(page);
    await page.getByRole('button', { name: 'Rows: one less' }).click();
    await becomes(() => figureOf(page, 'Set').textContent(), '64 × 55 in');
    await page.goto(address);
    await drawn(page);
    await becomes(() => figureOf(page, 'Set').textContent(), '64 × 64 in');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('shows inches as centimetres and leaves what is stored alone', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local);
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('menuitem', { name: 'How you like it' }).click();
    await page.getByRole('radio', { name: 'in centimetres', exact: true }).check();
    await page.getByRole('button', { name: 'Close' }).click();
    // 64 in are 162.56 cm: 1 in = 2.54 cm exactly
    await becomes(() => figureOf(page, 'Set').textContent(), '162.56 × 162.56 cm');
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    await context.close();
  });

  it('finds and runs a command by its words, and lists keys that can be switched off', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.local);
    await page.keyboard.press('Control+k');
    await page.getByRole('searchbox').fill('all quilts');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Your quilts' }).waitFor();
    await page.keyboard.press('?');
    await page.getByRole('checkbox', { name: 'Use these keys' }).uncheck();
    await page.getByRole('button', { name: 'Close' }).click();
    await page.keyboard.press('n');
    await page.waitForTimeout(300);
    assert.ok(await page.getByRole('heading', { name: 'Your quilts' }).isVisible());
    await context.close();
  });
});
