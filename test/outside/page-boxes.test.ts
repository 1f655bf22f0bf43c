// No text lies on other text or leaves its page, no picture is cut off, no heading and no head of a table stands alone, in any
// chapter of any example, on both papers.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { patternPages } from '#paper';
import { outside, overlapping, wordsOf } from './boxes.ts';
import { cutOff, drawnPages } from './drawn-lines.ts';
import { partsOf } from './file-parts.ts';
import { exampleFiles, planOf, printsOf, spoiled, whilePrinted } from './prints.ts';
import { headingsAlone, type Tagged, tableHeadsAlone, taggedIn } from './tags.ts';

const faultsIn = (file: { readonly path: string }): readonly string[] => {
  const parts = partsOf(file.path);
  const tagged = taggedIn(parts);
  const where = ({ page, mark }: Tagged): string => `page ${page + 1}, content ${mark}`;
  return [
    ...wordsOf(file).flatMap((page, i) => [
      ...overlapping(page).map(([a, b]) => `page ${i + 1}: "${a.text}" lies on "${b.text}" at ${a.left}, ${a.top}`),
      ...outside(page).map(({ text, left, top }) => `page ${i + 1}: "${text}" leaves the page at ${left}, ${top}`),
    ]),
    ...drawnPages(parts).flatMap((page, i) => cutOff(page).map((fault) => `page ${i + 1}: ${fault}`)),
    ...headingsAlone(tagged).map((one) => `${where(one)}: a heading stands alone`),
    ...tableHeadsAlone(tagged).map((one) => `${where(one)}: the head of a table stands alone`),
  ];
};

for (const name of exampleFiles) {
  test(`no text or picture of ${name} lies on other text, is cut off or stands apart from what belongs to it`, async () => {
    for (const paper of ['letter', 'a4'] as const) {
      for (const pages of printsOf(planOf(name))) {
        await whilePrinted(pages, paper, (file) => {
          assert.ok(wordsOf(file).some(({ words }) => words.length > 20));
          assert.deepEqual(faultsIn(file), [], paper);
        });
      }
    }
  });
}

const faults: Readonly<Record<string, string>> = {
  'lies on':
    '#place(std.top + left, dx: 2pt, dy: 40pt)[laid on others]\n#place(std.top + left, dx: 2pt, dy: 41pt)[some other words]',
  'leaves the page': '#place(std.top + right, dx: 90pt)[hangs over]',
  'leave the page': '#place(std.top + right, dx: 60pt, rect(width: 30pt, height: 30pt))',
  'lines in':
    '#image(bytes("<svg xmlns=\\"http://www.w3.org/2000/svg\\" width=\\"20\\" height=\\"20\\"><path d=\\"M5 5H25\\" stroke=\\"#000\\"/></svg>"), alt: "a line that is too long")',
  'is cut off': '#block(width: 90pt, height: 14pt, clip: true)[one\\ two\\ three\\ four]',
  'a heading stands alone': '== Alone\n#pagebreak()\nFar from it.',
  'the head of a table': '#table(columns: 1, table.header(repeat: false)[Head])',
};

for (const [found, fault] of Object.entries(faults)) {
  test(`a planted fault is found: ${found}`, async () => {
    const pages = patternPages(planOf('crumb-tin.quilt.json'), { chapters: ['cautions'] });
    assert.deepEqual(await whilePrinted(pages, 'letter', faultsIn), []);
    const seen = await whilePrinted(spoiled(pages, fault), 'letter', faultsIn);
    assert.ok(
      seen.some((one) => one.includes(found)),
      seen.join('\n'),
    );
  });
}
