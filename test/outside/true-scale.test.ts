// What is printed at true scale measures what the plan says, by the file's own coordinates: check squares, templates, boards,
// gauges, and sheets that are put together.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan, QuiltPlan } from '#craft';
import { foundationsOf } from '#craft/foundation';
import { toNumber } from '#ground/exact';
import { patternPages } from '#paper';
import { planned, quilt, setOf, type Written } from '../documents/documents.ts';
import { drawnBlock } from '../documents/drawn.ts';
import { type Word, wordsOf } from './boxes.ts';
import { type At, type Box, boxOf, type Drawn, drawnPages } from './drawn-lines.ts';
import { amountOf } from './figures.ts';
import { partsOf } from './file-parts.ts';
import { exampleFiles, isMeasured, planOf, whilePrinted } from './prints.ts';
import { taggedIn } from './tags.ts';

const papers = ['letter', 'a4'] as const;
const mmPt = 72 / 25.4;

interface Figure {
  readonly alt: string;
  /** From 0. */
  readonly page: number;
  readonly drawn: readonly Drawn[];
}

interface Seen {
  readonly figures: readonly Figure[];
  /** Drawn by the page itself, in no figure, by page. */
  readonly besides: readonly (readonly Drawn[])[];
  readonly words: readonly (readonly Word[])[];
}

const seenIn = (file: { readonly path: string }): Seen => {
  const parts = partsOf(file.path);
  const pages = drawnPages(parts);
  const tagged = taggedIn(parts).filter(({ alt }) => alt !== '');
  return {
    figures: tagged.map(({ alt, page, mark }) => ({
      alt,
      page,
      drawn: pages[page]?.drawn.filter((one) => one.mark === mark) ?? [],
    })),
    besides: pages.map(({ drawn }) => drawn.filter(({ cutTo }) => cutTo.length === 0)),
    words: wordsOf(file).map(({ words }) => words),
  };
};

const outlinesIn = (drawn: readonly Drawn[], of: { readonly isDashed: boolean; readonly widthPt: number }) =>
  drawn
    .filter(
      ({ widthPt, isDashed }) => widthPt !== null && Math.abs(widthPt - of.widthPt) < 0.01 && isDashed === of.isDashed,
    )
    .flatMap(({ lines }) => lines.filter(({ isClosed }) => isClosed).map(({ points }) => points));

const cutEdge = { isDashed: false, widthPt: 0.75 };
const seamLine = { isDashed: true, widthPt: 0.6 };

/** Outlines with more corners than this have chords for arcs; a picture may have fewer chords than the plan. */
const mostCorners = 24;

/** How far a place is from an outline, in points. */
const fromOutline = ([x, y]: At, outline: readonly At[]): number =>
  Math.min(
    ...outline.map(([ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length] as At;
      const [dx, dy] = [bx - ax, by - ay];
      const along = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
      const share = Math.min(1, Math.max(0, along));
      return Math.hypot(x - ax - dx * share, y - ay - dy * share);
    }),
  );

/** The same of outlines with arcs: how far any corner of either is from the other, their boxes laid on each other. */
const offCurve = (found: readonly At[], meant: readonly At[]): number => {
  const [a, b] = [boxOf(found), boxOf(meant)];
  const moved = found.map(([x, y]): At => [x - a.left + b.left, y - a.top + b.top]);
  return Math.max(...moved.map((p) => fromOutline(p, meant)), ...meant.map((p) => fromOutline(p, moved)));
};

/** How far the worst corner is off once the outlines lie on each other as well as they can without a turn, in points. */
const offBy = (found: readonly At[], meant: readonly At[]): number => {
  if (meant.length > mostCorners) return offCurve(found, meant);
  if (found.length !== meant.length) return Number.POSITIVE_INFINITY;
  const mean = (k: 0 | 1): number => found.reduce((sum, p, i) => sum + p[k] - (meant[i] as At)[k], 0) / found.length;
  const [dx, dy] = [mean(0), mean(1)];
  return Math.max(...found.map(([x, y], i) => Math.hypot(x - (meant[i] as At)[0] - dx, y - (meant[i] as At)[1] - dy)));
};

const perUnit = (plan: QuiltPlan): number => (plan.quilt.unit === 'in' ? 72 : 72 / 2.54);

