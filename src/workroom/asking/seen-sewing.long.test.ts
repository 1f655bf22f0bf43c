import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt, type QuiltPlan } from '#craft';
import type { QuiltDocument } from '#craft/design';
import { example, examples, planned } from '#documents';
import { type Chapter, type PatternPages, patternPages } from '#paper';
import { lookAt } from './looks.ts';
import type { EntryLine, StepSeen } from './seen-sewing.ts';

const rectangle = (x: number, y: number, width: number, height: number) => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const tones = { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' };
const placed = (block: string, mirror = false, turn = 0) => ({ block, mirror, turn });

/** What no example has: seams that are set in or begun half sewn, blocks mirrored beside their own, a place that stays open. */
const seldom = {
  format: 'seamstead-quilt',
  version: 1,
  title: 'Set in, half sewn, mirrored',
  unit: 'in',
  fabrics: [
    { id: 'light', colour: '#efe6d0' },
    { id: 'medium', colour: '#7a8a6f' },
    { id: 'dark', colour: '#2f3c44' },
  ],
  blocks: [
    { id: 'star', from: 'lemoyne-star', size: '9', colourings: { default: tones } },
    { id: 'window', from: 'attic-window', size: '9', colourings: { default: tones } },
    {
      id: 'ring',
      title: 'Ring',
      size: '9',
      patches: {
        grid: [3, 3],
        list: [
          { points: rectangle(1, 1, 1, 1), tone: 'dark' },
          { points: rectangle(0, 0, 2, 1), tone: 'light' },
          { points: rectangle(2, 0, 1, 2), tone: 'medium' },
          { points: rectangle(1, 2, 2, 1), tone: 'light' },
          { points: rectangle(0, 1, 1, 2), tone: 'medium' },
        ],
      },
    },
    { id: 'panel', title: 'A panel', size: '9', made: 'elsewhere' },
  ],
  top: {
    set: 'straight',
    rows: [
      [placed('star'), placed('window'), placed('ring')],
      [placed('window', true), placed('star', false, 90), placed('ring', true)],
      [placed('panel'), placed('window'), placed('ring')],
    ],
  },
} as unknown as QuiltDocument;

const plans: readonly (readonly [string, QuiltPlan])[] = [...examples(), seldom].map((document) => {
  const planned = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(planned.ok, planned.ok ? '' : JSON.stringify(planned.problems));
  return [document.title ?? '', planned.value];
});

/** The pages of blocks and top, with their pictures. */
const printedOf = new Map(
  plans.map(([, plan]) => [plan, patternPages(plan, { chapters: ['blocks', 'top'] satisfies Chapter[] })]),
);
const pagesOf = (plan: QuiltPlan): PatternPages => printedOf.get(plan) as PatternPages;

/** Without the places where paper may break a long word. */
const plainly = <T>(value: T): T => JSON.parse(JSON.stringify(value).replaceAll('\u200b', '')) as T;

const entriesOf = (plan: QuiltPlan): readonly EntryLine[] => structuredClone(lookAt(plan, 'sewing', {}));
const stepOf = (plan: QuiltPlan, entry: string, step: number): StepSeen => {
  const seen = structuredClone(lookAt(plan, 'sewingStep', { entry, step, letters: 'usual', hand: 'right' }));
  if (seen === 'nowhere') throw new Error(`${entry} has no step ${step}`);
  return seen;
};

/** The figures, letters and words that stand in a picture, sorted. */
const textsIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text ?? '').toSorted();

