// Strips sewn round a unit one after another: each as long as the side it is sewn to. Logs and frames alike.
import type { ExactSize, FramedDesign, LogCabinDesign, LogDesign, Side } from '#craft/design';
import { add, type Rational, sub, zero } from '#ground/exact';
import { boxCorners, type ExactBox, type ExactDraft, type ExactPatch, moved } from './exact-draft.ts';

/** The centre's patches, then log after log; the size follows. @source docs/formulas.md#log-cabin */
export const cabinDraft = (
  shape: LogCabinDesign,
  at: { readonly core: ExactDraft | null; readonly path: string },
): ExactDraft =>
  withStrips(
    at.core ?? plainCentre(shape, at.path),
    shape.logs.map((log) => logStrip(log, at.path)),
  );

/** Each frame in the order left, right, top, bottom: the sides as high as the block, the ends across everything. */
export const framedDraft = (
  { frames }: FramedDesign,
  at: { readonly inner: ExactDraft; readonly path: string },
): ExactDraft =>
  withStrips(
    at.inner,
    frames.flatMap(({ width, fabric }, i) =>
      frameOrder.map((side) => ({ side, width, tone: fabric, fabric, path: `${at.path}/frame/${i}` })),
    ),
  );

const frameOrder: readonly Side[] = ['left', 'right', 'top', 'bottom'];

interface Strip {
  readonly side: Side;
  readonly width: Rational;
  readonly tone: string;
  readonly letter?: string | undefined;
  readonly fabric?: string | undefined;
  readonly path: string;
}

const logStrip = ({ side, width, tone, letter, round }: LogDesign, path: string): Strip => ({
  side,
  width,
  tone,
  letter,
  path: `${path}/recipe/rounds/${round}`,
});

const plainCentre = ({ centre, centreTone, centreLetter }: LogCabinDesign, path: string): ExactDraft => ({
  size: centre,
  patches: [
    { corners: boxCorners(boxOf(centre)), tone: centreTone, letter: centreLetter, path: `${path}/recipe/centre` },
  ],
  added: [],
});

const boxOf = ([right, bottom]: ExactSize): ExactBox => ({ left: zero, top: zero, right, bottom });

const withStrips = (core: ExactDraft, strips: readonly Strip[]): ExactDraft => {
  let whole = boxOf(core.size);
  const laid = strips.map(({ side, width, ...strip }): ExactPatch => {
    const box = beside(whole, { side, width });
    whole = around(whole, box);
    return { ...strip, corners: boxCorners(box) };
  });
  return {
    size: [sub(whole.right, whole.left), sub(whole.bottom, whole.top)],
    patches: moved([...core.patches, ...laid], [sub(zero, whole.left), sub(zero, whole.top)]),
    added: [...core.added, ...strips.map(({ side }) => side)],
  };
};

const beside = (unit: ExactBox, { side, width }: Pick<Strip, 'side' | 'width'>): ExactBox => {
  switch (side) {
    case 'left':
      return { ...unit, left: sub(unit.left, width), right: unit.left };
    case 'right':
      return { ...unit, left: unit.right, right: add(unit.right, width) };
    case 'top':
      return { ...unit, top: sub(unit.top, width), bottom: unit.top };
    case 'bottom':
      return { ...unit, top: unit.bottom, bottom: add(unit.bottom, width) };
  }
};

const around = (a: ExactBox, b: ExactBox): ExactBox => ({
  left: a.left.compare(b.left) < 0 ? a.left : b.left,
  top: a.top.compare(b.top) < 0 ? a.top : b.top,
  right: a.right.compare(b.right) > 0 ? a.right : b.right,
  bottom: a.bottom.compare(b.bottom) > 0 ? a.bottom : b.bottom,
});
