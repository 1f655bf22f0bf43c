// Laws of every kind of top: its parts fill it once, and every part is joined exactly once.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt, type TopPlan, type TopStep } from '#craft';
import { outlineOfPlaced, type TopThing, thingsOf } from '#craft/setting';
import { chanceFrom } from '#ground/chance';
import { offLine, type Point, type Polygon, signedArea } from '#ground/plane';
import { patternPages } from '#paper';
import { faultInIds, faultInXml } from '#paper/specimen';
import { plainBlock, quilt, type Written } from '../documents/documents.ts';

type Tree = Written;

const turn = fc.constantFrom(0, 90, 180, 270);
const quarter = (least: number, most: number) => fc.integer({ min: 4 * least, max: 4 * most }).map((n) => n / 4);

const cell = fc.oneof(
  { weight: 4, arbitrary: turn.map((way): Written => ({ block: 'half', turn: way })) },
  { weight: 1, arbitrary: fc.constant<Written>({ plain: 'light' }) },
);

const cells = (rows: number, columns: number) =>
  fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows });

const counts = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }));

const sashing = fc.option(
  fc.record({
    width: quarter(1, 2),
    fabric: fc.constant('light'),
    cornerstones: fc.constant('dark'),
    outer: fc.boolean(),
  }),
  { nil: undefined },
);

/** The block in one corner, so that a row or column of plain cells has a size. */
const withBlock = (rows: readonly (readonly Written[])[]): readonly (readonly Written[])[] =>
  rows.map((row, i) => row.map((one, j) => (i === 0 || j === 0 ? { block: 'half' } : one)));

const straight = counts.chain(([rows, columns]) =>
  fc
    .record({ rows: cells(rows, columns).map(withBlock), sashing })
    .map((top): Written => ({ set: 'straight', ...top })),
);

const arranged = counts.chain(([rows, columns]) =>
  fc
    .record({
      kind: fc.constantFrom(
        'barn-raising',
        'straight-furrow',
        'sunshine-and-shadow',
        'streak-of-lightning',
        'fields-and-furrows',
        'pinwheel',
      ),
      swap: fc.boolean(),
    })
    .map((of): Written => ({ arrangement: { ...of, block: 'half', rows, columns } })),
);

const onPoint = counts.chain(([rows, columns]) =>
  fc
    .record({
      rows: cells(rows, columns).map(withBlock),
      between: columns === 1 ? fc.constant([]) : cells(rows - 1, columns - 1),
      sashing,
      float: quarter(0, 1),
    })
    .map((top): Written => ({ set: 'on-point', settingFabric: 'dark', ...top })),
);

/** A tree that fits: every run across holds as many halves as the first, or fewer and a fill. */
const sections = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.boolean(), quarter(1, 3)), { minLength: 1, maxLength: 4 })
  .map((runs): Written => {
    const across = (blocks: number, more: readonly Tree[]): Tree => ({
      across: [...Array.from({ length: blocks }, (): Tree => ({ block: 'half' })), ...more],
    });
    const down = runs.flatMap(([blocks, filled, width]): readonly Tree[] => {
      const nested: Tree = { down: [{ fill: 'light' }, { strip: 'dark', width }] };
      return [across(blocks + 1, filled ? [nested, { fill: 'dark' }] : [{ fill: 'dark' }]), { strip: 'light', width }];
    });
    return { set: 'sections', sections: { down: [across(6, []), ...down] } };
  });

const border = fc.oneof(
  fc.record({
    width: quarter(1, 3),
    fabric: fc.constant('light'),
    corners: fc.constantFrom('butted', 'squares', 'mitred'),
    grain: fc.constantFrom('crosswise', 'lengthwise'),
  }),
  fc.constantFrom('key', 'tooth').map((block): Written => ({ pieced: { block, spacer: 'dark' } })),
);

