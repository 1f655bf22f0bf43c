// No text lies on other text or leaves its page, in any chapter of any example, on both papers.

import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { planQuilt, planSize, type QuiltPlan } from '#craft';
import { handoutPages, lessonsOf, type PatternPages, patternChapters, patternPages } from '#paper';
import { openPress, type Paper } from '#print';
import { outside, overlapping, type PageOfWords, wordsOf } from './boxes.ts';

const planOf = (name: string): QuiltPlan => {
  const planned = planQuilt(readFileSync(`examples/${name}`, 'utf8'), { budget: { steps: 0 } });
  assert.ok(planned.ok, name);
  return planned.value;
};

const sizesOf = ({ quilt }: QuiltPlan) =>
  quilt.sizes.map(({ id, title }) => {
    const planned = planSize({ quilt, id, options: { budget: { steps: 0 } } });
    assert.ok(planned.ok, id);
    return { title, plan: planned.value };
  });

/** Everything that can be printed of a plan. */
const printsOf = (plan: QuiltPlan): readonly PatternPages[] => [
  patternPages(plan, { sizes: sizesOf(plan), chapters: patternChapters }),
  ...lessonsOf(plan)
    .slice(0, 2)
    .flatMap((block) => handoutPages({ plan, block, search: { steps: 0, solver: null } }) ?? []),
];

const pagesIn = async (pages: PatternPages, paper: Paper): Promise<readonly PageOfWords[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-boxes-'));
  const press = openPress();
  try {
    const path = join(folder, 'pages.pdf');
    writeFileSync(path, (await press.pdf(pages, { paper })).bytes);
    return wordsOf({ path });
  } finally {
    press.close();
    rmSync(folder, { recursive: true });
  }
};

const faultsIn = (pages: readonly PageOfWords[]): readonly string[] =>
  pages.flatMap((page, i) => [
    ...overlapping(page).map(([a, b]) => `page ${i + 1}: "${a.text}" lies on "${b.text}" at ${a.left}, ${a.top}`),
    ...outside(page).map(({ text, left, top }) => `page ${i + 1}: "${text}" leaves the page at ${left}, ${top}`),
  ]);

for (const name of readdirSync('examples').filter((file) => file.endsWith('.quilt.json'))) {
  test(`no text of ${name} lies on other text or leaves its page`, async () => {
    const plan = planOf(name);
    for (const paper of ['letter', 'a4'] as const) {
      for (const pages of printsOf(plan)) {
        const printed = await pagesIn(pages, paper);
        assert.ok(printed.length > 0 && printed.some(({ words }) => words.length > 20));
        assert.deepEqual(faultsIn(printed), [], paper);
      }
    }
  });
}

test('a text laid on another, and one that hangs over the edge, are found', async () => {
  const pages = patternPages(planOf('crumb-tin.quilt.json'), { chapters: ['cautions'] });
  const spoiled = {
    ...pages,
    sources: {
      ...pages.sources,
      '/main.typ': `${pages.sources['/main.typ']}\n#place(std.top + left, dx: 2pt, dy: 40pt)[laid on others]\n#place(std.top + right, dx: 90pt)[hangs over]\n#place(std.top + left, dx: 2pt, dy: 41pt)[some other words]`,
    },
  };
  const faults = faultsIn(await pagesIn(spoiled, 'letter'));
  assert.ok(
    faults.some((fault) => fault.includes('lies on')),
    faults.join('\n'),
  );
  assert.ok(
    faults.some((fault) => fault.includes('leaves the page')),
    faults.join('\n'),
  );
});