const scaled = (points: readonly { readonly x: number; readonly y: number }[], by: number): readonly At[] =>
  points.map(({ x, y }) => [x * by, y * by]);

test('an outline that is a tenth of a millimetre off in one corner is told', () => {
  const square: readonly At[] = [
    [0, 0],
    [72, 0],
    [72, 72],
    [0, 72],
  ];
  const off: readonly At[] = [
    [0, 0],
    [72, 0],
    [72 + 0.4, 72],
    [0, 72],
  ];
  assert.ok(offBy(square, square) === 0 && offBy(off, square) > 0.1 * mmPt);
});

/** The two squares beside the words "1 in" and "2.5 cm", in points. */
const checkSquares = ({ besides }: Seen): readonly (readonly [number, number])[] =>
  besides.flatMap((drawn) =>
    drawn.flatMap(({ lines, widthPt }) =>
      lines.flatMap(({ points, isClosed }) => {
        const { left, top, right, bottom } = boxOf(points);
        const isSquare = isClosed && widthPt !== null && Math.abs(widthPt - 0.5) < 0.01 && points.length === 4;
        return isSquare ? [[right - left, bottom - top] as const] : [];
      }),
    ),
  );

const assertChecked = (seen: Seen, named: string): void => {
  const squares = checkSquares(seen);
  assert.equal(squares.length, 2, named);
  // 1 in is 72 points, 2.5 cm are 72 × 2.5 ÷ 2.54
  [72, (72 * 2.5) / 2.54].forEach((side, i) => {
    for (const found of squares[i] ?? [])
      assert.ok(Math.abs(found / side - 1) < 0.002, `${named}: ${found} for ${side}`);
  });
};

/** Sheets of one drawing: what they show of it, in the drawing's own place. */
interface Sheet {
  readonly window: Box;
  readonly marks: readonly (readonly At[])[];
}

const sheetOf = ({ drawn }: Figure, origin: At): Sheet => {
  const moved = (points: readonly At[]): readonly At[] => points.map(([x, y]) => [x - origin[0], y - origin[1]]);
  const window = drawn.flatMap(({ cutTo }) => (cutTo.length > 1 ? [cutTo.at(-1) as Box] : []))[0] as Box;
  const isMark = ({ widthPt, isFilled }: Drawn): boolean =>
    widthPt !== null && Math.abs(widthPt - 0.5) < 0.01 && !isFilled;
  return {
    window: {
      left: window.left - origin[0],
      right: window.right - origin[0],
      top: window.top - origin[1],
      bottom: window.bottom - origin[1],
    },
    marks: drawn.filter(isMark).flatMap(({ lines }) => lines.map(({ points }) => moved(points))),
  };
};

const holds = ({ left, top, right, bottom }: Box, [x, y]: At): boolean =>
  x >= left - 0.1 && x <= right + 0.1 && y >= top - 0.1 && y <= bottom + 0.1;

/** Diamonds that can be seen whole. */
const diamondsOn = ({ window, marks }: Sheet): readonly At[] =>
  marks.flatMap((points) => {
    const { left, top, right, bottom } = boxOf(points);
    const isDiamond = points.length === 4 && Math.abs(right - left - 10) < 0.01 && Math.abs(bottom - top - 10) < 0.01;
    return isDiamond && points.every((p) => holds(window, p))
      ? [[(left + right) / 2, (top + bottom) / 2] as const]
      : [];
  });

/** Neighbours show the same diamonds in the same place, and together the sheets show every outline whole. */
const assertJoined = (sheets: readonly Sheet[], outlines: readonly (readonly At[])[], named: string): void => {
  for (const outline of outlines) {
    outline.forEach(([x, y], i) => {
      const [toX, toY] = outline[(i + 1) % outline.length] as At;
      for (const share of [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875]) {
        const p: At = [x + (toX - x) * share, y + (toY - y) * share];
        assert.ok(
          sheets.some(({ window }) => holds(window, p)),
          `${named}: ${p} is on no sheet`,
        );
      }
    });
  }
  sheets.forEach((a, i) => {
    for (const b of sheets.slice(i + 1)) {
      const across = Math.min(a.window.right, b.window.right) - Math.max(a.window.left, b.window.left);
      const down = Math.min(a.window.bottom, b.window.bottom) - Math.max(a.window.top, b.window.top);
      // neighbours share a strip; sheets that touch at a corner only share less
      if (Math.min(across, down) < 10 || Math.max(across, down) < 60) continue;
      const shared = diamondsOn(a).filter((p) => holds(b.window, p));
      assert.ok(shared.length >= 2, `${named}: two sheets share ${shared.length} diamonds`);
      for (const [x, y] of shared) {
        const nearest = Math.min(...diamondsOn(b).map((p) => Math.hypot(p[0] - x, p[1] - y)));
        assert.ok(nearest < 0.2 * mmPt, `${named}: a diamond is off by ${nearest / mmPt} mm`);
      }
    }
  });
};

