// How short could a layout be if pieces were cut into slices across the cloth and each line across held any that fit side by
// side? A bound for strips of every height, since each strip is such a pile of lines.
import { linearProgramFor } from '#ground/search';
import { acrossFor } from './across.ts';
import type { Lies } from './lies.ts';

/** A better bound with every step, in units of height, not rounded. */
export function* slicesOver(lies: Lies): Generator<number, number, void> {
  const program = linearProgramFor(lies.demand);
  const across = acrossFor();
  for (let lie = 0; lie < lies.size; lie++) {
    const fit = Math.min(
      Math.floor(lies.width / (lies.wide[lie] as number)),
      lies.demand[lies.kind[lie] as number] as number,
    );
    program.addColumn(1, [lies.kind[lie] as number], [fit / (lies.tall[lie] as number)]);
  }
  let bound = 0;
  for (;;) {
    program.solve();
    const duals = program.duals().map((y) => Math.max(0, y));
    across.open(lies.width);
    for (let lie = 0; lie < lies.size; lie++) {
      const kind = lies.kind[lie] as number;
      across.offer({
        id: lie,
        wide: lies.wide[lie] as number,
        worth: (duals[kind] as number) / (lies.tall[lie] as number),
        most: lies.demand[kind] as number,
      });
    }
    const rate = Math.max(1, across.best());
    const total = duals.reduce((all, y, k) => all + y * (lies.demand[k] as number), 0);
    bound = Math.max(bound, total / rate);
    yield bound;
    if (rate <= 1 + 1e-8) return bound;
    const line: number[] = [];
    across.read(line);
    const gives = new Map<number, number>();
    for (let i = 0; i < line.length; i += 2) {
      const kind = lies.kind[line[i] as number] as number;
      gives.set(kind, (gives.get(kind) ?? 0) + (line[i + 1] as number) / (lies.tall[line[i] as number] as number));
    }
    program.addColumn(1, [...gives.keys()], [...gives.values()]);
  }
}
