// No text lies on other text or leaves its page, no picture is cut off, no heading, no head of a table and no line that leads others
// stands alone, in any chapter of any example, on both papers, nor of quilts drawn at random.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt } from '#craft';
import { patternPages } from '#paper';
import { cloths, planned, quilt, rectangle, setOf, type Written } from '../documents/documents.ts';
import { randomQuilt } from '../laws/random-quilts.ts';
import { leadsAlone, outside, overlapping, wordsOf } from './boxes.ts';
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
      ...leadsAlone(page).map(({ text, top }) => `page ${i + 1}: "${text}" at ${top} is parted from what it leads`),
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

const longName =
  'Very long name of a cloth that a shop once gave and nobody ever made shorter, in a warm shade of evening';
const longWord = 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft';
const namedAtLength = [
  { id: 'light', name: longName, colour: '#eeeeee', usableWidth: 42, price: 9.75 },
  { id: 'medium', name: longWord, colour: '#882233', usableWidth: 42 },
  { id: 'dark', name: `${longName} and night`, colour: '#113344', usableWidth: 42, price: 12345 },
];
const starOf = (more: Written): Written => ({
  from: 'sawtooth-star',
  size: '8',
  colourings: { default: { light: 'light', dark: 'dark', accent: 'medium' } },
  ...more,
});
const oneOf = (block: string, count: number): readonly Written[] => Array.from({ length: count }, () => ({ block }));
const finish = { binding: { fabric: 'dark' }, backing: { fabric: 'light' }, batting: {} };

/** Documents that stretch the pages, each in its own way. */
const stretched: Readonly<Record<string, Written>> = {
  'names of many words, and of one long one': quilt({
    title: `${longName}, ${longWord}`,
    designer: longName,
    edition: longName,
    fabrics: namedAtLength,
    blocks: [starOf({ id: 'star', title: longName }), starOf({ id: 'word', title: longWord })],
    top: {
      rows: [[...oneOf('star', 1), ...oneOf('word', 2)]],
      sashing: { width: '1', fabric: 'dark', cornerstones: 'medium', outer: true },
      borders: [{ width: '4', fabric: 'medium', corners: 'squares', cornerFabric: 'light' }],
    },
    finish: { ...finish, sleeve: { fabric: 'medium' }, label: { fabric: 'light' } },
  }),
  'three sizes with prices, and four borders on point, in centimetres': quilt({
    unit: 'cm',
    currency: 'marks',
    fabrics: cloths(110).map((cloth) => ({ ...cloth, price: 17.5 })),
    blocks: [starOf({ id: 'star', size: '24' }), starOf({ id: 'tooth', size: '8' })],
    top: {
      set: 'on-point',
      rows: Array.from({ length: 3 }, () => oneOf('star', 2)),
      between: Array.from({ length: 2 }, () => oneOf('star', 1)),
      settingFabric: 'dark',
      float: '1',
      borders: [
        { width: '5', fabric: 'medium', corners: 'mitred' },
        { pieced: { block: 'tooth', spacer: 'light' } },
        { width: '12', fabric: 'dark' },
      ],
    },
    sizes: [
      { id: 'cushion', title: 'Cushion with a wide border', top: { rows: [oneOf('star', 2)] } },
      {
        id: 'bed',
        title: 'Bed',
        top: {
          set: 'on-point',
          rows: Array.from({ length: 4 }, () => oneOf('star', 3)),
          between: Array.from({ length: 3 }, () => oneOf('star', 2)),
          settingFabric: 'light',
        },
      },
    ],
    finish,
  }),
  'a block of 144 squares, and a quilt of 6 in': quilt({
    blocks: [
      {
        id: 'many',
        size: '3',
        patches: {
          grid: [12, 12],
          list: Array.from({ length: 144 }, (_, i) => ({
            points: rectangle(i % 12, Math.floor(i / 12), 1, 1),
            tone: ['light', 'medium', 'dark'][(i * i) % 3],
          })),
        },
      },
    ],
    top: { ...setOf('many', { across: 2, down: 2 }) },
    finish,
  }),
};

for (const [name, document] of Object.entries(stretched)) {
  test(`pages hold ${name}`, async () => {
    for (const pages of printsOf(planned(document))) {
      await whilePrinted(pages, 'letter', (file) => assert.deepEqual(faultsIn(file), []));
    }
  });
}

test('pages hold quilts drawn at random', async () => {
  await fc.assert(
    fc.asyncProperty(randomQuilt(), async (document) => {
      const outcome = planQuilt(JSON.stringify(document), { budget: { steps: 0 } });
      fc.pre(outcome.ok);
      for (const pages of printsOf(outcome.value)) {
        await whilePrinted(pages, 'letter', (file) => assert.deepEqual(faultsIn(file), []));
      }
    }),
    { numRuns: 8, seed: 51 },
  );
});

const faults: Readonly<Record<string, string>> = {
  'lies on':
    '#place(std.top + left, dx: 2pt, dy: 40pt)[laid on others]\n#place(std.top + left, dx: 2pt, dy: 41pt)[some other words]',
  'leaves the page': '#place(std.top + right, dx: 90pt)[hangs over]',
  'leave the page': '#place(std.top + right, dx: 60pt, rect(width: 30pt, height: 30pt))',
  'lines in':
    '#image(bytes("<svg xmlns=\\"http://www.w3.org/2000/svg\\" width=\\"20\\" height=\\"20\\"><path d=\\"M5 5H25\\" stroke=\\"#000\\"/></svg>"), alt: "a line that is too long")',
  'is cut off': '#block(width: 90pt, height: 14pt, clip: true)[one\\ two\\ three\\ four]',
  'a heading stands alone': '== Alone\n#pagebreak()\nFar from it.',
  'is parted from what it leads': '#pagebreak()\nFrom it, from left to right:\n#pagebreak()\nFar from it.',
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