const assertTemplates = (plan: QuiltPlan, seen: Seen, paper: string): void => {
  const drawnPieces = plan.blocks.flatMap((block) => block.pieces).filter(({ cut }) => cut.template !== null);
  const wholes = new Map<string, Figure[]>();
  for (const figure of seen.figures) {
    if (!figure.alt.startsWith('Template ') || !figure.alt.includes('true scale')) continue;
    const name = figure.alt.slice(0, figure.alt.indexOf(', true scale'));
    wholes.set(name, [...(wholes.get(name) ?? []), figure]);
  }
  assert.equal(wholes.size, drawnPieces.length);
  [...wholes].forEach(([name, figures], i) => {
    const template = drawnPieces[i]?.cut.template;
    assert.ok(template);
    const [cut, seam] = [template.points, template.seamLine].map((points) => scaled(points, perUnit(plan)));
    const found = figures.map(({ drawn }) => outlinesIn(drawn, cutEdge));
    for (const outlines of found) {
      assert.equal(outlines.length, 1, name);
      const off = offBy(outlines[0] ?? [], cut ?? []);
      assert.ok(off < 0.1 * mmPt, `${paper}, ${name}: the cut line is off by ${off / mmPt} mm`);
    }
    for (const { drawn } of figures) {
      const off = Math.min(...outlinesIn(drawn, seamLine).map((points) => offBy(points, seam ?? [])));
      assert.ok(off < 0.1 * mmPt, `${paper}, ${name}: the seam line is off by ${off / mmPt} mm`);
    }
    if (figures.length === 1) return;
    const origins = found.map((outlines) => (outlines[0] as readonly At[])[0] as At);
    const sheets = figures.map((figure, k) => sheetOf(figure, origins[k] as At));
    const whole = (found[0]?.[0] ?? []).map(([x, y]): At => [x - (origins[0] as At)[0], y - (origins[0] as At)[1]]);
    assertJoined(sheets, [whole], name);
  });
};

const withTemplates: Readonly<Record<string, () => QuiltPlan>> = {
  'an attic window of 4 in': () => planned(attic(4)),
  'an attic window of 30 in, over several sheets': () => planned(attic(30)),
  'an attic window of 40 cm': () => planned(attic(40, { unit: 'cm' })),
  'twelve fields': () => planOf('twelve-fields.quilt.json'),
  'mill pond, with curves': () => planOf('mill-pond.quilt.json'),
};

const attic = (size: number, more: Written = {}): Written =>
  quilt({ blocks: [drawnBlock('attic_window', size)], top: setOf('attic_window'), ...more });

for (const [name, planFor] of Object.entries(withTemplates)) {
  test(`templates of ${name} have the plan's outlines within 0.1 mm, their sheets meet, and the check squares are true`, async () => {
    const plan = planFor();
    for (const paper of papers) {
      await whilePrinted(patternPages(plan, { chapters: ['templates'] }), paper, (file) => {
        const seen = seenIn(file);
        assertChecked(seen, paper);
        assertTemplates(plan, seen, paper);
      });
    }
  });
}

/** The entries that have a board: one for each block to sew. */
const boardBlocks = (plan: QuiltPlan): readonly BlockPlan[] =>
  plan.blocks.filter(
    ({ id, patches }, i) => patches.length > 0 && plan.blocks.findIndex((block) => block.id === id) === i,
  );

/** Distance of a point from the line through two others. */
const besideLine = ([x, y]: At, [ax, ay]: At, [bx, by]: At): number =>
  Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

