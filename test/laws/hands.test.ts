// Laws of the hand that pages are drawn for: the left one finds other places along a strip, and nothing else is other.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { QuiltPlan } from '#craft';
import { type Chapter, type PatternFacts, type PatternPages, patternPages, type SizedPlan } from '#paper';
import { sizesPlanned } from '#paper/files';
import { example, examples } from '../documents/asked.ts';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';
import { randomQuilt } from './random-quilts.ts';

/** All in which something lies, is cut or is sewn. */
const shown: readonly Chapter[] = [
  'cover',
  'cloth',
  'cutting',
  'pieces',
  'blocks',
  'chains',
  'top',
  'finishing',
  'run-sheet',
];

const bothOf = (plan: QuiltPlan, sizes: readonly SizedPlan[] = []) => {
  const pagesFor = (hand: 'right' | 'left') => patternPages(plan, { chapters: shown, sizes, hand });
  return { right: pagesFor('right'), left: pagesFor('left') };
};

type Both = ReturnType<typeof bothOf>;

/** What the left hand's pages say of it, put as the right hand's say it. */
const asForRight = (facts: PatternFacts): unknown => {
  const cover = facts.cover && { ...facts.cover, facts: facts.cover.facts.filter(({ name }) => name !== 'Drawn for') };
  const text = JSON.stringify({ ...facts, cover })
    .replaceAll(
      /from right to left, with the left hand(?: \(cloth cut round its motifs as its directions say\))?/g,
      rightward,
    )
    .replaceAll('from right to left', rightward);
  return JSON.parse(text);
};
const rightward = 'from left to right';

const factsAreSame = ({ right, left }: Both): void =>
  assert.deepEqual(asForRight(left.facts), JSON.parse(JSON.stringify(right.facts)));

/**
 * Rectangles of a picture, but for the grounds of letters, and the marks over them where a cut begins, with the cloth that each lies
 * on: the dashed one before it, or itself.
 */
const rectsIn = (svg: string) => {
  let [strip, from, width] = [0, 1, 0];
  return [...svg.matchAll(/<(?:rect ([^>]*stroke[^>]*)|path d="M([\d.]+) ([\d.]+V[\d.]+)"[^>]*)\/>/g)].map((found) => {
    const [, written = '', mark, high = ''] = found;
    if (mark !== undefined)
      return { place: [Number(mark) - from, width - (Number(mark) - from)], rest: `${strip} ${high}`, wide: 0 };
    const value = (name: string): string => new RegExp(`(?:^| )${name}="([^"]*)"`).exec(written)?.[1] ?? '';
    const [x, wide] = [Number(value('x')), Number(value('width'))];
    if (written.includes('dasharray')) [strip, from, width] = [strip + 1, x, wide];
    const place = width === 0 ? [x, wide] : [x - from, width - (x - from) - wide];
    return { place, rest: [strip, value('y'), value('height'), value('fill')].join(' '), wide };
  });
};

/** Each rectangle as far from one end of its cloth as it lies from the other in the other picture, but for the digits that are written. */
const isMirrored = (right: string, left: string): boolean => {
  const sorted = (svg: string, end: 0 | 1) =>
    rectsIn(svg)
      .map(({ place, rest, wide }) => ({ at: place[end] as number, rest, wide }))
      .toSorted((a, b) => (a.rest < b.rest ? -1 : a.rest > b.rest ? 1 : a.at - b.at));
  const [mine, other] = [sorted(right, 0), sorted(left, 1)];
  const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 0.01;
  return (
    mine.length === other.length &&
    mine.every(({ at, rest, wide }, i) => {
      const its = other[i] as (typeof other)[number];
      return isNear(at, its.at) && rest === its.rest && isNear(wide, its.wide);
    })
  );
};

const picturesAreMirrored = ({ right, left }: Both): void => {
  assert.deepEqual([...left.pictures.keys()], [...right.pictures.keys()]);
  for (const [name, svg] of right.pictures) {
    const other = left.pictures.get(name) as string;
    if (/^(?:size-\d+-)?cloth-/.test(name)) assert.ok(isMirrored(svg, other), `${name}`);
    else if (!/^(?:size-\d+-)?nested-|-machine$/.test(name)) assert.equal(other, svg, `${name}`);
  }
};

const lawsHold = (both: Both): void => {
  factsAreSame(both);
  picturesAreMirrored(both);
};

test('of every example the left hand has the same facts, and the same pictures but where cloth is cut', () => {
  for (const document of examples()) {
    const plan = planned(document as unknown as Written);
    const both = bothOf(plan);
    lawsHold(both);
    assert.ok(
      [...both.right.pictures].some(([name, svg]) => both.left.pictures.get(name) !== svg),
      `nothing of ${document.title} is drawn otherwise`,
    );
  }
});

test('other sizes in the same pattern are drawn for the same hand', () => {
  const plan = planned(example('bramble-lane') as unknown as Written);
  const sizes = sizesPlanned({
    plan,
    ids: plan.quilt.sizes.map(({ id }) => id),
    solver: null,
    say: () => undefined,
  });
  assert.ok(sizes.ok);
  const both = bothOf(plan, sizes.value);
  lawsHold(both);
  for (let i = 1; i <= sizes.value.length; i++) {
    const isOwn = ([name]: readonly [string, string]) => name.startsWith(`size-${i}-cloth-`);
    const own = [...both.right.pictures].filter(isOwn);
    assert.ok(own.some(([name, svg]) => both.left.pictures.get(name) !== svg));
  }
});

