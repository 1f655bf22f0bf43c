// Sew in a real Chromium: whole examples walked through by keys, each step held against the printed one (four of them here, all by
// `npm run walk`); views, counts, the board to tap, and the large type for beside the machine.

import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'playwright-core';
import { planQuilt, type QuiltPlan } from '#craft';
import { example } from '#documents';
import { clothSignsFor, patternPages } from '#paper';
import { checkLength } from '#paper/lengths';
import { topStepWords } from '#paper/pages';
import { becomes, kept, type Opened, openDemo, openWorkroom, plain, sideBySide } from './page.ts';

const planOf = (name: string): QuiltPlan => {
  const planned = planQuilt(example(name), { budget: { steps: 0 } });
  assert.ok(planned.ok, name);
  return planned.value;
};

interface Card {
  readonly heading: string;
  readonly make: string;
  readonly machine: string;
  readonly press: string;
  readonly measures: string;
}

/** What can be read in a picture, and its colours, whatever its scale. */
interface PictureFacts {
  readonly texts: readonly string[];
  readonly colours: readonly string[];
}

interface Printed {
  readonly card: Card;
  /** Null where paper has no picture of the one seam, as in the top: its facts are the plan's. */
  readonly pictures: { readonly board: PictureFacts; readonly machine: PictureFacts } | null;
  /** Figures and words that must stand on board and machine. */
  readonly must: { readonly board: readonly string[]; readonly machine: readonly string[] };
}

