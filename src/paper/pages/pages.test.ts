import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { withBreaks } from './breakable.ts';
import { glossaryOf } from './glossary.ts';
import { handoutPages } from './handout.ts';
import { kindText, machineText, pressText, stepHeading } from './naming.ts';
import { patternPages } from './pattern.ts';
import { skillOf } from './skill.ts';

const plan = planOf(specimenDocument);
const pages = patternPages(plan);

/** Every picture that the facts name, with its alternative text. */
const picturesIn = (part: unknown): { name: string; alt: string }[] => {
  if (Array.isArray(part)) return part.flatMap(picturesIn);
  if (part === null || typeof part !== 'object') return [];
  const here = 'alt' in part && 'name' in part ? [part as { name: string; alt: string }] : [];
  return [...here, ...Object.values(part).flatMap(picturesIn)];
};

test('every picture is well-formed, named by the facts, and says in words what it shows', () => {
  const named = picturesIn(pages.facts);
  assert.deepEqual(new Set(named.map(({ name }) => name)), new Set(pages.pictures.keys()));
  for (const { alt } of named) assert.ok(alt.length > 15, alt);
  for (const [name, svg] of pages.pictures) {
    assert.equal(faultInXml(svg), null, name);
    assert.equal(faultInIds(svg), null, name);
  }
});

test('lettering in pictures is set in the page’s own type', () => {
  for (const [name, svg] of pages.pictures) {
    for (const [text] of svg.matchAll(/<text [^>]*>/g)) assert.ok(text.includes('font-family="Source Sans 3"'), name);
  }
});

test('a maker’s words reach the pages as data alone', () => {
  const title = '#panic() $x$ [*] @a \\ "';
  const hostile = patternPages(planOf(documentOf({ title, designer: title, notes: title })));
  assert.equal(hostile.facts.title, title);
  assert.deepEqual(hostile.sources, pages.sources);
});

test('a step says what goes where, how it is pressed and what it measures', () => {
  const step = pages.facts.blocks[0]?.steps[0];
  // by hand: two squares of 1 in finished, one seam: 2½ × 1½ before the next
  assert.equal(step?.heading, 'B goes to the left of A');
  assert.equal(step?.press, 'Press toward B.');
  assert.equal(step?.measures, 'Unit 1 measures 2½\u00a0×\u00a01½\u00a0in.');
  assert.equal(step?.make, 'make 2');
});

test('two parts of one name are told apart by their place', () => {
  const same = { join: ['A', 'A'], side: 'right', pressTo: 0 } as const;
  assert.equal(stepHeading(same), 'Another A goes to the right of A');
  assert.equal(pressText(same), 'Press toward the A on the left.');
  assert.equal(pressText({ ...same, pressTo: 'open' }), 'Press the seam open.');
});

test('three quarters clockwise is said as the hands do it', () => {
  assert.match(
    machineText({ join: ['#2', 'D'], side: 'right', machineTurn: 270 }, 'C'),
    /^Turn unit 2 a quarter turn counterclockwise, C at the top; lay D on it/,
  );
  assert.match(machineText({ join: ['A', 'B'], side: 'right', machineTurn: 0 }, null), /^Leave A as it lies; lay B/);
  assert.match(machineText({ join: ['A', 'A'], side: 'right', machineTurn: 0 }, null), /; lay the other A on it/);
});

test('a square takes its first neighbour on any edge, and a unit says where its newest part lies', () => {
  assert.match(
    machineText({ join: ['A', 'B'], side: 'left', machineTurn: 0 }, null),
    /^A is square: take any edge; lay B/,
  );
  // by hand: what was sewn at the right hand lies there still, and three eighths on at the lower left
  assert.match(
    machineText({ join: ['#4', 'C'], side: 'right', machineTurn: 0 }, 'D'),
    /^Leave unit 4 as it was sewn, D at the right;/,
  );
  assert.match(
    machineText({ join: ['#1', 'C'], side: 'left', machineTurn: 135 }, 'B'),
    /^Turn unit 1 three eighths of a turn clockwise, B at the lower left;/,
  );
});

const ring = {
  id: 'ring',
  title: 'Ring',
  size: '3',
  patches: {
    grid: [3, 3],
    list: [
      {
        points: [
          [0, 0],
          [2, 0],
          [2, 1],
          [0, 1],
        ],
        tone: 'oat',
      },
      {
        points: [
          [2, 0],
          [3, 0],
          [3, 2],
          [2, 2],
        ],
        tone: 'brick',
      },
      {
        points: [
          [1, 2],
          [3, 2],
          [3, 3],
          [1, 3],
        ],
        tone: 'oat',
      },
      {
        points: [
          [0, 1],
          [1, 1],
          [1, 3],
          [0, 3],
        ],
        tone: 'brick',
      },
      {
        points: [
          [1, 1],
          [2, 1],
          [2, 2],
          [1, 2],
        ],
        tone: 'bark',
      },
    ],
  },
};