/** Nowhere less than the allowance, and nowhere more but at corners. */
const assertCurvedAllowance = (
  of: { readonly seam: readonly At[]; readonly cut: readonly At[]; readonly allowance: number },
  named: string,
): void => {
  for (const p of of.cut) {
    const found = fromOutline(p, of.seam);
    assert.ok(found > of.allowance - 0.1 * mmPt, `${named}: the cut edge comes as near as ${found}`);
  }
  for (const p of of.seam) {
    const found = fromOutline(p, of.cut);
    assert.ok(Math.abs(found - of.allowance) < 0.1 * mmPt, `${named}: an allowance of ${found}, not ${of.allowance}`);
  }
};

const assertBoard = (plan: QuiltPlan, block: BlockPlan, figures: readonly Figure[], named: string): void => {
  const scale = perUnit(plan);
  const allowance = toNumber(plan.quilt.seam) * scale;
  const cuts = figures.map(({ drawn }) => outlinesIn(drawn, cutEdge));
  figures.forEach(({ drawn }, k) => {
    const seams = outlinesIn(drawn, seamLine);
    assert.equal(seams.length, block.patches.length, named);
    block.patches.forEach((patch, i) => {
      const seam = seams[i] ?? [];
      const off = offBy(seam, scaled(patch.points, scale));
      assert.ok(off < 0.1 * mmPt, `${named}, ${patch.piece}: the seam line is off by ${off / mmPt} mm`);
      // the cut edge runs an allowance outside of the seam line, side by side
      const cut = cuts[k]?.[i] ?? [];
      if (patch.arcs !== undefined) {
        assertCurvedAllowance({ seam, cut, allowance }, `${named}, ${patch.piece}`);
        return;
      }
      seam.forEach((p, side) => {
        const q = seam[(side + 1) % seam.length] as At;
        const beside = [p, q].map((end) => besideLine(end, cut[side] as At, cut[(side + 1) % cut.length] as At));
        for (const found of beside)
          assert.ok(
            Math.abs(found - allowance) < 0.1 * mmPt,
            `${named}, ${patch.piece}: an allowance of ${found / scale}`,
          );
      });
    });
  });
  if (figures.length === 1) return;
  const origins = cuts.map((outlines) => outlines[0]?.[0] as At);
  const outlines = (cuts[0] ?? []).map((points) =>
    points.map(([x, y]): At => [x - (origins[0] as At)[0], y - (origins[0] as At)[1]]),
  );
  assertJoined(
    figures.map((figure, k) => sheetOf(figure, origins[k] as At)),
    outlines,
    named,
  );
};

const assertGauge = (plan: QuiltPlan, block: BlockPlan, seen: Seen, named: string): void => {
  const measured = block.steps.filter(isMeasured);
  const sizes = measured.flatMap(({ unfinished }) => unfinished.map(Number));
  const figures = seen.figures.filter(({ alt }) => alt.startsWith(`${named}, gauge`));
  assert.equal(figures.length > 0, sizes.length > 0, named);
  const written: { readonly at: number; readonly says: number }[] = [];
  for (const { drawn, page } of figures) {
    const upright = drawn.filter(
      ({ lines, isDashed }) =>
        !isDashed &&
        lines.length === 1 &&
        lines[0]?.points.length === 2 &&
        lines[0].points[0]?.[0] === lines[0].points[1]?.[0],
    );
    const left = Math.min(...upright.map(({ lines }) => lines[0]?.points[0]?.[0] as number));
    for (const { lines, cutTo } of upright) {
      const [[x = 0, top = 0] = [], [, bottom = 0] = []] = (lines[0]?.points ?? []) as readonly At[];
      if (x === left || !holds(cutTo.at(-1) as Box, [x, top])) continue;
      const says = figureBefore(seen.words[page] ?? [], { x, top, bottom });
      if (says !== null) written.push({ at: (x - left) / perUnit(plan), says });
    }
  }
  const mark = toNumber(plan.quilt.ruler);
  for (const { at, says } of written) {
    const size = sizes.find((one) => Math.abs(one - at) * perUnit(plan) < 0.1 * mmPt);
    assert.ok(size !== undefined, `${named}: a mark at ${at}, where no unit ends`);
    // "about" may be half a mark off
    assert.ok(Math.abs(says - size) <= mark / 2 + 1e-9, `${named}: a mark at ${at} says ${says}`);
  }
  for (const size of sizes)
    assert.ok(
      written.some(({ at }) => Math.abs(at - size) <= mark / 2 + 1e-9),
      `${named}: no mark for ${size}`,
    );
};