const factsOf = (svg: string): PictureFacts => ({
  texts: [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text ?? '').toSorted(),
  colours: [...svg.matchAll(/<path d="[^"]*" fill="(#[0-9a-f]{6})"/g)].map(([, colour]) => colour ?? '').toSorted(),
});

const plainly = <T>(value: T): T => JSON.parse(JSON.stringify(value).replaceAll('\u200b', '')) as T;

/** Of all blocks from the printed pages, in order, then of the top. */
const printedSteps = (plan: QuiltPlan): readonly Printed[] => {
  const { facts, pictures } = patternPages(plan, { chapters: ['blocks'] });
  const none = { board: [], machine: [] };
  const blocks = facts.blocks.flatMap(({ steps }) =>
    steps.map(({ heading, make, machine, press, measures, board, machineView }) => ({
      card: plainly({ heading, make, machine, press, measures }),
      pictures: {
        board: factsOf(pictures.get(board.name) ?? ''),
        machine: factsOf(pictures.get(machineView.name) ?? ''),
      },
      must: none,
    })),
  );
  const signs = clothSignsFor(plan);
  const top = plan.top.steps.map((step) => {
    const { heading, make, machine, press, measures } = topStepWords({ plan, signs }, step);
    const isSlant = step.angle % 90 !== 0 && step.stage !== 'corner';
    const turn = Math.min(step.machineTurn, 360 - step.machineTurn);
    return {
      card: { heading, make, machine, press, measures },
      pictures: null,
      must: {
        board: (isSlant ? step.unfinished.slice(1) : step.unfinished).map((length) => checkLength(length, plan.quilt)),
        machine: step.stage === 'mitre' || turn === 0 ? [] : [`${eighths[turn / 45]} turn`],
      },
    };
  });
  return [...blocks, ...top];
};

const eighths = ['', '⅛', '¼', '⅜', '½'];

interface Shown {
  readonly card: Card;
  readonly board: PictureFacts;
  readonly machine: PictureFacts;
}

/** What stands on the page for the step. */
const shownOn = (page: Page): Promise<Shown> =>
  page.evaluate(() => {
    const step = document.querySelector('.sew-step') as HTMLElement;
    const [machine, last] = [...step.querySelectorAll('.sew-words > p')].map(({ textContent }) => textContent ?? '');
    const measures = step.querySelector('.sew-words strong')?.textContent ?? '';
    const [board, atMachine] = ['.sew-board', '.sew-machine'].map((picture) => ({
      texts: [...step.querySelectorAll(`${picture} text`)].map(({ textContent }) => textContent ?? '').sort(),
      colours: [...step.querySelectorAll(`${picture} path`)]
        .map((path) => path.getAttribute('fill') ?? '')
        .filter((fill) => fill.startsWith('#'))
        .sort(),
    })) as unknown as [PictureFacts, PictureFacts];
    return {
      card: {
        heading: step.querySelector('h2')?.textContent ?? '',
        make: step.querySelector('.sew-where strong')?.textContent ?? '',
        machine: machine ?? '',
        press: (last ?? '').slice(0, -measures.length - 1),
        measures,
      },
      board,
      machine: atMachine,
    };
  });

/** The colours of marks and of paper are every picture's. */
const isCloth = (colour: string): boolean => !['#a13d2b', '#ffffff', '#24211c', '#6a6458'].includes(colour);

const examples = readdirSync('examples')
  .filter((file) => file.endsWith('.quilt.json'))
  .toSorted()
  .map((file) => file.replace('.quilt.json', ''));

/** A log cabin in rows, a quilt on point with a print of one way, a metric one with mitred borders, a sampler of sections. */
const fewUnlike = ['harvest-home-throw', 'hedge-sparrow', 'heron-hanging', 'twelve-fields'];

/** src/workroom/asking/seen-sewing.long.test.ts has every step of all of them without a browser. */
const walked = process.env.SEAMSTEAD_WALK === undefined ? fewUnlike : examples;

const toSew = async (page: Page, at: string, demo?: string): Promise<void> => {
  await openDemo(page, at, demo);
  await page.getByRole('link', { name: /^Sew/ }).click();
  await page.getByRole('link', { name: /^Begin/ }).waitFor();
};

const atStep = (page: Page, step: number): Promise<unknown> =>
  page.locator(`.sew-step:not(.is-behind)[aria-label="Step ${step}"]`).waitFor();

/** The part of the address after the view. */
const within = (page: Page): string => /\/sew\/?(.*)$/.exec(decodeURIComponent(page.url()))?.[1] ?? '';

describe('sew', sideBySide, () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const [n, file] of walked.entries()) {
    const where = n % 2 === 0 ? 'numeric' : 'local';
    it(`${file} is walked through by keys alone, every step and every picture as printed (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await page.goto(opened[where]);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'From a file' }).click(),
      ]);
      await chooser.setFiles(`examples/${file}.quilt.json`);
      await page.getByRole('link', { name: /^Sew/ }).click();
      await page.getByRole('link', { name: /^Begin/ }).press('Enter');
      const steps = printedSteps(planOf(file));
      for (const [i, { card, pictures, must }] of steps.entries()) {
        await page.waitForFunction(
          ({ heading, machine }) =>
            document.querySelector('.sew-step:not(.is-behind) h2')?.textContent === heading &&
            document.querySelector('.sew-words p')?.textContent === machine,
          card,
        );
        const shown = await shownOn(page);
        const at = `step ${i + 1} of ${steps.length}: ${card.heading}`;
        assert.deepEqual(shown.card, card, at);
        for (const view of ['board', 'machine'] as const) {
          // a letter that paper has no room for may stand on the screen; none that paper has is lost
          const wanted = [...(pictures?.[view].texts ?? []), ...must[view]];
          assert.deepEqual(
            wanted.filter((text) => !shown[view].texts.includes(text)),
            [],
            `${at}, ${view}`,
          );
          if (pictures !== null)
            assert.deepEqual(
              shown[view].colours.filter(isCloth),
              pictures[view].colours.filter(isCloth),
              `${at}, ${view}`,
            );
        }
        // both keys go on
        await page.keyboard.press(i % 2 === 0 ? 'ArrowRight' : ' ');
      }
      await page.getByRole('link', { name: 'That was the last seam: on to Finish' }).waitFor();
      await page.keyboard.press('ArrowLeft');
      await page.waitForFunction(
        (heading) => document.querySelector('.sew-step h2')?.textContent === heading,
        steps.at(-2)?.card.heading,
      );
      assert.deepEqual(faults, []);
      await context.close();
    });
  }

  it('every step has its address: going back goes to the step before, and a reload stays', async () => {
    const { page, context, faults } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    assert.equal(within(page), 'cabin/1');
    await page.getByRole('button', { name: /^Next/ }).click();
    await atStep(page, 2);
    await page.getByRole('button', { name: /^Next/ }).click();
    await atStep(page, 3);
    await page.goBack();
    await atStep(page, 2);
    await page.reload();
    await atStep(page, 2);
    await page.keyboard.press('n');
    await page
      .getByRole('heading', { name: /turned 180° goes to the right of Log cabin/ })
      .first()
      .waitFor();
    assert.equal(within(page), '~top/1');
    await page.keyboard.press('p');
    await atStep(page, 1);
    assert.equal(within(page), 'cabin/1');
    // where she was is where she goes on
    await page.getByRole('link', { name: /^Set/ }).click();
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page.getByRole('link', { name: 'Go on: Log cabin, step 1' }).click();
    await atStep(page, 1);
    // a step that is not there leads to its block
    await page.evaluate(() => {
      location.hash = location.hash.replace(/\/1$/, '/99');
    });
    await page.getByRole('heading', { name: 'Log cabin', level: 2 }).waitFor();
    await page.getByText('Make 36').waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('chains are followed batch by batch, and what is counted there is counted in the blocks', async () => {
    const { page, context, faults } = await opened.page();
    await toSew(page, opened.numeric, 'Twelve Fields');
    await page.getByRole('link', { name: /^In chains: / }).click();
    await page.getByRole('link', { name: /^Begin at batch 1/ }).click();
    const atBatch = (batch: number) => page.locator(`.sew-step:not(.is-behind)[aria-label="Batch ${batch}"]`).waitFor();
    await atBatch(1);
    assert.equal(within(page), '~chains/1');
    await page.keyboard.press('ArrowRight');
    await atBatch(2);
    // two keys one after the other, before the browser tells of the first move
    await page.evaluate(async () => {
      for (let key = 0; key < 2; key++) {
        document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }));
        for (let turn = 0; turn < 20; turn++) await Promise.resolve();
      }
    });
    await atBatch(4);
    // of the 11, one goes into one block and ten into another
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await page.locator('.sew-count', { hasText: '2 of 11 sewn' }).waitFor();
    await page.getByRole('link', { name: 'Jacob’s Ladder, unit 1: 10' }).click();
    await atStep(page, 1);
    await page.locator('.sew-count', { hasText: '1 of 10 sewn' }).waitFor();
    await page.getByRole('link', { name: 'In chains: batch 4, with Shoo Fly' }).click();
    await atBatch(4);
    await page.keyboard.press('f');
    await page.locator('.sew-large .sew-step[aria-label="Batch 4"]').waitFor();
    await page.keyboard.press('Escape');
    await page.waitForURL(/~chains\/4$/);
    // a key that came before it is drawn would still lead on in large type
    await page.locator('.sew-large').waitFor({ state: 'detached' });
    await page.keyboard.press('n');
    await atBatch(19);
    await page.reload();
    await atBatch(19);
    await page.getByRole('link', { name: 'Round 2' }).click();
    await page.getByRole('region', { name: 'Round 2' }).waitFor();
    await page.getByText('2 of 11 sewn').waitFor();
    assert.equal(within(page), '~chains/round-2');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('from the last chain in large type one comes to the top in large type, and the screen stays filled', async () => {
    const { page, context, faults } = await opened.page();
    await toSew(page, opened.numeric, 'Twelve Fields');
    await page.getByRole('link', { name: /^In chains: / }).click();
    await page.locator('.sew-batches a').last().click();
    const batch = page.locator('.sew-step:not(.is-behind)[aria-label^="Batch "]');
    await batch.waitFor();
    await page.keyboard.press('f');
    await page.locator('.sew-large .sew-step').waitFor();
    const isFilled = () => page.evaluate(() => document.fullscreenElement !== null);
    await becomes(isFilled, true);
    await page.getByRole('link', { name: 'That was the last chain: on to the top' }).click();
    await page.locator('.sew-large .sew-step:not(.is-behind)[aria-label="Step 1"]').waitFor();
    assert.match(within(page), /^~top\/1\/large$/);
    assert.equal(await isFilled(), true);
    await page.keyboard.press('f');
    await page.locator('.sew-large').waitFor({ state: 'detached' });
    await becomes(isFilled, false);
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('board and machine are seen together, or each alone, by keys and by pointer', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    const shown = async (sight: string): Promise<readonly string[]> => {
      await page.locator(`.sew-pictures.is-${sight}`).waitFor();
      return page.locator('.sew-pictures figcaption').allTextContents();
    };
    assert.deepEqual(await shown('both'), ['On the board', 'At the machine']);
    await page.keyboard.press('m');
    await page.waitForURL(/\/1\/machine$/);
    assert.deepEqual(await shown('machine'), ['At the machine']);
    await page.keyboard.press('ArrowRight');
    await atStep(page, 2);
    assert.deepEqual(await shown('machine'), ['At the machine'], 'the view stays from step to step');
    await page.keyboard.press('b');
    await page.waitForURL(/\/2\/board$/);
    assert.deepEqual(await shown('board'), ['On the board']);
    await page.getByRole('link', { name: 'Both' }).click();
    await page.waitForURL(/\/2$/);
    assert.deepEqual(await shown('both'), ['On the board', 'At the machine']);
    await context.close();
  });

  it('the next part comes from its side and the unit turns, 200 ms each; still where less motion is asked for', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    await page.evaluate(() => {
      location.hash = location.hash.replace(/\/1$/, '/5');
    });
    await atStep(page, 5);
    // slowed, so that they still go on when one looks; how long each is meant to be stays
    const devtools = await context.newCDPSession(page);
    await devtools.send('Animation.enable');
    await devtools.send('Animation.setPlaybackRate', { playbackRate: 0.05 });
    const motions = (): Promise<readonly { readonly of: string; readonly ms: number }[]> =>
      page.evaluate(() =>
        document.getAnimations().flatMap((animation) => {
          const { target } = animation.effect as KeyframeEffect;
          const of = target?.getAttribute('class') ?? '';
          return of.startsWith('step-') ? [{ of, ms: Number(animation.effect?.getTiming().duration) }] : [];
        }),
      );
    await page.keyboard.press('r');
    const moved = await motions();
    assert.deepEqual(
      new Set(moved.map(({ of }) => of)),
      new Set(['step-next', 'step-press', 'step-unit', 'step-seam']),
    );
    assert.ok(
      moved.every(({ ms }) => ms <= 200),
      JSON.stringify(moved),
    );
    const turn = await page.locator('.sew-machine').evaluate((picture) => picture.style.getPropertyValue('--turn'));
    const step = planOf('harvest-home-throw').blocks[0]?.steps[4];
    // a quarter turn the short way: docs/formulas.md#machine-turn
    assert.equal(((Number.parseFloat(turn) % 360) + 360) % 360, step?.machineTurn);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.keyboard.press('r');
    assert.deepEqual(await motions(), []);
    // the turn is told all the same
    assert.match((await page.locator('.sew-machine').textContent()) ?? '', /¼ turn/);
    assert.match((await page.locator('.sew-words').textContent()) ?? '', /a quarter turn counterclockwise/);
    await context.close();
  });

  it('what is sewn is counted by taps and keys, kept in this browser for this quilt and step, and told of the whole', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    const more = page.getByRole('button', { name: 'One more sewn' });
    await more.click();
    await more.click();
    await page.keyboard.press('+');
    await page.getByText('3 of 36 sewn').first().waitFor();
    await page.getByText('3 of 475 seams of the quilt').waitFor();
    await page.keyboard.press('-');
    await page.getByText('2 of 475 seams of the quilt').waitFor();
    await page.reload();
    await atStep(page, 1);
    await page.getByText('2 of 475 seams of the quilt').waitFor();
    await page.getByRole('button', { name: 'All', exact: true }).click();
    await page.getByText('36 of 475 seams of the quilt').waitFor();
    assert.ok(await more.isDisabled(), 'no more than there are');
    await page.keyboard.press('ArrowRight');
    await atStep(page, 2);
    await page.getByText('0 of 36 sewn').first().waitFor();
    await page.getByText('36 of 475 seams of the quilt').waitFor();
    // nothing of it lies in the quilt
    await kept(page);
    await page.getByRole('button', { name: 'Undo' }).waitFor();
    assert.ok(await page.getByRole('button', { name: 'Undo' }).isDisabled());
    await openDemo(page, opened.numeric, 'Heron Hanging');
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page.getByRole('link', { name: /^Begin/ }).click();
    await page.getByText('0 of 287 seams of the quilt').waitFor();
    // a quilt that is removed takes along what was kept of it
    await kept(page);
    const keptBeside = (): Promise<number> =>
      page.evaluate(() => Object.keys(localStorage).filter((key) => key.endsWith('/sewn')).length);
    assert.equal(await keptBeside(), 2);
    await page.goto(`${opened.numeric}#/`);
    await page.getByRole('button', { name: 'Remove Harvest Home' }).click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    assert.equal(await keptBeside(), 1);
    await context.close();
  });

  it('a piece that is tapped on the board leads to the step that takes it', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    // the logs of a cabin are patches in the order that they are sewn; the fifth is taken by the fourth step
    for (const [thing, step] of [
      [4, 4],
      [12, 12],
      [0, 1],
    ] as const) {
      await page.locator(`.sew-laid [data-thing="${thing}"]`).click();
      await atStep(page, step);
    }
    assert.equal(await page.locator('.sew-laid .is-next').count(), 1);
    assert.equal(await page.locator('.sew-laid .is-later').count(), 11);
    await context.close();
  });

  it('a shop puts in its own minutes: one edit each, told at once, undone, and all of ours again', async () => {
    const { page, context, faults } = await opened.page();
    await toSew(page, opened.local);
    const open = page.getByRole('button', { name: 'How long things take' });
    await page.getByText('The whole quilt takes about 18 h', { exact: false }).waitFor();
    await page.getByText('; our own estimate.').waitFor();
    await open.click();
    const sheet = page.getByRole('dialog', { name: 'How long things take' });
    const press = sheet.getByRole('textbox', { name: /^Press one seam/ });
    await press.fill('soon');
    await press.press('Enter');
    await sheet.getByRole('alert').waitFor();
    assert.equal(await press.getAttribute('aria-invalid'), 'true');
    // by hand: a minute more at each of 475 seams is 7 h 55 min more than 9 h 32 min
    await press.fill('90 s');
    await press.press('Enter');
    await sheet.getByText('about 4 hours to cut, 17 hours to sew').waitFor();
    await sheet.getByRole('button', { name: 'Close' }).click();
    await page.getByText('by the minutes of this quilt, the rest our own estimate.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('; our own estimate.').waitFor();
    await page.getByRole('button', { name: 'Redo' }).click();
    await open.click();
    assert.equal(await press.inputValue(), '1.5');
    await sheet.getByRole('button', { name: 'Back to our own estimate' }).click();
    await sheet.getByText('10 hours to sew').waitFor();
    assert.equal(await press.inputValue(), '');
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('sizes that came out wrong are written down and answered in two sentences and a picture; kept, mended and left by keys', async () => {
    const { page, context, faults } = await opened.page();
    await toSew(page, opened.local);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    await page.keyboard.press('w');
    await page.getByRole('heading', { name: 'Log cabin came out the wrong size' }).waitFor();
    assert.equal(within(page), 'cabin/size');
    const write = async (label: string, text: string): Promise<void> => {
      const field = page.getByRole('textbox', { name: label, exact: true });
      await field.fill(text);
      await field.press('Enter');
    };
    await write('Width after step 1', '4 7/16');
    await write('Width after step 3', '5 3/8');
    await page.locator('.sew-wrong-what').waitFor();
    await page.getByRole('img', { name: /^The unit after step 3/ }).waitFor();
    await write('Width after step 2', 'four');
    await page.getByText('The width “four” is not a length.').waitFor();
    const refused = page.getByRole('textbox', { name: 'Width after step 2', exact: true });
    assert.equal(await refused.getAttribute('aria-invalid'), 'true');
    await page.reload();
    await page.getByText('The width “four” is not a length.').waitFor();
    await page.getByRole('button', { name: 'Take all sizes out' }).click();
    await page.getByText('The answer stands here as soon as a size is written down.').waitFor();
    await page.keyboard.press('Escape');
    await atStep(page, 1);
    // the top has the same form
    await page.goto(page.url().replace(/cabin\/1$/, '~top/size'));
    await page.getByRole('heading', { name: 'The top came out the wrong size' }).waitFor();
    await write('Width after step 5', '51 15/16');
    await page.locator('.sew-wrong-what', { hasText: /^1 size cannot tell/ }).waitFor();
    await page.getByRole('img', { name: /^The unit after step 5, dashed where it was measured/ }).waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('sizes of a large top are folded away by row, open where one comes from and where something is written', async () => {
    const { page, context, faults } = await opened.page({ width: 820, height: 1180, touch: 'touch' });
    await openDemo(page, opened.local, 'Lantern Lane');
    await page.goto(page.url().replace(/set$/, 'sew/~top/50'));
    await atStep(page, 50);
    await page.keyboard.press('w');
    const height = (step: number) => page.getByRole('textbox', { name: `Height after step ${step}`, exact: true });
    await height(50).waitFor();
    assert.equal(await height(1).count(), 0);
    const first = page.locator('summary').first();
    assert.match(plain(await first.textContent()), /^Row.* steps? 1/);
    await first.press('Enter');
    await height(1).fill('four');
    await height(1).press('Enter');
    await page.getByText('The height “four” is not a length.').waitFor();
    assert.match(plain(await first.textContent()), / · 1 written down$/);
    await page.reload();
    await page.getByText('The height “four” is not a length.').waitFor();
    // the quilt had more steps when this was written down
    await page.evaluate(() => {
      const key = Object.keys(localStorage).find((one) => one.endsWith('/measured')) ?? '';
      localStorage.setItem(key, JSON.stringify({ '~top': [{ step: 99, across: '', down: '9 1/2' }] }));
    });
    await page.reload();
    await page.getByText('There is no step “99”: it has 68 steps.').waitFor();
    await page.getByRole('button', { name: 'Take the size after step 99 out' }).tap();
    await page.getByText('The answer stands here as soon as a size is written down.').waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('in large type the step fills the screen alone, its keys large, and goes on by taps and keys', async () => {
    const { page, context, faults } = await opened.page({ width: 1180, height: 820, touch: 'touch' });
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).tap();
    await atStep(page, 1);
    await page.getByRole('link', { name: 'Large type' }).tap();
    await page.waitForURL(/\/1\/large$/);
    await page.locator('.sew-large').waitFor();
    for (const other of ['banner', 'complementary'])
      assert.equal(await page.getByRole(other as 'banner').count(), 0, other);
    assert.equal(await page.getByRole('navigation', { name: 'Job' }).count(), 0);
    const box = await page.locator('.sew-large').boundingBox();
    const screen = await page.evaluate(() => [innerWidth, innerHeight]);
    assert.deepEqual([box?.x, box?.y, box?.width, box?.height], [0, 0, ...screen]);
    const next = page.getByRole('button', { name: /^Next/ });
    assert.ok(((await next.boundingBox())?.height ?? 0) >= 64);
    const sizes = await page.evaluate(() =>
      ['.sew-heading', '.sew-words'].map((part) =>
        Number.parseFloat(getComputedStyle(document.querySelector(part) as Element).fontSize),
      ),
    );
    // at arm's length, 60 cm, a minute of arc is 0.17 mm: letters of 20 px are 3 mm high and more
    assert.ok((sizes[0] ?? 0) >= 30 && (sizes[1] ?? 0) >= 20, String(sizes));
    for (let step = 2; step <= 12; step++) {
      if (step % 2 === 0) await next.tap();
      else await page.keyboard.press(' ');
      await atStep(page, step);
      const over = await page.locator('.sew-step-scroll').evaluate((part) => part.scrollHeight - part.clientHeight);
      assert.equal(over, 0, 'nothing to scroll for');
    }
    await page.keyboard.press('f');
    await page.waitForURL(/\/12$/);
    await page.getByRole('navigation', { name: 'Job' }).waitFor();
    assert.deepEqual(faults, []);
    await context.close();
  });

  it('the space bar presses the key that has the focus, and else goes on', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    await page.keyboard.press(' ');
    await atStep(page, 2);
    await page.getByRole('button', { name: 'Back' }).focus();
    await page.keyboard.press(' ');
    await atStep(page, 1);
    await context.close();
  });

  it('on a phone the next piece, its picture and "next" are in sight, and nothing is wider than the screen', async () => {
    for (const theme of ['light', 'dark'] as const) {
      const { page, context, faults } = await opened.page({ width: 390, height: 844, touch: 'touch', theme });
      await toSew(page, opened.numeric);
      await page.getByRole('link', { name: /^Begin/ }).tap();
      await atStep(page, 1);
      for (let step = 2; step <= 4; step++) {
        const next = page.getByRole('button', { name: /^Next/ });
        const box = await next.boundingBox();
        assert.ok((box?.height ?? 0) >= 64 && (box?.y ?? 999) + (box?.height ?? 999) <= 844, JSON.stringify(box));
        await next.tap();
        await atStep(page, step);
        const wide = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        assert.equal(wide, 0);
      }
      assert.deepEqual(faults, []);
      await context.close();
    }
  });

  it('at a small desk what to do, press and measure is in sight whole, however long the title of the block', async () => {
    const { page, context } = await opened.page({ width: 1280, height: 800 });
    await page.goto(opened.local);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'From a file' }).click(),
    ]);
    const text = JSON.stringify(example('harvest-home-throw')).replace(
      '"Log cabin"',
      '"Log cabin of three rounds about a square hearth, for the winter class"',
    );
    await chooser.setFiles({ name: 'long.quilt.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.locator('.job-stops:not(.is-behind)').waitFor();
    await page.getByRole('link', { name: /^Sew/ }).click();
    await page.getByRole('link', { name: /^Begin/ }).click();
    for (let step = 1; step <= 12; step++) {
      await atStep(page, step);
      const beyondPx = await page.evaluate(() => {
        const words = [...document.querySelectorAll('.sew-words > p')].at(-1) as Element;
        const edge = document.querySelector('.sew-step-scroll') as Element;
        return words.getBoundingClientRect().bottom - edge.getBoundingClientRect().bottom;
      });
      assert.ok(beyondPx <= 0, `step ${step}: ${beyondPx} px of the words lie below the edge`);
      if (step < 12) await page.keyboard.press('ArrowRight');
    }
    await context.close();
  });

  it('for the left hand "next" lies at the left', async () => {
    const { page, context } = await opened.page();
    await toSew(page, opened.numeric);
    await page.getByRole('link', { name: /^Begin/ }).click();
    await atStep(page, 1);
    const ends = async (): Promise<number> =>
      ((await page.getByRole('button', { name: /^Next/ }).boundingBox())?.x ?? 0) -
      ((await page.getByRole('button', { name: 'Back' }).boundingBox())?.x ?? 0);
    assert.ok((await ends()) > 0);
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('menuitem', { name: 'How you like it' }).click();
    await page.getByRole('radio', { name: 'the left hand' }).check();
    await page.keyboard.press('Escape');
    assert.ok((await ends()) < 0);
    await context.close();
  });
});