test('a seam that is begun and closed later names the step that answers it', () => {
  const block = patternPages(
    planOf(documentOf({ blocks: [ring], top: { set: 'straight', rows: [[{ block: 'ring' }]] } })),
  ).facts.blocks[0];
  // by hand: a ring of four round a centre takes five seams, the first begun, the fifth its end
  assert.deepEqual(
    block?.steps.map(({ number }) => number),
    ['1', '2', '3', '4', '5'],
  );
  assert.match(block?.steps[0]?.machine ?? '', /open: step 5 closes it\.$/);
  assert.match(block?.steps[4]?.machine ?? '', /the half that step 1 left open/);
  assert.match(block?.warning ?? '', /closed at the end/);
});

test('a set-in seam says how to turn its corners', () => {
  assert.match(kindText({ kind: 'set-in', corners: 1, stopsAt: [] }, null), /At the inside corner stop/);
  assert.match(kindText({ kind: 'set-in', corners: 3, stopsAt: [] }, null), /each inside corner/);
  assert.equal(kindText({ kind: 'straight', corners: 0, stopsAt: [] }, null), '');
});

test('skill is guessed from shapes, with its reason', () => {
  assert.equal(skillOf(plan).level, 'Confident beginner');
  assert.equal(
    skillOf(planOf(documentOf({ top: { set: 'straight', rows: [[{ block: 'cabin' }]] } }))).level,
    'Beginner',
  );
});

test('directions give each cloth’s pieces in the order of cutting', () => {
  const brick = pages.facts.cutting[0];
  assert.equal(brick?.directions.apart.at(-1), 'Cut each square A1 once, corner to corner: 8 triangles.');
  const [first] = brick?.directions.cuts ?? [];
  assert.equal(first?.lead, 'Cut 1 strip 1⅞\u00a0in by the width of the cloth.');
  const [strip] = first?.strips ?? [];
  assert.deepEqual(strip?.cuts[0], { number: '1.1', text: 'sub-cut 4 squares 1⅞\u00a0in (A1).' });
});

test('very long words get places to break, others none', () => {
  assert.equal(withBreaks('a plain sentence, half-square'), 'a plain sentence, half-square');
  const { a } = withBreaks({ a: 'x'.repeat(40) });
  assert.equal(a.replaceAll('\u200b', ''), 'x'.repeat(40));
  assert.ok(Math.max(...a.split('\u200b').map((part) => part.length)) <= 12);
});

test('the same plan gives the same pages', () => {
  assert.deepEqual(patternPages(planOf(specimenDocument)), pages);
});

test('chapters that are not wanted leave neither facts nor pictures, and stand in the order of the job', () => {
  const some = patternPages(plan, { chapters: ['cautions', 'cover'] });
  assert.deepEqual(some.facts.chapters, ['cover', 'cautions']);
  assert.deepEqual([some.facts.top, some.facts.cutting, some.facts.blocks], [null, [], []]);
  assert.deepEqual(
    [...some.pictures.keys()].filter((name) => name.startsWith('block')),
    [],
  );
});

test('the page of cloth to buy says where each amount goes, and of which cloths less would not do', () => {
  const { amounts } = pages.facts;
  // by hand: the usual squaring is 1 in at each end
  assert.deepEqual(amounts?.head.slice(0, 4), ['Cloth', 'Laid out', 'Ends', 'Left over']);
  for (const row of amounts?.rows ?? []) assert.equal(row[2], '2\u00a0in');
  const proven = plan.fabrics.every(({ buy }) => buy.proven);
  assert.equal(amounts?.remarks[0]?.includes('less of any cloth'), proven);
  const brick = plan.fabrics[0];
  const told = patternPages(plan, {
    changes: [
      {
        code: 'shopping/no-turning',
        fabric: 'brick',
        before: { amount: 0.25, unit: 'yd', proven: true },
        after: { amount: 0.375, unit: 'yd', proven: true },
        difference: 0.125,
      },
    ],
  });
  assert.equal(brick?.id, 'brick');
  assert.equal(told.facts.amounts?.rows[0]?.at(-1), 'With no piece turned it takes ⅛ yd more.');
});