test('so it is on random quilts', () => {
  fc.assert(
    fc.property(randomQuilt(), (document) => lawsHold(bothOf(planned({ ...document })))),
    { seed: 31, numRuns: 25 },
  );
});

const squares = (fabric: Written, more: Written = {}): QuiltPlan =>
  planned(
    quilt({
      fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40, ...fabric }],
      blocks: [{ ...plainBlock('square', 4.5, 4.5), ...(fabric.repeat === undefined ? {} : { motifs: ['dark'] }) }],
      top: setOf('square', { across: 27 }),
      ...more,
    }),
  );

const textOf = ({ facts }: PatternPages): string => JSON.stringify([facts.cutting, facts.cutAcross]);

test('cloth on the fold has its selvages where the hand begins, and ends at hand are cut from the same end', () => {
  const both = bothOf(squares({ ends: [{ size: [10, 10] }] }, { cutting: { fold: true } }));
  lawsHold(both);
  const words = ({ pictures }: PatternPages) => [...pictures].filter(([name]) => name.startsWith('cloth-')).join();
  assert.match(words(both.right), /from the selvages to the fold/);
  assert.match(words(both.left), /from the fold to the selvages/);
  assert.doesNotMatch(words(both.left), /from the selvages to the fold/);
});

test('cloth cut round its motifs is laid out alike for either hand, and says so', () => {
  const both = bothOf(squares({ repeat: { along: '6', across: '5', motif: ['3', '3'] } }));
  factsAreSame(both);
  assert.deepEqual(both.left.pictures, both.right.pictures);
  assert.match(both.left.facts.cutAcross, /from right to left.*motifs as its directions say/);
});

test('sheets are laid out for the hand', () => {
  const both = bothOf(squares({ bought: 'fat-quarter', usableWidth: undefined }));
  lawsHold(both);
  assert.notDeepEqual(both.left.pictures, both.right.pictures);
});

test('a strip at an angle is cut from its other end, the strip turned by a half turn and no piece turned over', () => {
  const plan = planned(
    quilt({
      blocks: [
        {
          id: 'star',
          from: 'lemoyne-star',
          size: '12',
          colourings: { default: { light: 'light', dark: 'dark', medium: 'medium' } },
        },
      ],
      top: setOf('star'),
    }),
  );
  const both = bothOf(plan);
  factsAreSame(both);
  const outlines = (svg: string): readonly (readonly [number, number])[][] =>
    [...svg.matchAll(/ d="(M[^"]*Z)"/g)]
      .flatMap(([, d = '']) => d.split('Z'))
      .filter((part) => part !== '')
      .map((part) =>
        [...part.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const),
      );
  let diamonds = 0;
  for (const [name, svg] of both.right.pictures) {
    if (!name.startsWith('nested-')) continue;
    const { place, wide } = only(rectsIn(svg).slice(0, 1));
    assert.deepEqual(place, [0, 0]);
    const high = Number(/ height="([\d.]+)"/.exec(/<rect [^>]*>/.exec(svg)?.[0] ?? '')?.[1]);
    const [mine, other] = [outlines(svg), outlines(both.left.pictures.get(name) as string)];
    assert.equal(other.length, mine.length);
    mine.forEach((outline, i) => {
      const turned = outline.map(([x, y]) => [2 + wide - x, 2 + high - y] as const);
      turned.forEach(([x, y], j) => {
        const [a, b] = (other[i] ?? [])[j] ?? [0, 0];
        assert.ok(Math.hypot(a - x, b - y) < 0.05, `${name}: ${a},${b} for ${x},${y}`);
      });
    });
    diamonds += mine.length;
  }
  assert.ok(diamonds > 0);
});

test('slices of a strip set are cut from its right end, and nothing else at the machine is other', () => {
  const { right, left } = bothOf(planned(example('ferry-landing') as unknown as Written));
  const differ = [...right.pictures].flatMap(([name, svg]) =>
    name.endsWith('-machine') && left.pictures.get(name) !== svg ? [name] : [],
  );
  const steps = right.facts.blocks.flatMap(({ steps: all }) => all);
  const cutApart = steps.filter(({ machineView }) => differ.includes(machineView.name));
  assert.ok(cutApart.length > 0);
  for (const { heading } of cutApart) assert.match(heading, /by strip sets$/);
});

test('no direction for the left hand runs from left to right, and no page has the way in its own text', () => {
  for (const name of ['ferry-landing', 'bramble-lane', 'biscuit-box'] as const) {
    const { right, left } = bothOf(planned(example(name) as unknown as Written));
    assert.match(textOf(right), /from left to right/);
    assert.doesNotMatch(textOf(left), /left to right|left end|left edge/);
    assert.match(textOf(left), /from right to left/);
    assert.doesNotMatch(Object.values(left.sources).join(''), /left to right|right to left/);
  }
});

test('the cover says for which hand the pages are drawn where that is the left', () => {
  const { right, left } = bothOf(planned(example('ferry-landing') as unknown as Written));
  const drawnFor = ({ facts }: PatternPages) => facts.cover?.facts.find(({ name }) => name === 'Drawn for')?.value;
  assert.equal(drawnFor(right), undefined);
  assert.match(drawnFor(left) ?? '', /^the left hand/);
});
