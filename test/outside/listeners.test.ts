// For readers who listen, search and find their way: every picture in words made from the plan, bookmarks, title, author and
// language, text that can be searched; and the same bytes wherever and whenever it is printed.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { patternPages } from '#paper';
import { openPress } from '#print';
import { amountOf, figure } from './figures.ts';
import { partsOf, textOf } from './file-parts.ts';
import { said } from './pdf.ts';
import { exampleFiles, isMeasured, planOf, printsOf, whilePrinted } from './prints.ts';
import { taggedIn } from './tags.ts';

/** The words of every picture, in reading order. */
const altsIn = (path: string): readonly string[] =>
  taggedIn(partsOf(path)).flatMap(({ tags, alt }) => (tags.includes('Figure') ? [alt.replaceAll('\u00a0', ' ')] : []));

/** Half of the finest mark: what "about" may be off by. */
const near = ({ quilt }: QuiltPlan): number => (quilt.unit === 'in' ? 1 / 16 : 0.05) + 1e-9;

const assertStepsSaid = (plan: QuiltPlan, alts: readonly string[]): void => {
  const { unit } = plan.quilt;
  const steps = plan.blocks.flatMap((block) => block.steps);
  const boards = alts.filter((alt) => /, step \d+ on the board: /.test(alt));
  const machines = alts.filter((alt) => /, step \d+ at the machine: /.test(alt));
  assert.deepEqual([boards.length, machines.length], [steps.length, steps.length]);
  const called = (part: string): string => (part.startsWith('#') ? `unit ${part.slice(1)}` : part);
  steps.forEach((step, i) => {
    const { number, join: parts, press, unfinished } = step;
    const alt = boards[i] ?? '';
    assert.ok(alt.includes(`step ${number} on the board`), alt);
    for (const part of [...parts, ...(press === 'open' || press === 'spin' ? [] : [press])])
      assert.match(alt.toLowerCase(), new RegExp(`\\b${called(part).toLowerCase()}\\b`));
    if (!isMeasured(step)) return;
    const size = new RegExp(`(?:measures|[Tt]rim unit \\d+ to) (about )?(${figure}) × (${figure}) ${unit}`).exec(alt);
    assert.ok(size, alt);
    unfinished.forEach((side, k) => {
      const off = Math.abs(amountOf(size[2 + k] as string) - side);
      assert.ok(off <= (size[1] === undefined ? 1e-9 : near(plan)), `${alt} for ${side}`);
    });
  });
};

for (const name of exampleFiles) {
  test(`${name}: every picture is told in words with the plan's facts, every chapter is a bookmark, all text can be searched`, async () => {
    const plan = planOf(name);
    const [whole] = printsOf(plan);
    assert.ok(whole);
    await whilePrinted(whole, 'a4', ({ path }) => {
      const parts = partsOf(path);
      const tagged = taggedIn(parts);
      const alts = altsIn(path);
      assert.ok(alts.length > 20);
      for (const alt of alts) {
        assert.match(alt, /\w.*\w.*\w/);
        assert.doesNotMatch(alt, /undefined|NaN|\[object|\.svg| {2}/, alt);
      }
      assertStepsSaid(plan, alts);
      const chapters = tagged.filter(({ tags }, i) => tags.includes('H1') && !tagged[i - 1]?.tags.includes('H1'));
      assert.deepEqual(
        parts.outline.map(({ page }) => page),
        chapters.map(({ page }) => page + 1),
      );
      const titles = parts.outline.map(({ title }) => title);
      // a pattern of several sizes names the size after it
      for (const title of ['Cloth to buy', 'Cutting', 'The top', 'Finishing', 'Cautions'])
        assert.ok(
          titles.some((one) => one === title || one.startsWith(`${title}: `)),
          `${title} is missing of ${titles.join(', ')}`,
        );
      const root = parts.dictionaryOf(parts.trailer['/Root']);
      assert.equal(textOf(root['/Lang']), 'en');
      assert.equal(parts.dictionaryOf(root['/ViewerPreferences'])['/DisplayDocTitle'], true);
      const about = parts.dictionaryOf(parts.trailer['/Info']);
      assert.equal(textOf(about['/Title']), plan.quilt.title);
      assert.equal(textOf(about['/Author']), plan.quilt.designer);
      const text = said('pdftotext', ['-raw', path, '-']);
      // what a program cannot read it gives as U+FFFD or as a private sign
      assert.doesNotMatch(text, /[\ufffd\ue000-\uf8ff]/);
      for (const { name: cloth } of plan.quilt.fabrics.filter(({ id }) => plan.fabrics.some((used) => used.id === id)))
        assert.ok(text.replace(/\s+/g, ' ').includes(cloth), cloth);
    });
  });
}

test('two presses give the same bytes of the same plan', async () => {
  const bytes: Uint8Array[] = [];
  for (const _ of [1, 2]) {
    const press = openPress();
    bytes.push((await press.pdf(patternPages(planOf('orchard-gate.quilt.json')), { paper: 'a4' })).bytes);
    press.close();
  }
  assert.deepEqual(bytes[0], bytes[1]);
});

test('the command gives the same bytes in another time zone, language and folder', () => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-bytes-'));
  try {
    const places = [
      { out: 'here', env: { TZ: 'UTC', LANG: 'C' } },
      { out: 'there', env: { TZ: 'Asia/Tokyo', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' } },
    ];
    const [here, there] = places.map(({ out, env }) => {
      const file = 'examples/biscuit-box.quilt.json';
      execFileSync(process.execPath, ['bin/seamstead.mjs', 'plan', file, '--out', join(folder, out)], {
        env: { ...process.env, ...env },
        stdio: 'pipe',
      });
      return ['pattern.pdf', 'quilt.png', 'quilt.svg', 'plan.json', 'cutting.csv'].map((made) =>
        readFileSync(join(folder, out, made)),
      );
    });
    assert.deepEqual(here, there);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
