// Laws of sameness on random quilts: what must change nothing, and what must change everything alike.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { QuiltPlan } from '#craft';
import { pointInTop } from '#craft/setting';
import { at, type Point, quarterTurned } from '#ground/plane';
import { near, planned } from '../documents/documents.ts';
import { type RandomCell, type RandomQuilt, randomQuilt } from './random-quilts.ts';

const runs = 80;

const plan = (document: RandomQuilt): QuiltPlan => planned({ ...document });

const turn = (degrees: number): 0 | 90 | 180 | 270 => (((degrees % 360) + 360) % 360) as 0 | 90 | 180 | 270;

const cellsOf = (document: RandomQuilt, of: (cell: RandomCell) => RandomCell): RandomQuilt => ({
  ...document,
  top: { ...document.top, rows: document.top.rows.map((row) => row.map(of)) },
});

test('the same document gives the same plan', () => {
  fc.assert(
    fc.property(randomQuilt(), (document) => {
      assert.deepEqual(plan(structuredClone(document)), plan(document));
    }),
    { seed: 21, numRuns: runs },
  );
});

test('a plan is frozen to its depths', () => {
  fc.assert(
    fc.property(randomQuilt(), (document) => {
      const waiting: { readonly path: string; readonly value: object }[] = [{ path: 'plan', value: plan(document) }];
      const seen = new Set<object>();
      for (let next = waiting.pop(); next; next = waiting.pop()) {
        if (seen.has(next.value)) continue;
        seen.add(next.value);
        assert.ok(Object.isFrozen(next.value), next.path);
        for (const [key, value] of Object.entries(next.value))
          if (typeof value === 'object' && value !== null) waiting.push({ path: `${next.path}.${key}`, value });
      }
    }),
    { seed: 22, numRuns: 20 },
  );
});

/** What a plan says without the order in which the document lists cloths and blocks. */
const withoutOrder = ({ top, blocks, fabrics, finish, time, notes }: QuiltPlan): unknown => ({
  top: { ...top, set: { ...top.set, strips: top.set.strips } },
  blocks,
  fabrics: fabrics.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  finish,
  time,
  notes: notes.map(({ path: _, ...note }) => JSON.stringify(note)).toSorted(),
});

test('the order in which patches, their corners, cloths and blocks are listed changes nothing', () => {
  const shuffle = fc.array(fc.nat(1000), { minLength: 40, maxLength: 40 });
  fc.assert(
    fc.property(randomQuilt(), shuffle, (document, keys) => {
      const shuffled = <T>(list: readonly T[]): readonly T[] =>
        list
          .map((value, i) => ({ value, key: keys[i % 40] as number, i }))
          .toSorted((a, b) => a.key - b.key || b.i - a.i)
          .map(({ value }) => value);
      const walked = (points: RandomPoints, by: number): RandomPoints => {
        const from = [...points.slice(by % points.length), ...points.slice(0, by % points.length)];
        return by % 2 === 0 ? from : from.toReversed();
      };
      const other: RandomQuilt = {
        ...document,
        fabrics: shuffled(document.fabrics),
        blocks: shuffled(
          document.blocks.map((block) =>
            block.patches
              ? {
                  ...block,
                  patches: {
                    ...block.patches,
                    list: shuffled(block.patches.list).map((patch, i) => ({
                      ...patch,
                      points: walked(patch.points, keys[i % 40] as number),
                    })),
                  },
                }
              : block,
          ),
        ),
      };
      assert.deepEqual(withoutOrder(plan(other)), withoutOrder(plan(document)));
    }),
    { seed: 23, numRuns: runs },
  );
});

type RandomPoints = readonly (readonly [number, number])[];

/** Every patch and strip of a top as text: its cloth and its corners where it lies, in no order. */
const laidDown = ({ top, blocks }: QuiltPlan, move: (p: Point) => Point = (p) => p): readonly string[] => {
  const outline = (fabric: string, points: readonly Point[]): string => {
    const corners = points.map(move).map(({ x, y }) => `${(x + 0).toFixed(6)},${(y + 0).toFixed(6)}`);
    return `${fabric} ${corners.toSorted().join(' ')}`.replaceAll('-0.000000', '0.000000');
  };
  const patches = top.set.placed.flatMap((placed) => {
    const entry = blocks.find(
      (block) => block.id === placed.block && block.colouring === placed.colouring && block.mirror === placed.mirror,
    );
    assert.ok(entry);
    // the entry of a mirrored block lies mirrored already
    return entry.patches.map(({ fabric, points }) =>
      outline(
        fabric,
        points.map((p) => pointInTop({ ...placed, mirror: false }, entry.finished, p)),
      ),
    );
  });
  const strips = top.set.strips.map(({ fabric, rect: { x, y, width, height } }) =>
    outline(fabric, [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)]),
  );
  return [...patches, ...strips].toSorted();
};

/** Butted borders and level sashes that run through know a left from a top, so they are left out. */
const turnable = randomQuilt({ borders: 'none', finish: 'none', runThrough: 'none' });

const turnedTop = (document: RandomQuilt): RandomQuilt => {
  const { rows, sashing } = document.top;
  const columns = rows[0]?.length ?? 0;
  const turned = cellsOf(document, (cell) => ('plain' in cell ? cell : { ...cell, turn: turn(cell.turn + 90) }));
  return {
    ...turned,
    top: {
      ...turned.top,
      // clockwise: the left column, from below, becomes the upper row
      rows: Array.from({ length: columns }, (_, column) =>
        turned.top.rows.map((row) => row[column] as RandomCell).toReversed(),
      ),
      ...(sashing
        ? { sashing: { ...sashing, width: { across: sashing.width.down, down: sashing.width.across } } }
        : {}),
    },
  };
};