/** The length that is written left of a mark, on its last line; null where there is none. */
const figureBefore = (
  words: readonly Word[],
  mark: { readonly x: number; readonly top: number; readonly bottom: number },
): number | null => {
  const line = words
    .filter(({ top, bottom, right }) => {
      const middle = (top + bottom) / 2;
      return middle > mark.bottom - 12 && middle < mark.bottom + 1 && right < mark.x;
    })
    .toSorted((a, b) => b.right - a.right);
  const end = line.findIndex(({ text }) => /^(?:in|cm):$/.test(text));
  return end < 0 ? null : amountOf(line[end + 1]?.text ?? '');
};

for (const name of exampleFiles) {
  test(`boards of ${name} have the plan's outlines within 0.1 mm, their sheets meet, and gauges have every check size`, async () => {
    const plan = planOf(name);
    for (const paper of papers) {
      await whilePrinted(patternPages(plan, { chapters: ['boards'] }), paper, (file) => {
        const seen = seenIn(file);
        assertChecked(seen, paper);
        const titles = [...new Set(seen.figures.flatMap(({ alt }) => /^(.*), board: /.exec(alt)?.[1] ?? []))];
        const blocks = boardBlocks(plan);
        assert.equal(titles.length, blocks.length);
        blocks.forEach((block, i) => {
          const title = titles[i] as string;
          const figures = seen.figures.filter(({ alt }) => alt.startsWith(`${title}, board: `));
          assertBoard(plan, block, figures, title);
          assertGauge(plan, block, seen, title);
        });
      });
    }
  });
}

for (const name of exampleFiles) {
  test(`foundations of ${name} are the patches in mirror image within 0.1 mm, in the order of sewing, and their sheets meet`, async () => {
    const plan = planOf(name);
    const scale = perUnit(plan);
    const wanted = plan.blocks
      .filter(
        ({ id, mirror, patches }, i) =>
          patches.length > 0 && plan.blocks.findIndex((one) => one.id === id && one.mirror === mirror) === i,
      )
      .flatMap((block) => {
        const found = foundationsOf(block);
        return (found?.sections ?? []).map((order) => order.map(({ patch }) => block.patches[patch]?.points ?? []));
      })
      .filter(({ length }) => length > 1);
    for (const paper of papers) {
      await whilePrinted(patternPages(plan, { chapters: ['foundations'] }), paper, (file) => {
        const seen = seenIn(file);
        assertChecked(seen, paper);
        const wholes: Figure[][] = [];
        for (const figure of seen.figures.filter(({ alt }) => alt.includes('in mirror image at true size'))) {
          if (/Sheet 1: /.test(figure.alt)) wholes.push([]);
          wholes.at(-1)?.push(figure);
        }
        assert.equal(wholes.length, wanted.length);
        wholes.forEach((figures, i) => {
          const patches = wanted[i] ?? [];
          const outlines = figures.map(({ drawn }) => outlinesIn(drawn, cutEdge));
          for (const found of outlines) {
            assert.equal(found.length, patches.length);
            // top of the block at the right: what lies above in it lies right of it on the sheet
            const isOnItsSide = figures[0]?.alt.includes('on its side, the top of the block at the right');
            patches.forEach((patch, k) => {
              const mirrored = patch.map(({ x, y }) => (isOnItsSide ? { x: -y, y: -x } : { x: -x, y })).toReversed();
              const off = offBy(found[k] ?? [], scaled(mirrored, scale));
              assert.ok(off < 0.1 * mmPt, `${figures[0]?.alt}: patch ${k + 1} is off by ${off / mmPt} mm`);
            });
          }
          if (figures.length === 1) return;
          const origins = outlines.map((found) => found[0]?.[0] as At);
          assertJoined(
            figures.map((figure, k) => sheetOf(figure, origins[k] as At)),
            (outlines[0] ?? []).map((points) =>
              points.map(([x, y]): At => [x - (origins[0] as At)[0], y - (origins[0] as At)[1]]),
            ),
            figures[0]?.alt ?? '',
          );
        });
      });
    }
  });
}
