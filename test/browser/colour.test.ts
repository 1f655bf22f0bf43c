// Colour in a real Chromium: cloths from photographs, colourways, tones, scrappy draws, and other eyes.

import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { planQuilt } from '#craft';
import type { QuiltDocument } from '#craft/design';
import { drawn, kept, type Opened, openDemo, openWorkroom } from './page.ts';

/** Upright stripes, dark and light, so many over the whole picture. */
const stripes = (count: number): { name: string; mimeType: string; buffer: Buffer } => {
  const [width, height] = [1200, 600];
  const picture = new PNG({ width, height });
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const value = Math.floor((x * count) / width) % 2 === 0 ? 20 : 235;
      picture.data.set([value, value, value, 255], (y * width + x) * 4);
    }
  }
  return { name: 'stripes.png', mimeType: 'image/png', buffer: PNG.sync.write(picture) };
};

const toColour = async (page: Page, at: string, demo?: string): Promise<void> => {
  await openDemo(page, at, demo);
  await page.getByRole('link', { name: /^Colour/ }).click();
  await page.getByRole('region', { name: 'Cloths, from light to dark' }).waitFor();
};

const cloth = (page: Page, name: string) =>
  page
    .getByRole('region', { name: 'Cloths, from light to dark' })
    .getByRole('button', { name: new RegExp(`^${name}`) });

/** As it is saved to a file. */
const documentOn = async (page: Page): Promise<QuiltDocument> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return JSON.parse(Buffer.concat(chunks).toString('utf8')) as QuiltDocument;
};

const choosePhoto = async (page: Page, file: { name: string; mimeType: string; buffer: Buffer }): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'From a photograph …' }).click(),
  ]);
  await chooser.setFiles(file);
  await page.getByRole('dialog').waitFor();
};

/** Changes from dark to light and back along a row of pixels of the drawing, and how wide the drawing is in it. */
const stripesAlong = (page: Page, down: number): Promise<{ changes: number; widthPx: number }> =>
  page.evaluate(async (share) => {
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    const canvas = document.querySelector<HTMLCanvasElement>('.drawing-canvas') as HTMLCanvasElement;
    const to = canvas.getContext('2d') as CanvasRenderingContext2D;
    const { data } = to.getImageData(0, Math.round(canvas.height * share), canvas.width, 1);
    const painted = Array.from({ length: canvas.width }, (_, x) => x).filter((x) => (data[x * 4 + 3] ?? 0) > 0);
    let changes = 0;
    let side: boolean | null = null;
    for (const x of painted) {
      const value = data[x * 4] ?? 0;
      if (value > 90 && value < 165) continue;
      if (side !== null && value > 128 !== side) changes += 1;
      side = value > 128;
    }
    return { changes, widthPx: painted.length };
  }, down);

