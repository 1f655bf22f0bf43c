// A grid's cell as a block's drawing has it: one square, or halved corner to corner.
import fc from 'fast-check';
import { at, type Point } from '#ground/plane';

export interface Cell {
  readonly halved: 'no' | 'rising' | 'falling';
  /** Of both halves; the first, of a square. */
  readonly tones: readonly [string, string];
}

export const cell: fc.Arbitrary<Cell> = fc.record({
  halved: fc.constantFrom('no', 'rising', 'falling'),
  tones: fc.tuple(fc.constantFrom('light', 'medium', 'dark'), fc.constantFrom('light', 'dark')),
});

/** Its patches where its upper left corner lies so. */
export const patchesOfCell = (
  { halved, tones }: Cell,
  { x, y }: Point,
): readonly { readonly points: readonly Point[]; readonly tone: string }[] => {
  const [a, b, c, d] = [at(x, y), at(x + 1, y), at(x + 1, y + 1), at(x, y + 1)];
  if (halved === 'no') return [{ points: [a, b, c, d], tone: tones[0] }];
  const halves =
    halved === 'rising'
      ? [
          [a, b, d],
          [b, c, d],
        ]
      : [
          [a, b, c],
          [a, c, d],
        ];
  return halves.map((points, i) => ({ points, tone: tones[i] as string }));
};