test('a handout has one block, its own cutting, and the cloth letters of the whole pattern', () => {
  const block = plan.blocks.at(-1)?.id ?? '';
  const handout = handoutPages({ plan, block, search: { steps: 0, solver: null } });
  assert.ok(handout);
  const titles = new Set(plan.blocks.filter(({ id }) => id === block).map(({ title }) => title || block));
  assert.ok(handout.facts.blocks.every(({ title }) => [...titles].some((one) => title.startsWith(one))));
  const whole = new Map(pages.facts.cloths.map(({ letter, name }) => [name, letter]));
  assert.ok(handout.facts.cutting.length > 0);
  for (const { letter, name } of handout.facts.cutting) assert.equal(whole.get(name), letter, name);
  // every piece of the block is cut, and nothing that is not of it
  const uses = handout.facts.cutting.flatMap(({ pieces }) => pieces.map(({ usedFor }) => usedFor));
  assert.ok(
    uses.every((use) => [...titles].some((one) => use.startsWith(one))),
    uses.join('; '),
  );
  assert.equal(handoutPages({ plan, block: 'none of these', search: { steps: 0, solver: null } }), null);
});

test('the glossary explains the words that the pages use, in any of their forms, and no others', () => {
  const words = glossaryOf(['Press toward unit 4.', 'mitred borders', 'Stop the machine', 'Trim 3 sashes.']).map(
    ({ word }) => word,
  );
  // by hand: "Stop" is no top, "machine" no chain; neither log nor template is named
  assert.deepEqual(words, ['Border', 'Mitre', 'Press', 'Sashing', 'Unit']);
  const used = pages.facts.glossary.map(({ word }) => word);
  assert.ok(used.includes('Board') && used.includes('Press'));
  assert.ok(!used.includes('Setting triangle') && !used.includes('Scrappy'));
  assert.deepEqual(used, used.toSorted(), 'in the order of the alphabet');
});

test('printed alone, the glossary is that of the usual pattern', () => {
  const alone = patternPages(plan, { chapters: ['glossary'] });
  assert.deepEqual(alone.facts.glossary, pages.facts.glossary);
  // what it read for that leaves no picture: a chapter of words has the swatches and no more
  assert.deepEqual(alone.pictures.size, patternPages(plan, { chapters: ['cautions'] }).pictures.size);
});

test('like units are chained, with how many there are and how many a block takes', () => {
  const texts = pages.facts.blocks.flatMap(({ steps }) => steps.map(({ machine }) => machine));
  const chained = plan.blocks.flatMap(({ steps }) => steps.map(({ total }) => total > 1));
  // every seam of the specimen is straight
  assert.deepEqual(
    texts.map((text) => / Chain (both|all \d+)(, \d+ a block)?\.$/.test(text)),
    chained,
  );
});

test('a few words of the maker stand on the cover, many of them or without a cover with the cloth to buy', () => {
  const factsWith = (notes: string, chapters: readonly ('cover' | 'cloth')[]) =>
    patternPages(planOf(documentOf({ notes })), { chapters }).facts;
  const few = factsWith('For a chair.\n\nOr a wall.', ['cover', 'cloth']);
  assert.deepEqual([few.cover?.words, few.maker], [['For a chair.', 'Or a wall.'], []]);
  const alone = factsWith('For a chair.', ['cloth']);
  assert.deepEqual(alone.maker, ['For a chair.']);
  const many = factsWith('Long. '.repeat(100), ['cover', 'cloth']);
  assert.deepEqual([many.cover?.words, many.maker.length], [[], 1]);
});

test('a caution, a note or a correction stands only where its chapter is printed', () => {
  const { facts } = patternPages(planOf(documentOf({ notes: 'Ours' })), { chapters: ['cover'] });
  assert.deepEqual([facts.cautions, facts.before, facts.maker, facts.glossary], [[], [], [], []]);
});

test('two panels of a backing have one seam, three have two', () => {
  const backingOf = (across: number): string => {
    const rows = Array.from({ length: across }, () => Array.from({ length: across }, () => ({ block: 'cabin' })));
    const document = documentOf({ top: { rows }, finish: { backing: { fabric: 'oat' } } });
    const { facts } = patternPages(planOf(document));
    return facts.finish?.find(({ heading }) => heading === 'Backing')?.lines.join(' ') ?? '';
  };
  // by hand: on cloth 40 wide, blocks of 3 and an overhang of 4 all round: 14 make 50, two panels; 26 make 86, three
  assert.match(backingOf(14), /in 2 panels .*press the seam open\. The seam runs /);
  assert.match(backingOf(26), /in 3 panels .*press the seams open\. The seams run /);
});
