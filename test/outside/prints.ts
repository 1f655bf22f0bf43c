// Everything that can be printed of an example, as files that stand while they are looked at.

import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { planQuilt, planSize, type QuiltPlan } from '#craft';
import { handoutPages, lessonsOf, type PatternPages, patternChapters, patternPages } from '#paper';
import { openPress, type Paper } from '#print';

export const exampleFiles: readonly string[] = readdirSync('examples').filter((file) => file.endsWith('.quilt.json'));

/** Without a search, so that a test does not wait for it. */
export const planOf = (name: string): QuiltPlan => {
  const planned = planQuilt(readFileSync(`examples/${name}`, 'utf8'), { budget: { steps: 0 } });
  assert.ok(planned.ok, name);
  return planned.value;
};

/** On a foundation before its sheet is cut out, and of units made together before there is a unit or a slice, no size is told. */
export const isMeasured = ({ onPaper, made }: QuiltPlan['blocks'][number]['steps'][number]): boolean => {
  if (onPaper) return onPaper.laid === onPaper.order.length;
  if (!made || made.isLast || made.way.name === 'sew-and-flip') return true;
  return made.unit.strips?.widths.length === made.parts.flat().length;
};

const sizesOf = ({ quilt }: QuiltPlan) =>
  quilt.sizes.map(({ id, title }) => {
    const planned = planSize({ quilt, id, options: { budget: { steps: 0 } } });
    assert.ok(planned.ok, id);
    return { title, plan: planned.value };
  });

/** All chapters with all sizes, and two handouts. */
export const printsOf = (plan: QuiltPlan): readonly PatternPages[] => [
  patternPages(plan, { sizes: sizesOf(plan), chapters: patternChapters }),
  ...lessonsOf(plan)
    .slice(0, 2)
    .flatMap((block) => handoutPages({ plan, block, search: { steps: 0, solver: null } }) ?? []),
];

export const whilePrinted = async <T>(
  pages: PatternPages,
  paper: Paper,
  look: (file: { readonly path: string }) => T | Promise<T>,
): Promise<T> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-prints-'));
  const press = openPress();
  try {
    const path = join(folder, 'pages.pdf');
    writeFileSync(path, (await press.pdf(pages, { paper })).bytes);
    return await look({ path });
  } finally {
    press.close();
    rmSync(folder, { recursive: true });
  }
};

/** The same pages with more Typst below them: a fault to be found. */
export const spoiled = (pages: PatternPages, fault: string): PatternPages => ({
  ...pages,
  sources: { ...pages.sources, '/main.typ': `${pages.sources['/main.typ']}\n${fault}` },
});
