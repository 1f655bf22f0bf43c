// Every view as a screen reader finds it (axe-core's rules), in both themes, on a phone and at a desk; and targets large enough
// for a finger (WCAG 2.2, 2.5.8: 24 by 24 CSS pixels).

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { drawn, type Opened, openDemo, openWorkroom } from './page.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** Of axe-core's rules those that a colour can break. */
const ofColours = ['color-contrast', 'link-in-text-block'];

/** @param rules undefined for all */
const violationsOn = async (page: Page, rules?: readonly string[]): Promise<readonly string[]> => {
  // what is still being laid on the page is half seen through
  await page.evaluate(() =>
    Promise.allSettled(
      (globalThis as unknown as { document: { getAnimations: () => { finished: Promise<unknown> }[] } }).document
        .getAnimations()
        .map(({ finished }) => finished),
    ),
  );
  const found = await page.evaluate(async (runOnly) => {
    const run = (globalThis as unknown as { axe: { run: (options: object) => Promise<{ violations: Violation[] }> } })
      .axe;
    // target-size is measured below, on every target
    return (await run.run({ resultTypes: ['violations'], ...(runOnly ? { runOnly } : {}) })).violations;
  }, rules);
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary ?? ''}`),
  );
};

const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, [role=menuitem]')].flatMap((target) => {
      // a box and its words are one target
      const { width, height } = (target.closest('label.check') ?? target).getBoundingClientRect();
      return width > 0 && (width < 24 || height < 24)
        ? [`${width} × ${height}: ${target.outerHTML.slice(0, 120)}`]
        : [];
    }),
  );

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

interface View {
  readonly name: string;
  readonly open: (page: Page, at: string) => Promise<void>;
}

const plainPicture = PNG.sync.write(new PNG({ width: 40, height: 30, fill: true }));

const views: readonly View[] = [
  {
    name: 'home, empty',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByText('None yet in this browser').waitFor();
    },
  },
  {
    name: 'home, with a file that cannot be opened',
    open: async (page, at) => {
      await page.goto(at);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      const faulty = JSON.stringify({ format: 'seamstead-quilt', version: 1, unit: 'ells', fabrics: [], blocks: [] });
      await chooser.setFiles({ name: 'faulty.quilt.json', mimeType: 'application/json', buffer: Buffer.from(faulty) });
      await page.getByRole('dialog', { name: /faulty\.quilt\.json cannot be opened/ }).waitFor();
    },
  },
  {
    name: 'home, several files told',
    open: async (page, at) => {
      await page.goto(at);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      await chooser.setFiles(['examples/orchard-gate.quilt.json', 'examples/broken/double-comma.quilt.json']);
      await page.getByRole('dialog', { name: '1 of 2 files opened' }).waitFor();
    },
  },
  {
    name: 'set, a file with a fault, drawn as far as it can be',
    open: async (page, at) => {
      await page.goto(at);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      await chooser.setFiles('examples/broken/gap.quilt.json');
      await page.getByRole('link', { name: 'Block Half-square pair' }).waitFor();
      await page.getByRole('listbox', { name: /^The quilt/ }).waitFor();
    },
  },
  {
    name: 'home with a quilt',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.goto(`${at}#/`);
      await page.getByRole('link', { name: /Harvest Home/ }).waitFor();
    },
  },
  {
    name: 'sew, what there is',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('link', { name: /^Begin/ }).waitFor();
    },
  },
  {
    name: 'sew, how long things take, a figure that cannot be read',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('button', { name: 'How long things take' }).click();
      const field = page.getByRole('textbox', { name: /^Cut one piece/ });
      await field.fill('soon');
      await field.press('Enter');
      await page.getByRole('alert').waitFor();
    },
  },
  {
    name: 'sew, a block before its first seam',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.locator('.sew-card').first().click();
      await page.getByRole('table', { name: 'Pieces' }).waitFor();
    },
  },
  {
    name: 'sew, the top before its first seam',
    open: async (page, at) => {
      await openDemo(page, at, 'Lantern Lane');
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.locator('.sew-card').last().click();
      await page.getByRole('table', { name: 'Borders' }).waitFor();
    },
  },
  {
    name: 'sew, a step of a block',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('link', { name: /^Begin/ }).click();
      await page.locator('.sew-laid svg').waitFor();
      await page.getByRole('button', { name: 'One more sewn' }).click();
    },
  },
  {
    name: 'sew, a border of the top',
    open: async (page, at) => {
      await openDemo(page, at, 'Heron Hanging');
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('link', { name: /^Begin/ }).click();
      await page.locator('.sew-step').waitFor();
      await page.evaluate(() => {
        location.hash = location.hash.replace(/sew.*$/, 'sew/~top/18');
      });
      await page.getByRole('heading', { name: /^Sew strip/ }).waitFor();
    },
  },
  {
    name: 'sew, in large type',
    open: async (page, at) => {
      await openDemo(page, at, 'Heron Hanging');
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('link', { name: /^Begin/ }).click();
      await page.locator('.sew-step').waitFor();
      await page.evaluate(() => {
        location.hash = location.hash.replace(/sew.*$/, 'sew/~top/20/large');
      });
      await page.locator('.sew-large .sew-step:not(.is-behind)').waitFor();
    },
  },
  {
    name: 'sew, in chains, a batch of several blocks',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.goto(page.url().replace(/set$/, 'sew/~chains/4'));
      await page.locator('.sew-step[aria-label="Batch 4"] .sew-members').waitFor();
      await page.getByRole('button', { name: 'One more sewn' }).click();
    },
  },
  {
    name: 'sew, in chains, all rounds',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.goto(page.url().replace(/set$/, 'sew/~chains/round-2'));
      await page.locator('.sew-batch-picture svg').first().waitFor();
    },
  },
  {
    name: 'sew, how a block is pressed, a spun seam chosen',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.goto(page.url().replace(/set$/, 'sew/wheel/pressing/3'));
      await page
        .getByRole('status')
        .filter({ hasText: /^Step 3, / })
        .waitFor();
      await page.getByText('From the back', { exact: true }).waitFor();
    },
  },
  {
    name: 'sew, how the top is pressed',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.goto(page.url().replace(/set$/, 'sew/~top/pressing'));
      await page.getByRole('heading', { name: 'The top, pressed' }).waitFor();
    },
  },
  {
    name: 'sew, it came out the wrong size, with what to do',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.goto(page.url().replace(/set$/, 'sew/cabin/size'));
      const write = (step: number, width: string) =>
        page.getByRole('textbox', { name: `Width after step ${step}`, exact: true }).fill(width);
      // drawn 4½ and 5½ in, each seam a thread too wide
      await write(1, '4 7/16');
      await write(3, '5 3/8');
      await page.keyboard.press('Enter');
      await page.getByRole('img', { name: /^The unit after step 3/ }).waitFor();
    },
  },
  {
    name: 'sew, it came out the wrong size, one that cannot be read',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.goto(page.url().replace(/set$/, 'sew/cabin/size'));
      await page.getByRole('textbox', { name: 'Width after step 2', exact: true }).fill('four');
      await page.keyboard.press('Enter');
      await page.getByText('There is no answer while a size cannot be read.').waitFor();
    },
  },
  {
    name: 'cut, ways to make, one of them compared',
    open: async (page, at) => {
      await openDemo(page, at, 'Lantern Lane');
      await page.getByRole('link', { name: /^Cut/ }).click();
      await page.getByRole('link', { name: 'Ways to make' }).click();
      await page.getByText(/^All \d+ choices were planned/).waitFor({ timeout: 60_000 });
      await page.keyboard.press('n');
      await page.getByRole('heading', { name: 'Choice 1' }).waitFor();
    },
  },
  {
    name: 'cut, a piece chosen and other ways weighed',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Cut/ }).click();
      await page.getByRole('listbox', { name: /^Cloth A/ }).press('End');
      await page.getByRole('heading', { name: 'A1' }).waitFor();
      await page.locator('.other-ways button:not(:disabled)').first().waitFor({ timeout: 60_000 });
    },
  },
  {
    name: 'cut, step by step, with a tick',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Cut/ }).click();
      await page.getByRole('link', { name: 'Step by step' }).click();
      await page.getByRole('button', { name: 'Next step done' }).click();
      await page.getByText(/^1 of \d+ steps done/).waitFor();
    },
  },
  {
    name: 'set, demo, a block chosen',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('listbox', { name: /^The quilt/ }).press('End');
      for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowUp');
      await page.getByRole('button', { name: 'Barn raising', disabled: false }).waitFor();
    },
  },
  {
    name: 'set, blank',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('link', { name: /^Set/ }).click();
      await drawn(page);
    },
  },
  {
    name: 'set, several places chosen',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('button', { name: 'Every place' }).click();
      await page.getByRole('heading', { name: '36 places' }).waitFor();
      await page.getByText('In the 36 chosen places').waitFor();
    },
  },
  {
    name: 'set on point, with a pieced border and a size to reach',
    open: async (page, at) => {
      await openDemo(page, at, 'Lantern Lane');
      await page.getByRole('combobox', { name: 'For' }).selectOption('twin');
      await page.locator('.ways button').first().waitFor();
      await page.getByText(/along the top/).waitFor();
    },
  },
  {
    name: 'set in sections, a part chosen',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page
        .getByRole('button', { name: /^Strip, / })
        .first()
        .click();
      await page.getByRole('textbox', { name: 'Width of the strip' }).waitFor();
    },
  },
  {
    name: 'set, blocks of different sizes',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('button', { name: 'Straight', exact: true }).click();
      await page.getByRole('button', { name: /^Frame the/ }).waitFor();
    },
  },
  {
    name: 'set with a problem',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('textbox', { name: /Outer border/ }).fill('1/64');
      await page.keyboard.press('Enter');
      await page.getByRole('region', { name: 'Problems' }).waitFor();
    },
  },
  {
    name: 'draft, blank',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('button', { name: 'Lay a patch' }).waitFor();
    },
  },
  {
    name: 'draft, demo',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Draft/ }).click();
      await page.getByRole('listbox', { name: /^The block Log cabin/ }).waitFor();
    },
  },
  {
    name: 'draft, a log cabin, a log chosen',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('button', { name: 'Add a log cabin' }).click();
      await page.getByRole('listbox', { name: /^The block Log cabin/ }).press('End');
      await page.getByText('This log alone').waitFor();
    },
  },
  {
    name: 'draft, a patch to be laid',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('button', { name: 'Lay a patch' }).click();
      await page.getByRole('application').press('Enter');
      await page.getByText('Half-square triangle').waitFor({ state: 'attached' });
    },
  },
  {
    name: 'draft, a curve in hand',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('listbox', { name: /^The block First block/ }).waitFor();
      await page.getByRole('button', { name: 'Lay a curve' }).click();
      const hand = page.getByRole('application');
      for (const key of ['ArrowRight', 'Enter', 'ArrowLeft', 'ArrowDown', 'Enter']) await hand.press(key);
      await page.getByRole('textbox', { name: 'Radius' }).waitFor();
    },
  },
  {
    name: 'draft, patches chosen and a gap to mend',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
      await page.getByRole('button', { name: 'Lay a patch' }).click();
      await page.getByRole('application').press('Enter');
      await page.getByRole('button', { name: 'Move patches' }).click();
      await page.getByRole('application').press('ArrowRight');
      await page.getByRole('button', { name: 'Fill the gap' }).waitFor();
      await page.getByText('Repeat', { exact: true }).click();
    },
  },
  {
    name: 'the collection',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
      await page.getByRole('button', { name: 'Add from the collection' }).click();
      await page.getByText(/of \d+ blocks/).waitFor();
    },
  },
  {
    name: 'draft, a line advised',
    open: async (page, at) => {
      await openDemo(page, at, 'Weir Street');
      await page.getByRole('link', { name: /^Draft/ }).click();
      await page.getByRole('button', { name: 'Add the line' }).waitFor();
    },
  },
  {
    name: 'draft, a block too large for its place',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('link', { name: /^Draft/ }).click();
      await page.getByRole('textbox', { name: 'Side' }).fill('400');
      await page.keyboard.press('Enter');
      await page.getByRole('region', { name: 'Problems' }).waitFor();
    },
  },
  {
    name: 'colour, blank',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in inches' }).click();
      await page.getByRole('link', { name: /^Colour/ }).click();
      await drawn(page);
    },
  },
  {
    name: 'colour, a cloth too narrow',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Colour/ }).click();
      await page
        .getByRole('button', { name: /^Ember/ })
        .first()
        .click();
      await page.getByRole('textbox', { name: /Usable width/ }).fill('1');
      await page.keyboard.press('Enter');
      await page.getByRole('region', { name: 'Problems' }).waitFor();
    },
  },
  {
    name: 'colour, light darker than dark',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('link', { name: /^Colour/ }).click();
      for (const [cloth, colour] of [
        ['Milk', '#101010'],
        ['Fern', '#e0e0e0'],
      ]) {
        await page
          .getByRole('button', { name: new RegExp(`^${cloth}`) })
          .first()
          .click();
        await page.getByRole('textbox', { name: 'Colour, written' }).fill(colour ?? '');
        await page.keyboard.press('Enter');
      }
      await page.getByRole('button', { name: 'Let them change places' }).first().waitFor();
    },
  },
  {
    name: 'colour, demo',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Colour/ }).click();
      await page.getByRole('button', { name: /^Oat/ }).first().waitFor();
    },
  },
  {
    name: 'colour, light and dark read alike for some eyes',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Colour/ }).click();
      for (const cloth of ['Bark', 'Plum', 'Slate']) {
        await page
          .getByRole('button', { name: new RegExp(`^${cloth}`) })
          .first()
          .click();
        await page.getByRole('textbox', { name: 'Colour, written' }).fill('#5f3d8f');
        await page.keyboard.press('Enter');
      }
      for (const cloth of ['Oat', 'Straw', 'Honey']) {
        await page
          .getByRole('button', { name: new RegExp(`^${cloth}`) })
          .first()
          .click();
        await page.getByRole('textbox', { name: 'Colour, written' }).fill('#c8402a');
        await page.keyboard.press('Enter');
      }
      await page.getByRole('heading', { name: 'Light and dark read alike' }).waitFor();
      await page.getByRole('button', { name: 'protan eyes' }).waitFor();
    },
  },
  {
    name: 'colour, colourways side by side, seen by deutan eyes',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Colour/ }).click();
      await page.getByRole('button', { name: 'Side by side' }).click();
      await page.getByRole('button', { name: 'Make another colourway' }).click();
      await page.getByRole('textbox', { name: 'Name of the colourway' }).waitFor();
      await page.getByRole('button', { name: 'As deutan eyes see it' }).click();
    },
  },
  {
    name: 'colour, a photograph of cloth, refused',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Colour/ }).click();
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a photograph …' }).click(),
      ]);
      await chooser.setFiles({ name: 'words.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
      await page.getByRole('alert').waitFor();
    },
  },
  {
    name: 'colour, a scrappy quilt whose cloth has a photograph',
    open: async (page, at) => {
      await openDemo(page, at, 'Twelve Fields');
      await page.getByRole('link', { name: /^Colour/ }).click();
      await page
        .getByRole('group', { name: /^Cloths for/ })
        .getByRole('button', { pressed: false })
        .first()
        .click();
      await page.getByRole('button', { name: /^Give .* these cloths$/ }).click();
      await page.getByRole('button', { name: 'Draw again' }).click();
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a photograph …' }).click(),
      ]);
      await chooser.setFiles({ name: 'plain.png', mimeType: 'image/png', buffer: plainPicture });
      await page.getByRole('textbox', { name: /Width of cloth/ }).fill('6');
      await page.keyboard.press('Tab');
      await page.getByRole('button', { name: 'Take this cloth' }).click();
      await page.getByRole('button', { name: 'Take it away' }).waitFor();
    },
  },
  {
    name: 'finish, demo',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('link', { name: /^Finish/ }).click();
      await page.locator('.finish-part .priced .quiet', { hasText: 'cloth' }).first().waitFor();
    },
  },
  {
    name: 'finish, blank',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
      await page.getByRole('link', { name: /^Finish/ }).click();
      await page.getByText('No backing, batting or binding yet.').waitFor();
    },
  },
  {
    name: 'finish, every part, a bed too large and a binding too narrow',
    open: async (page, at) => {
      await openDemo(page, at, 'Lantern Lane');
      await page.getByRole('link', { name: /^Finish/ }).click();
      for (const part of ['hanging sleeve', 'label', 'bed'])
        await page.getByRole('button', { name: `Add a ${part}` }).click();
      await page.locator('.finish-warning').first().waitFor();
      await page.getByRole('textbox', { name: /^Strips cut/ }).fill('1/4');
      await page.keyboard.press('Enter');
      await page.getByRole('region', { name: 'Problems' }).waitFor();
    },
  },
  {
    name: 'compare, a point against now',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.keyboard.press('k');
      await page.getByText('Restore point kept').waitFor();
      await page.getByRole('button', { name: 'Add a border' }).click();
      await page.goto(page.url().replace(/set$/, 'compare'));
      await page.getByText(/^They differ in/).waitFor();
      await page.getByRole('button', { name: /^Remove As it began/ }).click();
      await page.getByRole('button', { name: 'Bring it back' }).waitFor();
      await page.getByText('It is gone').waitFor();
    },
  },
  {
    name: 'compare, blank',
    open: async (page, at) => {
      await page.goto(at);
      await page.getByRole('button', { name: 'Blank, in centimetres' }).click();
      await page.getByRole('link', { name: /^Set/ }).waitFor();
      await page.goto(page.url().replace(/draft$/, 'compare'));
      await page.getByText(/^Both are the same version/).waitFor();
    },
  },
  {
    name: 'compare, now cannot be sewn',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('textbox', { name: /Outer border/ }).fill('1/64');
      await page.keyboard.press('Enter');
      await page.getByRole('region', { name: 'Problems' }).waitFor();
      await page.goto(page.url().replace(/set$/, 'compare'));
      await page.locator('.pictures .problems').waitFor();
    },
  },
  {
    name: 'the menu',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('button', { name: 'More', exact: true }).click();
      await page.getByRole('menuitem', { name: 'Keys' }).waitFor();
    },
  },
  {
    name: 'how you like it',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('button', { name: 'More', exact: true }).click();
      await page.getByRole('menuitem', { name: 'How you like it' }).click();
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'something to do, searched',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.keyboard.press('Control+k');
      await page.keyboard.type('border');
      await page.getByText(/found; Enter does the first/).waitFor();
    },
  },
  {
    name: 'print, the pattern',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.keyboard.press('Control+p');
      await page.getByRole('img', { name: /^Page 1 of/ }).waitFor();
      await page.locator('.thumbnail img').first().waitFor();
    },
  },
  {
    name: 'print, a handout',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.keyboard.press('Control+p');
      await page.getByRole('combobox', { name: 'Print', exact: true }).selectOption('handout/cabin');
      await page.waitForURL(/handout\/cabin$/);
      await page.getByRole('img', { name: /^Page 1 of [1-9]$/ }).waitFor();
    },
  },
  {
    name: 'print, while the pages are set',
    open: async (page, at) => {
      await page.route('**/api/pages/*', () => undefined); // it sets them for ever
      await openDemo(page, at);
      await page.keyboard.press('Control+p');
      await page.getByText('Setting the pages').waitFor();
    },
  },
  {
    name: 'print, where the printer does not answer',
    open: async (page, at) => {
      // another program answers at its address: a request that fails is a fault of the page in these tests
      await page.route('**/api/pages/*', (route) => route.fulfill({ json: null }));
      await openDemo(page, at);
      await page.keyboard.press('Control+p');
      await page.getByRole('button', { name: 'Try again' }).waitFor();
    },
  },
  {
    name: 'keys',
    open: async (page, at) => {
      await openDemo(page, at);
      await page.getByRole('button', { name: 'More', exact: true }).click();
      await page.getByRole('menuitem', { name: 'Keys' }).click();
      await page.getByRole('dialog').waitFor();
    },
  },
];