/** Half light, half dark, 4 square; two blocks for borders. */
const blocks: readonly Written[] = [
  {
    id: 'half',
    size: 4,
    patches: {
      grid: [1, 1],
      list: [
        {
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
          tone: 'light',
        },
        {
          points: [
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          tone: 'dark',
        },
      ],
    },
  },
  plainBlock('key', '1 1/2', '2'),
  plainBlock('tooth', 3, 3),
];

const cloth = (id: string, colour: string): Written => ({ id, colour, usableWidth: 60 });

const document = fc
  .record({
    unit: fc.constantFrom('in', 'cm'),
    middle: fc.oneof(straight, arranged, onPoint, sections),
    borders: fc.array(border, { maxLength: 3 }),
  })
  .map(({ unit, middle, borders }) =>
    quilt({
      unit,
      seam: unit === 'in' ? '1/4' : '0.5',
      fabrics: [cloth('light', '#f0e8d8'), cloth('dark', '#4a3023')],
      blocks,
      top: { ...JSON.parse(JSON.stringify(middle)), borders },
    }),
  );

const holds = (law: (top: TopPlan) => void): void =>
  fc.assert(
    fc.property(document, (written) => {
      const plan = planQuilt(written, { budget: { steps: 0 } });
      assert.ok(plan.ok, plan.ok ? '' : JSON.stringify(plan.problems));
      law(plan.value.top);
    }),
    { numRuns: 60 },
  );

const outlines = ({ set }: TopPlan): readonly Polygon[] => [
  ...set.placed.map(outlineOfPlaced),
  ...set.strips.map(({ points }) => points),
];

const isInside = (outline: Polygon, p: Point): boolean =>
  outline.every((a, i) => offLine(a, outline[(i + 1) % outline.length] as Point, p) > 1e-6);

test('blocks and plain pieces fill the whole top once: their areas add up, and no place lies in two of them', () => {
  holds((top) => {
    const { set } = top;
    const all = outlines(top);
    const area = all.reduce((sum, outline) => sum + signedArea(outline), 0);
    assert.ok(Math.abs(area - set.width * set.height) < 1e-6 * area, `${area} in ${set.width} by ${set.height}`);
    const chance = chanceFrom(7);
    for (let i = 0; i < 60; i++) {
      const p = { x: chance() * set.width, y: chance() * set.height };
      const found = all.filter((outline) => isInside(outline, p)).length;
      // on an edge it lies in none
      assert.ok(found <= 1, `${p.x} ${p.y} lies in ${found}`);
    }
  });
});

test('every outline runs clockwise and lies within the top', () => {
  holds((top) => {
    for (const outline of outlines(top)) {
      assert.ok(signedArea(outline) > 0);
      for (const { x, y } of outline) {
        assert.ok(x > -1e-6 && y > -1e-6 && x < top.set.width + 1e-6 && y < top.set.height + 1e-6);
      }
    }
  });
});

const nameOf = (thing: TopThing): string => ('block' in thing ? `block ${thing.block}` : `strip ${thing.strip}`);

const everything = ({ set }: TopPlan): readonly string[] =>
  [...set.placed.map((_, block) => nameOf({ block })), ...set.strips.map((_, strip) => nameOf({ strip }))].sort();

test('the last step joins every block and plain piece of the top, each once', () => {
  holds((top) => {
    const last = top.steps.at(-1);
    if (last === undefined) assert.equal(everything(top).length, 1);
    else assert.deepEqual(last.things.flat().map(nameOf).sort(), everything(top));
  });
});

test('the assembly and the borders hold every block and plain piece once', () => {
  holds((top) => {
    const { set } = top;
    const parts = [set.assembly, ...set.borders.flatMap(({ parts: sides }) => sides.map(({ assembly }) => assembly))];
    assert.deepEqual(parts.flatMap(thingsOf).map(nameOf).sort(), everything(top));
  });
});

test('the joins of a top are one fewer than its blocks and plain pieces, and a mitre more for each mitred corner', () => {
  holds((top) => {
    const mitres = 4 * top.set.borders.filter(({ kind }) => kind === 'mitred').length;
    const joins = top.steps.reduce((all, step) => all + step.perBlock, 0);
    assert.equal(joins, everything(top).length - 1 + mitres);
  });
});

test('every seam is longer than nothing and no longer than the unit that it makes', () => {
  holds((top) => {
    for (const { seam, unfinished } of top.steps) {
      assert.ok(seam > 0 && seam < Math.hypot(...unfinished), `${seam} in ${unfinished.join(' by ')}`);
    }
  });
});

test('a step joins pieces or the units of earlier steps, as often as later steps need its own', () => {
  holds((top) => {
    const made = new Map<string, TopStep>();
    const needed = new Map<string, number>();
    for (const step of top.steps) {
      for (const part of step.kind === 'straight' ? step.join : step.join.slice(0, 1)) {
        if (!part.startsWith('#')) continue;
        assert.ok(made.has(part), `${step.makes} joins ${part}`);
        needed.set(part, (needed.get(part) ?? 0) + step.perBlock);
      }
      made.set(step.makes, step);
    }
    for (const step of top.steps.slice(0, -1)) assert.equal(needed.get(step.makes), step.perBlock, step.makes);
  });
});

test('the last seam leaves the top its finished size and an allowance all round', () => {
  holds((top) => {
    const last = top.steps.at(-1);
    if (last === undefined) return;
    const [width, height] = last.unfinished;
    const seam = (width - top.set.width) / 2;
    assert.ok(Math.abs(height - top.set.height - 2 * seam) < 1e-6, `${width} by ${height}`);
  });
});

test('as many pieces are cut as the top has plain pieces', () => {
  holds((top) => {
    assert.equal(
      top.pieces.reduce((all, { count }) => all + count, 0),
      top.set.strips.length,
    );
  });
});

test('every kind of top has its pages: pictures are well-formed and fit the page, and nothing is left unsaid', () => {
  fc.assert(
    fc.property(document, (written) => {
      const plan = planQuilt(written, { budget: { steps: 0 } });
      assert.ok(plan.ok);
      const { pictures, facts } = patternPages(plan.value);
      for (const [name, svg] of pictures) {
        assert.equal(faultInXml(svg) ?? faultInIds(svg), null, name);
        assert.doesNotMatch(svg, /NaN|Infinity/, name);
        const [, width, height] = svg.match(/viewBox="0 0 ([\d.]+) ([\d.]+)"/) ?? [];
        // the measure of the page, and what stands under a heading on US letter
        assert.ok(Number(width) <= 480.01 && Number(height) <= 625, `${name}: ${width} × ${height}`);
      }
      assert.doesNotMatch(JSON.stringify(facts), /undefined|NaN/);
    }),
    { numRuns: 60, seed: 5 },
  );
});
