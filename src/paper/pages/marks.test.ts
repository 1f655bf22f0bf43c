import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import { patternPages } from './pattern.ts';

const { facts } = patternPages(planOf(documentOf({})));
/** Half of the block, from one side to the other. */
const rect = (y: number, tone: string) => ({
  points: [
    [0, y],
    [2, y],
    [2, y + 1],
    [0, y + 1],
  ],
  tone,
});
const marksIn = (text: string): readonly string[] => text.match(/\b[A-Z]\d+\b/g) ?? [];

test('what a block, the top and the finish take up is named by a mark of the cutting pages, and the same one everywhere', () => {
  const uses = new Map(
    facts.cutting.flatMap(({ pieces }) => pieces.map(({ mark, usedFor }) => [mark, usedFor] as const)),
  );
  for (const { title, pieces } of facts.blocks) {
    const key = facts.pieceKey.find((one) => one.title === title);
    for (const { label, cloth } of pieces) {
      assert.deepEqual([cloth], key?.pieces.find((one) => one.label === label)?.cloths, `${title} ${label}`);
      const marks = marksIn(cloth);
      assert.ok(marks.length > 0, cloth);
      for (const mark of marks) assert.match(uses.get(mark) ?? '', new RegExp(`${title} [^;]*\\b${label}\\b`), cloth);
    }
  }
  const borders = facts.top?.parts.find(({ heading }) => heading === 'Borders');
  for (const [, , label, cut] of borders?.table?.rows ?? []) {
    const [mark] = marksIn(cut ?? '');
    assert.match(uses.get(mark ?? '') ?? '', new RegExp(`Borders [^;]*\\b${label}\\b`), cut);
  }
  for (const [heading, role] of [
    ['Backing', 'Backing'],
    ['Binding', 'Binding'],
  ] as const) {
    const lines = facts.finish.find((part) => part.heading === heading)?.lines.join(' ') ?? '';
    const [mark] = marksIn(lines);
    assert.match(uses.get(mark ?? '') ?? '', new RegExp(role), lines);
  }
});

test('a block of an upright print says which pile is for which turn', () => {
  const fabrics = specimenDocument.fabrics.map((fabric) =>
    fabric.id === 'oat' ? { ...fabric, print: 'one-way' } : fabric,
  );
  const rail = {
    id: 'rail',
    title: 'Rail',
    size: '4',
    patches: {
      grid: [2, 2],
      list: [rect(0, 'oat'), rect(1, 'bark')],
    },
  };
  const pages = patternPages(
    planOf(
      documentOf({
        fabrics,
        blocks: [rail],
        top: { set: 'straight', rows: [[{ block: 'rail' }, { block: 'rail', turn: 90 }, { block: 'rail' }]] },
      }),
    ),
  ).facts;
  const remark = pages.blocks[0]?.remarks.find((line) => line.startsWith('The print must stand upright'));
  // by hand: upright the rail of oat lies 4½ × 2½ on the cloth, turned by a quarter 2½ × 4½
  const markOf = (size: string) =>
    pages.cutting.flatMap(({ pieces }) => pieces).find((piece) => piece.size.startsWith(size))?.mark;
  const [level, upright] = [markOf('4½\u00a0×\u00a02½'), markOf('2½\u00a0×\u00a04½')];
  assert.ok(level && upright && level !== upright);
  assert.match(
    remark ?? '',
    new RegExp(`the 2 not turned take A from ${level}; for the one turned 90° take A from ${upright}`),
  );
});

test('notices name cloths and blocks as people do', () => {
  const fabrics = specimenDocument.fabrics.map((fabric) =>
    fabric.id === 'oat' ? { ...fabric, name: 'Rolled oats', print: 'one-way' } : fabric,
  );
  const { notices } = patternPages(planOf(documentOf({ fabrics }))).facts;
  assert.ok(
    notices.some((line) => line.includes('“Rolled oats”')),
    notices.join('\n'),
  );
  assert.ok(!notices.some((line) => line.includes('“oat”')));
});