test('a top turned a quarter has every patch where the turn brings it, and four turns are none', () => {
  fc.assert(
    fc.property(turnable, (document) => {
      const before = plan(document);
      const after = plan(turnedTop(document));
      const { height } = before.top.set;
      assert.deepEqual(
        laidDown(after),
        laidDown(before, (p) => {
          const q = quarterTurned(p, 1);
          return at(q.x + height, q.y);
        }),
      );
      assert.deepEqual(turnedTop(turnedTop(turnedTop(turnedTop(document)))), document);
    }),
    { seed: 24, numRuns: runs },
  );
});

const mirroredTop = (document: RandomQuilt): RandomQuilt => {
  const faced = cellsOf(document, (cell) =>
    'plain' in cell ? cell : { ...cell, mirror: !cell.mirror, turn: turn(-cell.turn) },
  );
  return { ...faced, top: { ...faced.top, rows: faced.top.rows.map((row) => row.toReversed()) } };
};

test('a top seen in a mirror has every patch on the other side, and mirrored twice it is the same', () => {
  fc.assert(
    fc.property(randomQuilt(), (document) => {
      const before = plan(document);
      const { width } = before.top.set;
      assert.deepEqual(
        laidDown(plan(mirroredTop(document))),
        laidDown(before, (p) => at(width - p.x, p.y)),
      );
      assert.deepEqual(mirroredTop(mirroredTop(document)), document);
    }),
    { seed: 25, numRuns: runs },
  );
});

test('a mirrored block is sewn in the same order, from the same sizes, with left and right exchanged', () => {
  // which way its seams are pressed hangs on its neighbours too: see the laws of pressing
  const other = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' } as const;
  fc.assert(
    fc.property(randomQuilt(), (document) => {
      const [plain, faced] = [false, true].map((mirror) =>
        plan(cellsOf(document, (cell) => ('plain' in cell ? cell : { ...cell, mirror }))),
      );
      plain?.blocks.forEach((block, i) => {
        const seen = faced?.blocks[i];
        assert.deepEqual(
          seen?.steps.map(({ join, side, seam, unfinished, total }) => ({
            join,
            side,
            seam,
            unfinished,
            total,
          })),
          block.steps.map(({ join, side, seam, unfinished, total }) => ({
            join,
            side: sideSeen(side),
            seam,
            unfinished,
            total,
          })),
        );
        assert.deepEqual(
          seen?.pieces.map(({ cut }) => cut.size),
          block.pieces.map(({ cut }) => cut.size),
        );
      });
      function sideSeen(side: keyof typeof other): string {
        return other[side];
      }
    }),
    { seed: 26, numRuns: runs },
  );
});

/** The document with every length of its own times k. The finish is left out: tail and joins have lengths of their own. */
const resized = (document: RandomQuilt, k: number): RandomQuilt => {
  const by = (value: number): number => value * k;
  const pair = ([a, b]: readonly [number, number]): readonly [number, number] => [by(a), by(b)];
  const { sashing, borders } = document.top;
  return {
    ...document,
    seam: by(document.seam),
    ruler: by(document.ruler),
    cutting: { squaring: by(document.cutting.squaring) },
    fabrics: document.fabrics.map((fabric) => ({ ...fabric, usableWidth: by(fabric.usableWidth) })),
    blocks: document.blocks.map((block) => ({
      ...block,
      ...(block.size ? { size: pair(block.size) } : {}),
      ...(block.recipe
        ? {
            recipe: {
              ...block.recipe,
              centre: pair(block.recipe.centre),
              rounds: block.recipe.rounds.map((round) => ({
                ...round,
                width: typeof round.width === 'number' ? by(round.width) : round.width.map(by),
              })),
            },
          }
        : {}),
    })),
    top: {
      ...document.top,
      ...(sashing
        ? { sashing: { ...sashing, width: { across: by(sashing.width.across), down: by(sashing.width.down) } } }
        : {}),
      ...(borders ? { borders: borders.map((border) => ({ ...border, width: by(border.width) })) } : {}),
    },
  };
};

test('resizing a document by 2 and by 1/2 scales finished sizes, cut sizes, check sizes and cloth alike', () => {
  const lengthsOf = ({ top, blocks, fabrics }: QuiltPlan): readonly (readonly [string, number])[] => [
    ['top across', top.set.width],
    ['top down', top.set.height],
    ...top.pieces.flatMap(({ label, cut }) => named(`top ${label}`, [...cut.finished, ...cut.size, ...cut.exact])),
    ...top.steps.flatMap(({ makes, unfinished, seam }) => named(`top ${makes}`, [...unfinished, seam])),
    ...blocks.flatMap((block) => [
      ...named(block.id, [...block.finished, ...block.unfinished]),
      ...block.pieces.flatMap(({ label, cut }) =>
        named(`${block.id} ${label}`, [...cut.finished, ...cut.size, ...cut.exact]),
      ),
      ...block.steps.flatMap(({ makes, unfinished, seam }) => named(`${block.id} ${makes}`, [...unfinished, seam])),
    ]),
    ...fabrics.flatMap(({ id, laid }) => named(id, [laid.layout.length, laid.bound])),
  ];
  const named = (name: string, lengths: readonly number[]) => lengths.map((length) => [name, length] as const);
  fc.assert(
    fc.property(randomQuilt({ finish: 'none' }), fc.constantFrom(2, 0.5), (document, k) => {
      const before = lengthsOf(plan(document));
      const after = lengthsOf(plan(resized(document, k)));
      assert.deepEqual(
        after.map(([name]) => name),
        before.map(([name]) => name),
      );
      after.forEach(([, length], i) => {
        near(length, k * (before[i]?.[1] as number), 1e-6);
      });
    }),
    { seed: 27, numRuns: runs },
  );
});