/** In one theme and then in the other, as where her system goes dark while she looks at it: of one page nothing but colours changes. */
const lookedThrough = async (
  opened: Opened,
  { open, width }: Pick<View, 'open'> & { readonly width: number },
): Promise<void> => {
  const { page, context, faults } = await opened.page({ width, height: 800 });
  await open(page, opened.numeric);
  await page.evaluate(axe);
  for (const [theme, rules] of [['light'], ['dark', ofColours]] as const) {
    await page.emulateMedia({ colorScheme: theme });
    const at = `${theme}, ${width} px`;
    assert.deepEqual(await violationsOn(page, rules), [], at);
    assert.deepEqual(await smallTargets(page), [], at);
    assert.equal(await overflow(page), 0, `${at}: the page scrolls sideways`);
    assert.deepEqual(faults, [], at);
  }
  await context.close();
};

describe('every view can be seen, heard and touched', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const { name, open } of views) {
    // phone and desk side by side: while one waits for its page, the other is looked through
    it(name, async () => {
      await Promise.all([390, 1280].map((width) => lookedThrough(opened, { open, width })));
    });
  }

  it('the drawing is heard piece by piece: name, cloth, cut size, how many, and the neighbour to each side', async () => {
    const { page, context } = await opened.page();
    await openDemo(page, opened.numeric);
    const list = page.getByRole('listbox');
    const here = async (): Promise<string> => {
      const words = await list.evaluate(
        (box) => document.getElementById(box.getAttribute('aria-activedescendant') ?? '')?.textContent ?? '',
      );
      // figures and their units are not parted at the end of a line
      return words.replace(/\s/g, ' ');
    };
    const press = async (key: string): Promise<string> => {
      await page.keyboard.press(key);
      return here();
    };
    await list.focus();
    // 64 by 3½ with ¼ all round; a quilt of 36 blocks has two rings of four borders
    assert.match(await press('Home'), /^Piece [A-Z], border, Slate, 64 × 3½ in finished, cut 64½ × 4 in, 1 of 44$/);
    assert.match(await press('ArrowDown'), /^Piece [A-Z], border, Oat, 57 × 1½ in finished, cut 57½ × 2 in, 2 of 44$/);
    const block = await press('ArrowDown');
    assert.match(block, /^Log cabin, row 1, place (\d)/);
    const place = Number(/place (\d)/.exec(block)?.[1]);
    assert.match(await press('ArrowRight'), new RegExp(`^Log cabin, row 1, place ${place + 1},`));
    assert.match(await press('ArrowDown'), new RegExp(`^Log cabin, row 2, place ${place + 1},`));
    assert.equal(await press('Enter'), 'Piece A, Ember, cut 3½ × 3½ in, 1 of 13');
    assert.equal(await list.getAttribute('aria-label'), `Pieces of Log cabin, row 2, place ${place + 1}, turned 270°`);
    const round = [];
    for (const key of ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']) {
      await page.keyboard.press('Home');
      round.push((await press(key)).slice(0, 7));
    }
    // the logs lie left, above, right and below; turned by 270° clockwise below, left, above and right
    assert.deepEqual(round, ['Piece D', 'Piece B', 'Piece C', 'Piece E']);
    assert.match(await press('Escape'), new RegExp(`^Log cabin, row 2, place ${place + 1},`));
    await context.close();
  });
});
