// How near the bound do sheets come: fat quarters and squares together, and squares of one size?

import type { Sheet } from '#craft/sheets';
import type { IntegerSolver, Kind } from '#craft/strips';
import { msText, ofText, printTable, shareText } from '../table.ts';
import { sheetCourse } from './engine.ts';
import { gapOf, mean, median } from './measure.ts';
import { quiltClasses, quiltProblem, type Turning } from './problems.ts';
import { deep, flat } from './quilt-sized.ts';

/** Usable sizes in eighths: a fat quarter of 22 × 18 in, squares of 10 in, remnants of half a yard, of which there are two. */
const mixed: readonly Sheet[] = [
  { width: 176, height: 144, cost: 300, stock: null },
  { width: 80, height: 80, cost: 100, stock: null },
  { width: 336, height: 144, cost: 400, stock: 2 },
];
const quarters: readonly Sheet[] = [{ width: 176, height: 144, cost: 1, stock: null }];

const timesMs = [100, 2000] as const;

/** No piece of the seeded problems is larger than a fat quarter. */
const kindsFor = (of: {
  readonly kinds: number;
  readonly seed: number;
  readonly turning: Turning;
}): readonly Kind[] => {
  const { pieces } = quiltClasses.find((each) => each.kinds === of.kinds) ?? { pieces: [20, 50] };
  return quiltProblem({ ...of, pieces }).kinds;
};

/** Gap of the cost to the bound; with one size of sheet, how many sheets more than the bound. */
export const printSheets = (of: { readonly solver: IntegerSolver; readonly problems: number }): void => {
  const rows = ([10, 20] as const).flatMap((kinds) =>
    (['fixed', 'free'] as const).flatMap((turning) =>
      [flat, deep].map((cutting) => {
        const courses = [mixed, quarters].map((sheets) =>
          Array.from({ length: of.problems }, (_, i) => {
            const pieces = kindsFor({ kinds, seed: i + 1, turning });
            return sheetCourse({ kinds: pieces, cutting, sheets, solver: of.solver, timesMs });
          }),
        );
        const [many = [], one = []] = courses;
        const gaps = timesMs.map((_, time) =>
          shareText(mean(many.map(({ at }) => gapOf(at[time] ?? { value: 0, bound: 0 })))),
        );
        const over = one.map(({ last }) => last.cost - last.bound);
        return [
          `${kinds} kinds, ${cutting.stages} stages`,
          turning,
          msText(median([...many, ...one].map(({ firstMs }) => firstMs))),
          ...gaps,
          ofText(many.filter(({ last }) => last.bound >= last.cost).length, many.length),
          `${Math.max(...over)}`,
          ofText(over.filter((sheets) => sheets <= 0).length, one.length),
        ];
      }),
    ),
  );
  const times = timesMs.map((ms) => `mean gap at ${ms} ms`);
  printTable([
    ['sheets', 'turning', 'first', ...times, 'proven', 'fat quarters alone: most over the bound', 'proven'],
    ...rows,
  ]);
};