describe('colour', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`takes a cloth from a photograph at true scale, in one step, and keeps it (${where})`, async () => {
      const { page, context, faults } = await opened.page({ width: 1600, height: 1400 });
      await toColour(page, opened[where]);
      const before = await documentOn(page);
      await cloth(page, 'Slate').click();
      await choosePhoto(page, stripes(16));
      const take = page.getByRole('button', { name: 'Take this cloth' });
      assert.ok(await take.isDisabled(), 'without a width');
      // 16 stripes in 16 in; the right half of the picture is kept
      await page.getByRole('textbox', { name: /Width of cloth in the whole photograph/ }).fill('16');
      await page.keyboard.press('Tab');
      await page.getByRole('textbox', { name: 'Left edge, %' }).fill('50');
      await page.keyboard.press('Enter');
      await page.getByText('Kept: 8 × 8 in of cloth.').waitFor();
      await take.click();
      await page.getByRole('dialog').waitFor({ state: 'hidden' });
      await page.getByRole('img', { name: 'Slate, photographed' }).waitFor();

      const after = await documentOn(page);
      const slate = after.fabrics.find(({ id }) => id === 'slate');
      assert.equal(slate?.photo?.width, '8');
      assert.match(slate?.photo?.image ?? '', /^data:image\/jpeg;base64,/);
      assert.ok((slate?.photo?.image.length ?? 0) <= 200_000);
      // the mean of the light of 20 and 235 of 255: sRGB 175, worked by hand from IEC 61966-2-1
      const grey = Number.parseInt(slate?.colour.slice(1, 3) ?? '', 16);
      assert.ok(Math.abs(grey - 175) <= 3, slate?.colour);
      const planned = planQuilt(after, { budget: { steps: 0 } });
      assert.ok(planned.ok, 'what is saved can be planned');

      // the outer border is of Slate: 64 in of stripes 1 in wide, out of a photograph of 8 in, along the top edge of the quilt
      await page.waitForTimeout(300);
      const margin = await page.evaluate(() => {
        const canvas = document.querySelector<HTMLCanvasElement>('.drawing-canvas') as HTMLCanvasElement;
        const to = canvas.getContext('2d') as CanvasRenderingContext2D;
        const { data } = to.getImageData(Math.round(canvas.width / 2), 0, 1, canvas.height);
        const first = Array.from({ length: canvas.height }, (_, y) => y).find((y) => (data[y * 4 + 3] ?? 0) > 0) ?? 0;
        return (first + 12) / canvas.height;
      });
      const { changes, widthPx } = await stripesAlong(page, margin);
      assert.ok(widthPx > 600, `${widthPx}`);
      assert.ok(changes >= 62 && changes <= 66, `${changes} changes over 64 in`);

      await kept(page);
      await page.reload();
      await drawn(page);
      assert.deepEqual(await documentOn(page), after);
      await page.getByRole('button', { name: 'Undo' }).click();
      assert.deepEqual(await documentOn(page), before);
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('prints a quilt whose cloth has a photograph', async () => {
    const { page, context, faults } = await opened.page();
    await toColour(page, opened.numeric);
    await choosePhoto(page, stripes(8));
    await page.getByRole('textbox', { name: /Width of cloth in the whole photograph/ }).fill('20 cm');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Take this cloth' }).click();
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: 'Print the pattern' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      page.getByRole('button', { name: 'Save the PDF' }).click(),
    ]);
    assert.equal(download.suggestedFilename(), 'harvest-home.pdf');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('cuts a photograph by two taps, and by keys alone; says what is no picture; can be cancelled', async () => {
    const { page, context } = await opened.page();
    await toColour(page, opened.numeric);
    await choosePhoto(page, stripes(8));
    const picture = page.locator('.crop-picture');
    // until the picture and the letters have come, nothing in the sheet stands where it stays
    await page.waitForFunction(
      () =>
        (document.querySelector<HTMLImageElement>('.crop img')?.naturalWidth ?? 0) > 0 &&
        document.fonts.status === 'loaded',
    );
    const box = await picture.boundingBox();
    assert.ok(box);
    await page.mouse.click(box.x + box.width * 0.75, box.y + box.height * 0.8);
    await page.getByText('Now tap the opposite corner.').waitFor();
    await page.mouse.click(box.x + box.width * 0.25, box.y + box.height * 0.3);
    await page.getByText('Tap two opposite corners').waitFor();
    const at = (edge: string) => page.getByRole('textbox', { name: `${edge} edge, %` }).inputValue();
    await page.waitForFunction(
      () =>
        ![...document.querySelectorAll<HTMLInputElement>('.crop-fields input')].some(({ value }) => value === '100'),
    );
    for (const [edge, wanted] of [
      ['Left', 25],
      ['Right', 75],
      ['Upper', 30],
      ['Lower', 80],
    ] as const)
      assert.ok(Math.abs(Number(await at(edge)) - wanted) <= 1, `${edge}: ${await at(edge)}`);
    const left = Number(await at('Left'));
    await page.getByRole('button', { name: 'Left edge, %: one more' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll<HTMLInputElement>('.crop-fields input')].some(({ value }) => value === wanted),
      String(left + 1),
    );
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());

    await choosePhoto(page, { name: 'words.png', mimeType: 'image/png', buffer: Buffer.from('not a picture at all') });
    await page.getByRole('alert').filter({ hasText: 'no picture that the browser can read' }).waitFor();
    await context.close();
  });

  it('says so where the photographs of a quilt would together be larger than a document may be', async () => {
    const { page, context } = await opened.page();
    await toColour(page, opened.numeric);
    const quilt = await documentOn(page);
    const image = `data:image/jpeg;base64,${'A'.repeat(396_000)}`;
    for (let n = 0; n < 16; n++)
      quilt.fabrics.push({ id: `more-${n}`, name: `More ${n}`, colour: '#445566', photo: { image, width: '9' } });
    await page.goto(opened.numeric);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'From a file' }).click(),
    ]);
    const buffer = Buffer.from(JSON.stringify({ ...quilt, title: 'Many photographs' }));
    await chooser.setFiles({ name: 'many.quilt.json', mimeType: 'application/json', buffer });
    await drawn(page);
    await page.getByRole('link', { name: /^Colour/ }).click();
    await cloth(page, 'Ember').click();
    await choosePhoto(page, stripes(8));
    await page.getByRole('textbox', { name: /Width of cloth in the whole photograph/ }).fill('9');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Take this cloth' }).click();
    await page.getByRole('alert').filter({ hasText: 'together be larger than a document may be' }).waitFor();
    assert.ok(await page.getByRole('button', { name: 'Undo', includeHidden: true }).isDisabled());
    await context.close();
  });

  it('gives a tone another cloth, or several to draw from, in chosen blocks, as one step, by keys alone', async () => {
    const { page, context } = await opened.page();
    await toColour(page, opened.numeric, 'Twelve Fields');
    const before = await documentOn(page);
    await page.getByRole('combobox', { name: 'Tone' }).focus();
    await page.getByRole('combobox', { name: 'Tone' }).selectOption('dark');
    const blocks = before.blocks.filter(({ colourings }) => colourings?.default?.dark !== undefined);
    assert.ok(blocks.length > 2);
    const out = blocks[0];
    await page
      .getByRole('checkbox', { name: out?.title ?? '' })
      .first()
      .focus();
    await page.keyboard.press('Space');
    const group = page.getByRole('group', { name: 'Cloths for dark' });
    const pressed = group.getByRole('button', { pressed: true });
    for (let left = await pressed.count(); left > 0; left = await pressed.count()) {
      await pressed.first().focus();
      await page.keyboard.press('Space');
    }
    const [first, second] = before.fabrics;
    for (const one of [first, second]) {
      await group.getByRole('button', { name: one?.name ?? '' }).focus();
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Give dark these cloths' }).focus();
    await page.keyboard.press('Enter');
    const after = await documentOn(page);
    for (const block of after.blocks.filter(({ id }) => blocks.some((one) => one.id === id))) {
      const dark = block.colourings?.default?.dark;
      if (block.id === out?.id) assert.deepEqual(dark, out.colourings?.default?.dark);
      else assert.deepEqual(dark, [first?.id, second?.id]);
    }
    // now there is something to draw again
    await page.getByText('This is draw 1.').waitFor();
    await page.locator('body').press('d');
    await page.getByText('This is draw 2.').waitFor();
    assert.equal((await documentOn(page)).draw, 2);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('This is draw 1.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.deepEqual(await documentOn(page), before);
    await context.close();
  });

  it('exchanges two cloths throughout, as one step', async () => {
    const { page, context } = await opened.page();
    await toColour(page, opened.local);
    const before = await documentOn(page);
    await cloth(page, 'Slate').click();
    await page.getByRole('button', { name: 'Changes places' }).click();
    await page.getByRole('button', { name: 'Oat', exact: true }).first().click();
    const after = await documentOn(page);
    const borders = (of: QuiltDocument) => of.top.borders?.map((border) => ('fabric' in border ? border.fabric : ''));
    const exchanged: Readonly<Record<string, string>> = { slate: 'oat', oat: 'slate' };
    assert.deepEqual(
      borders(after),
      borders(before)?.map((id) => exchanged[id] ?? id),
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    assert.deepEqual(await documentOn(page), before);
    await context.close();
  });

  it('makes, names, copies, edits and removes colourways, and shows them side by side', async () => {
    const { page, context, faults } = await opened.page();
    await toColour(page, opened.numeric);
    const own = await documentOn(page);
    await page.locator('body').press('w');
    const board = page.getByRole('region', { name: 'Colourways side by side' });
    await board.getByRole('button', { name: 'Make another colourway' }).click();
    await page.getByRole('textbox', { name: 'Name of the colourway' }).fill('Fern');
    await cloth(page, 'Slate').click();
    await page.getByRole('textbox', { name: 'Colour, written' }).fill('#2f5c34');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Copy it' }).click();
    assert.equal(await page.getByRole('textbox', { name: 'Name of the colourway' }).inputValue(), 'Fern, a copy');
    assert.equal(await board.locator('canvas').count(), 3);
    const made = await documentOn(page);
    assert.deepEqual(made.fabrics, own.fabrics, 'the quilt’s own cloths stay');
    assert.deepEqual(
      made.colourways?.map(({ title, fabrics }) => [title, fabrics]),
      [
        ['Fern', { slate: { colour: '#2f5c34' } }],
        ['Fern, a copy', { slate: { colour: '#2f5c34' } }],
      ],
    );
    assert.ok(planQuilt(made, { budget: { steps: 0 } }).ok);

    await page.getByRole('button', { name: 'Remove it' }).click();
    await board.getByRole('button', { name: 'Fern', exact: true }).click();
    await page.getByRole('button', { name: 'Side by side' }).click();
    // the outer border lies along the left edge of the drawing
    await drawn(page);
    const border = await edgePixel(page);
    assert.deepEqual(border, [0x2f, 0x5c, 0x34]);
    await page.getByRole('combobox', { name: 'Colourway' }).selectOption('As drawn');
    assert.deepEqual(await edgePixel(page), [0x2f, 0x3c, 0x44]);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('looks at the quilt as other eyes see it without changing it, and cloth is true in light and dark', async () => {
    for (const theme of ['light', 'dark'] as const) {
      const { page, context } = await opened.page({ theme });
      await toColour(page, opened.numeric);
      assert.deepEqual(await edgePixel(page), [0x2f, 0x3c, 0x44], theme);
      await page.getByRole('button', { name: 'In grey, for values' }).click();
      const [r, g, b] = await edgePixel(page);
      assert.ok(r === g && g === b, 'grey');
      await page.getByRole('button', { name: 'As protan eyes see it' }).click();
      const seen = await edgePixel(page);
      assert.notDeepEqual(seen, [0x2f, 0x3c, 0x44]);
      await page.locator('body').press('g');
      await page.getByRole('button', { name: 'In grey, for values', pressed: true }).waitFor();
      assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
      await context.close();
    }
  });

  it('tells where halves read alike, for most and for other eyes, and offers the cloth that parts them', async () => {
    const { page, context } = await opened.page();
    await toColour(page, opened.numeric, 'Lantern Lane');
    const paint = async (name: string, colour: string) => {
      await cloth(page, name).click();
      await page.getByRole('textbox', { name: 'Colour, written' }).fill(colour);
      await page.keyboard.press('Enter');
    };
    const own = await documentOn(page);
    const colouring = own.blocks[0]?.colourings?.default ?? {};
    const nameOf = (id: unknown) => own.fabrics.find((one) => one.id === id)?.name ?? String(id);
    await page.getByText('Light and dark read alike').waitFor({ state: 'detached' });
    await paint(nameOf(colouring.dark), '#b1452f');
    await paint(nameOf(colouring.light), '#8a7a70');
    await page.getByRole('heading', { name: 'Light and dark read alike' }).waitFor();
    await page
      .getByRole('button', { name: /: lighter$/ })
      .first()
      .click();
    await page.getByRole('heading', { name: 'Light and dark read alike' }).waitFor({ state: 'detached' });
    await context.close();
  });
});

/** A little inside the left edge of what is drawn, half-way down. */
const edgePixel = (page: Page): Promise<readonly number[]> =>
  page.evaluate(async () => {
    await new Promise((resolve) => setTimeout(resolve, 250));
    const canvas = document.querySelector<HTMLCanvasElement>('.drawing-canvas') as HTMLCanvasElement;
    const to = canvas.getContext('2d') as CanvasRenderingContext2D;
    const { data } = to.getImageData(0, Math.round(canvas.height / 2), canvas.width, 1);
    const first = Array.from({ length: canvas.width }, (_, x) => x).find((x) => (data[x * 4 + 3] ?? 0) === 255) ?? 0;
    return [...data.slice((first + 6) * 4, (first + 6) * 4 + 3)];
  });