/** How many shapes of each group of a step's picture, and in which colours. */
const coloursIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/<path d="[^"]*" fill="(#[0-9a-f]{6})"/g)].map(([, colour]) => colour ?? '').toSorted();

/** Where the press arrow points: in eighths of a turn. */
const arrowIn = (svg: string): string => {
  const shaft = /class="step-press".*?d="M(\S+) (\S+)L(\S+) (\S+?)"/s.exec(svg);
  if (shaft === null) return 'none';
  const [x, y, toX, toY] = shaft.slice(1).map((text) => Number.parseFloat(text ?? '')) as [
    number,
    number,
    number,
    number,
  ];
  return String(Math.round((Math.atan2(toY - y, toX - x) * 4) / Math.PI + 8) % 8);
};

test('every step of every block says what the printed step says, word for word', () => {
  for (const [title, plan] of plans) {
    const printed = pagesOf(plan).facts.blocks;
    const entries = entriesOf(plan).filter(({ kind, steps }) => kind === 'block' && steps.length > 0);
    assert.deepEqual(
      entries.map(({ title: own }) => own),
      printed.filter(({ steps }) => steps.length > 0).map(({ title: own }) => own.replaceAll('\u200b', '')),
    );
    for (const [i, { key, steps }] of entries.entries()) {
      const cards = printed.filter(({ steps: own }) => own.length > 0)[i]?.steps ?? [];
      assert.equal(steps.length, cards.length);
      for (const [n, card] of cards.entries()) {
        const seen = stepOf(plan, key, n + 1);
        const { heading, make, machine, press, measures } = seen.words;
        const plain = (text: string): string => text.replaceAll('\u200b', '');
        assert.deepEqual(
          { heading, make, machine, press, measures, board: seen.board.alt, machineView: seen.machine?.alt },
          {
            heading: plain(card.heading),
            make: card.make,
            machine: plain(card.machine),
            press: plain(card.press),
            measures: card.measures,
            board: card.board.alt,
            machineView: card.machineView.alt,
          },
          `${title}, ${key}, step ${n + 1}`,
        );
        assert.equal(steps[n]?.heading, heading);
      }
    }
  }
});

test('every picture of a step shows what the printed one shows: letters, check sizes, turn, cloths, and the way of the arrow', () => {
  let compared = 0;
  for (const [title, plan] of plans) {
    const { facts, pictures } = pagesOf(plan);
    const printed = facts.blocks.filter(({ steps }) => steps.length > 0);
    const entries = entriesOf(plan).filter(({ kind, steps }) => kind === 'block' && steps.length > 0);
    for (const [i, { key }] of entries.entries()) {
      for (const card of printed[i]?.steps ?? []) {
        const seen = stepOf(plan, key, Number(card.number));
        const where = `${title}, ${key}, step ${card.number}`;
        for (const [picture, name] of [
          [seen.board, card.board.name],
          [seen.machine, card.machineView.name],
        ] as const) {
          const onPaper = pictures.get(name) ?? '';
          const onScreen = picture?.svg ?? '';
          // there is room for a letter on the screen that paper may have none for; none is lost
          const letters = new Set(textsIn(onScreen));
          assert.deepEqual(
            textsIn(onPaper).filter((text) => !letters.has(text)),
            [],
            where,
          );
          assert.deepEqual(coloursIn(onScreen), coloursIn(onPaper), where);
          assert.equal(arrowIn(onScreen), arrowIn(onPaper), where);
          compared += 1;
        }
      }
    }
  }
  assert.ok(compared > 200, `${compared} pictures`);
});

test('the seams of the top are those of the plan, and what the pages say of rows, corners and borders stands in their steps', () => {
  for (const [title, plan] of plans) {
    const parts = pagesOf(plan).facts.top?.parts ?? [];
    const top = entriesOf(plan).at(-1);
    assert.equal(top?.kind, 'top');
    assert.equal(top?.steps.length, plan.top.steps.length);
    const said = (top?.steps ?? []).map(({ number }) => stepOf(plan, top?.key ?? '', number));
    for (const [i, step] of plan.top.steps.entries()) {
      const { words, notes } = said[i] as StepSeen;
      const where = `${title}, step ${step.number} of the top`;
      const plain = (text: string): string => text.replaceAll('\u200b', '');
      const listed = parts
        .flatMap(({ lead, list, table }) => [...lead, ...list, ...(table?.rows.flat() ?? [])])
        .map(plain);
      switch (step.stage) {
        case 'rows': {
          // joined alike, the way of pressing is said once for all rows
          const way = words.press.replace(/^Press the seam /, '').replace(/\.$/, '');
          assert.ok(
            listed.some((line) => line.includes(way)),
            `${where}: ${way}`,
          );
          break;
        }
        case 'row': {
          const last = plan.top.steps.findLast(({ stage, of }) => stage === 'row' && of === step.of);
          if (last !== step || step.total > 1) break;
          const size = words.measures.replace(/^.* measures (.*)\.$/, '$1');
          assert.ok(listed.includes(size), `${where}: ${size}`);
          break;
        }
        case 'section': {
          if (step.makes !== plan.top.steps.findLast(({ stage, of }) => stage === 'section' && of === step.of)?.makes)
            break;
          const size = words.measures.replace(/^.* measures (.*)\.$/, '$1');
          assert.ok(listed.includes(size), `${where}: ${size}`);
          break;
        }
        case 'corner':
          assert.ok(
            listed.includes(`${words.heading}: ${words.press.replace(/^Press/, 'press')}`),
            `${where}: ${words.heading}`,
          );
          break;
        case 'border':
        case 'mitre': {
          const advice = notes.filter((note) => !note.startsWith('Strip '));
          for (const line of advice) assert.ok(listed.includes(line), `${where}: ${line}`);
          if (step.measure === null) break;
          const line = notes.find((note) => note.startsWith('Strip ')) ?? '';
          const [, order, place] = /^Strip (\d+): (.*?)\. /.exec(line) ?? [];
          const row = parts
            .flatMap(({ table }) => table?.rows ?? [])
            .find(([first, second]) => first === order && second === place);
          assert.ok(row !== undefined && line.includes(plain(row.at(-1) ?? '')), `${where}: ${line}`);
          break;
        }
      }
    }
  }
});

test('a piece of the board leads to the step that takes it, and at each step the parts that it joins are ringed', () => {
  for (const [title, plan] of plans) {
    for (const { key, steps, count } of entriesOf(plan)) {
      for (const { number, total } of steps) {
        const seen = stepOf(plan, key, number);
        const where = `${title}, ${key}, step ${number}`;
        const ringed = [...seen.laid.svg.matchAll(/class="laid is-next"/g)].length;
        assert.equal(ringed, total / count, `${where}: as many as the step is sewn in one`);
        const things = [...seen.laid.svg.matchAll(/data-thing="(\d+)"/g)].map(([, index]) => Number(index));
        assert.equal(new Set(things).size, seen.taking.length, where);
        assert.ok(
          seen.taking.every((step) => step >= 1 && step <= steps.length),
          where,
        );
        // what no step has taken before lies pale, apart, or is taken now
        const pale = [...seen.laid.svg.matchAll(/<g class="laid is-later">.*?<\/g>/gs)].flatMap(([part]) =>
          [...part.matchAll(/data-thing="(\d+)"/g)].map(([, index]) => Number(index)),
        );
        assert.deepEqual(
          pale.toSorted((a, b) => a - b),
          seen.taking.flatMap((step, thing) => (step > number ? [thing] : [])),
          where,
        );
      }
    }
  }
});

test('the seams of all steps are the seams of the quilt', () => {
  for (const [title, plan] of plans) {
    const all = entriesOf(plan).reduce((sum, { seams }) => sum + seams, 0);
    assert.equal(all, plan.time.seams, title);
  }
});

test('before its first seam a block says what its printed page says', () => {
  for (const [title, plan] of plans) {
    const printed = pagesOf(plan).facts.blocks;
    const entries = entriesOf(plan).filter(({ kind }) => kind === 'block');
    const pages = entries.flatMap(({ key }) => {
      const seen = structuredClone(lookAt(plan, 'sewingEntry', { entry: key }));
      return seen === 'nowhere' || seen.head === null || seen.head.pieces.length === 0 ? [] : [seen];
    });
    assert.equal(pages.length, printed.length, title);
    for (const [i, page] of printed.entries()) {
      const head = pages[i]?.head;
      const {
        title: name,
        make,
        size,
        pieces,
        warning,
      } = JSON.parse(JSON.stringify(page).replaceAll('\u200b', '')) as typeof page;
      assert.deepEqual(
        { title: head?.title, make: head?.make, size: head?.size, pieces: head?.pieces, warning: head?.warning },
        { title: name, make, size, pieces, warning },
      );
      for (const remark of page.remarks) assert.ok(head?.remarks.includes(remark.replaceAll('\u200b', '')), remark);
      assert.equal(pages[i]?.board.alt, page.board.alt);
    }
  }
});

test('marks at which sewing stops are drawn on the board: where a piece is set in later, and at all ends and corners of a seam set in', () => {
  const [, plan] = plans.at(-1) as (typeof plans)[number];
  const marks = (entry: string, step: number): number =>
    [...(/<g class="step-stops">.*?<\/g>/s.exec(stepOf(plan, entry, step).board.svg)?.[0] ?? '').matchAll(/<circle/g)]
      .length;
  // a LeMoyne star: two diamonds with the corner open between them; then that corner set in, round one corner
  assert.deepEqual([marks('star', 1), marks('star', 2)], [1, 3]);
  assert.equal(marks('ring', 1), 0);
});

test('a seam begun half sewn names the step that closes it, and that one names it', () => {
  const [, plan] = plans.at(-1) as (typeof plans)[number];
  const steps = entriesOf(plan).find(({ key }) => key === 'ring')?.steps ?? [];
  const planned = plan.blocks.find(({ id }) => id === 'ring')?.steps ?? [];
  assert.deepEqual([planned[0]?.kind, planned.at(-1)?.kind], ['partial-begin', 'partial-close']);
  const begun = stepOf(plan, 'ring', 1);
  const closed = stepOf(plan, 'ring', steps.length);
  assert.match(begun.words.machine, new RegExp(`leave the other half open: step ${steps.length} closes it`));
  assert.equal(closed.words.heading, 'Close the seam of step 1');
});

test('mirrored blocks are entries of their own, and turned ones are named so in the top', () => {
  const [, plan] = plans.at(-1) as (typeof plans)[number];
  const entries = entriesOf(plan);
  assert.deepEqual(
    entries.map(({ key, count }) => `${key} ${count}`),
    ['star 2', 'window 2', 'ring 2', 'window~default~mirrored 1', 'ring~default~mirrored 1', 'panel 1', '~top 1'],
  );
  assert.equal(entries[3]?.title, 'Attic Window, mirrored');
  const top = entries.at(-1)?.steps.map(({ heading }) => heading) ?? [];
  assert.ok(top.includes('LeMoyne Star turned 90° goes to the right of Attic Window, mirrored'), top.join('\n'));
});

test('a step says from which pile its pieces come and how they were cut, as the table of the pieces does', () => {
  for (const [title, plan] of plans) {
    const printed = pagesOf(plan).facts.blocks.filter(({ steps }) => steps.length > 0);
    const entries = entriesOf(plan).filter(({ kind, steps }) => kind === 'block' && steps.length > 0);
    const blocks = plan.blocks.filter(({ steps }) => steps.length > 0);
    for (const [i, { key, steps }] of entries.entries()) {
      const lines = plainly(printed[i]?.pieces ?? []).map(({ label, cloth, cut }) => [
        label,
        `${label}: ${cloth}, ${cut}`,
      ]);
      for (const { number } of steps) {
        const join: readonly string[] = blocks[i]?.steps[number - 1]?.join ?? [];
        assert.deepEqual(
          stepOf(plan, key, number).take,
          lines.flatMap(([label = '', line = '']) => (join.includes(label) ? [line] : [])),
          `${title}, ${key}, step ${number}`,
        );
      }
    }
  }
  // a sash of orchard-pair: 8½ by 2 in, cut across cloth B as its second size
  const pair = plans.find(([title]) => title === 'Orchard Pair')?.[1] as QuiltPlan;
  assert.deepEqual(stepOf(pair, '~top', 2).take, ['cornerstone A: cloth E, 2\u00a0×\u00a02\u00a0in (E2)']);
});

test('before its first seam the top has the tables and lists of its pages', () => {
  for (const [title, plan] of plans) {
    const seen = structuredClone(lookAt(plan, 'sewingEntry', { entry: '~top' }));
    assert.ok(seen !== 'nowhere');
    const printed = plainly(pagesOf(plan).facts.top?.parts ?? []);
    assert.deepEqual(
      seen.parts,
      printed.map(({ heading, lead, table, list }) => ({ heading, lead, table, list })),
      title,
    );
  }
});

test('an entry or a step that the quilt has not is nowhere', () => {
  const [, plan] = plans[0] as (typeof plans)[number];
  assert.equal(lookAt(plan, 'sewingEntry', { entry: 'none' }), 'nowhere');
  assert.equal(lookAt(plan, 'sewingStep', { entry: '~top', step: 999, letters: 'usual', hand: 'right' }), 'nowhere');
  assert.equal(lookAt(plan, 'sewingStep', { entry: 'none', step: 1, letters: 'usual', hand: 'right' }), 'nowhere');
});

test('for the left hand slices are cut from the right end of a strip set; corners lie as their unit has them', () => {
  const plan = planned(example('ferry-landing') as never);
  const machineOf = (entry: string, step: number, hand: 'left' | 'right'): string => {
    const seen = lookAt(plan, 'sewingStep', { entry, step, letters: 'usual', hand });
    assert.ok(seen !== 'nowhere' && seen !== null);
    return seen.machine.svg;
  };
  const cutsAt = (svg: string): readonly number[] => {
    const group = /class="step-cut">(.*?)<\/g>/s.exec(svg)?.[1] ?? '';
    return [...group.matchAll(/d="M([\d.]+)/g)].map(([, x]) => Number(x));
  };
  const [right, left] = [cutsAt(machineOf('chequer', 2, 'right')), cutsAt(machineOf('chequer', 2, 'left'))];
  assert.ok(right.length > 0);
  // a picture's middle lies between where either hand begins
  const middles = right.map((x, i) => (x + (left[i] as number)) / 2);
  for (const middle of middles) assert.ok(Math.abs(middle - (middles[0] as number)) < 0.01, `${middles}`);
  assert.notDeepEqual(left, right);
  assert.equal(machineOf('cobble', 1, 'left'), machineOf('cobble', 1, 'right'));
});
