// Random blocks that straight seams make: rectangles from random cuts, some of them halved.
import fc from 'fast-check';
import { at, type Polygon } from '#ground/plane';

export interface CutBlock {
  /** Clockwise, on a square of 12. */
  readonly outlines: readonly Polygon[];
  readonly fabrics: readonly string[];
}

export const box = (x: number, y: number, w: number, h: number): Polygon => [
  at(x, y),
  at(x + w, y),
  at(x + w, y + h),
  at(x, y + h),
];

/** Up to eight patches: rectangles from random cuts, some halved corner to corner, in up to three fabrics. */
export const randomBlock: fc.Arbitrary<CutBlock> = fc
  .record({
    cuts: fc.array(fc.record({ part: fc.nat(9), share: fc.constantFrom(0.25, 0.5, 0.75), upright: fc.boolean() }), {
      minLength: 1,
      maxLength: 6,
    }),
    halved: fc.array(fc.nat(9), { maxLength: 2 }),
    fabrics: fc.array(fc.constantFrom('a', 'b', 'c'), { minLength: 8, maxLength: 8 }),
  })
  .map(({ cuts, halved, fabrics }): CutBlock => {
    let boxes = [{ x: 0, y: 0, w: 12, h: 12 }];
    for (const { part, share, upright } of cuts) {
      const i = part % boxes.length;
      const b = boxes[i] as (typeof boxes)[number];
      const two = upright
        ? [
            { ...b, w: b.w * share },
            { ...b, x: b.x + b.w * share, w: b.w * (1 - share) },
          ]
        : [
            { ...b, h: b.h * share },
            { ...b, y: b.y + b.h * share, h: b.h * (1 - share) },
          ];
      boxes = [...boxes.slice(0, i), ...two, ...boxes.slice(i + 1)];
    }
    const split = new Set(halved.map((h) => h % boxes.length));
    const outlines = boxes.flatMap((b, i): readonly Polygon[] => {
      const [p, q, r, s] = box(b.x, b.y, b.w, b.h) as [
        Polygon[number],
        Polygon[number],
        Polygon[number],
        Polygon[number],
      ];
      return split.has(i) && boxes.length + split.size <= 8
        ? [
            [p, q, s],
            [q, r, s],
          ]
        : [[p, q, r, s]];
    });
    return { outlines, fabrics: fabrics.slice(0, outlines.length) };
  });
