// Binding, backing and batting of a document, with their defaults. What is not named is not planned.

import type { Unit } from '#craft/measure';
import { compare, div, fromDecimal, mul, type Rational, rational, two } from '#ground/exact';
import type { WrittenFinish } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { Fabric, FinishDesign } from './quilt.ts';
import { joiningSheet } from './read-bought.ts';
import { readSize } from './read-grid.ts';
import type { Reading } from './reading.ts';

/** Common practice, no source: 2 1/2 in strips for a double binding; in centimetres the next half above 6.35. */
const usualBinding: Readonly<Record<Unit, Rational>> = { in: rational(5, 2), cm: rational(13, 2) };

/** Backing and batting reach this far beyond the top on each side: common practice, no source. */
const usualOverage: Readonly<Record<Unit, Rational>> = { in: rational(4), cm: rational(10) };

/**
 * Quilting lines lie closer than most battings ask: common practice, no source. What the package says goes before.
 */
const usualSpacing: Readonly<Record<Unit, Rational>> = { in: rational(4), cm: rational(10) };

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
  readonly cloths: readonly Fabric[];
  /** Null where it could not be read. */
  readonly seam: Rational | null;
}

export const readFinish = (written: WrittenFinish | undefined, around: Around): FinishDesign => {
  const { reading } = around;
  const overage = (stated: string | number | undefined, path: string): Rational | null =>
    reading.length({ written: stated, path, sign: 'zero-or-more', missing: usualOverage[reading.unit] });
  const { backing, batting } = written ?? {};
  const behind = backing && overage(backing.overage, '/finish/backing/overage');
  const between = batting && overage(batting.overage, '/finish/batting/overage');
  const spacing =
    batting &&
    reading.length({ written: batting.spacing, path: '/finish/batting/spacing', missing: usualSpacing[reading.unit] });
  if (backing) checkFabric(backing.fabric, { ...around, path: '/finish/backing/fabric' });
  return {
    binding: readBinding(written?.binding, around),
    backing: backing && behind ? { fabric: backing.fabric, overage: behind, run: backing.run ?? null } : null,
    batting:
      batting && between && spacing
        ? { overage: between, spacing, price: batting.price === undefined ? null : fromDecimal(batting.price) }
        : null,
    sleeve: readSleeve(written?.sleeve, around),
    label: readLabel(written?.label, around),
    bed: readBed(written?.bed, around),
  };
};

const readBinding = (written: WrittenFinish['binding'], around: Around): FinishDesign['binding'] => {
  if (written === undefined) return null;
  const { reading, seam } = around;
  const { unit } = reading;
  checkFabric(written.fabric, { ...around, path: '/finish/binding/fabric' });
  const path = '/finish/binding/cut';
  const cut = reading.length({ written: written.cut, path, missing: usualBinding[unit] });
  if (cut === null) return null;
  // Folded in two it is cut/2 wide. One seam takes hold of it in front, and on the back it must reach the
  // seam line again: cut/2 − seam ≥ seam, with something over for the fold. Derived.
  const least = seam === null ? null : mul(seam, rational(4));
  if (seam !== null && least !== null && compare(cut, least) <= 0) {
    reading.report({ code: 'design/binding-too-narrow', path, cut, seam, least, unit });
  }
  checkWidth({ fabric: written.fabric, cut, path, ...around });
  return { fabric: written.fabric, cut, grain: written.grain ?? 'straight' };
};

const readSleeve = (written: WrittenFinish['sleeve'], around: Around): FinishDesign['sleeve'] => {
  if (written === undefined) return null;
  checkFabric(written.fabric, { ...around, path: '/finish/sleeve/fabric' });
  return { fabric: written.fabric };
};

/** A label, finished: common practice, no source. */
const usualLabel: Readonly<Record<Unit, readonly [Rational, Rational]>> = {
  in: [rational(6), rational(4)],
  cm: [rational(15), rational(10)],
};

const readLabel = (written: WrittenFinish['label'], around: Around): FinishDesign['label'] => {
  if (written === undefined) return null;
  const { reading } = around;
  checkFabric(written.fabric, { ...around, path: '/finish/label/fabric' });
  if (written.size === undefined) return { fabric: written.fabric, size: usualLabel[reading.unit] };
  const size = readSize(written.size, { path: '/finish/label/size', reading });
  return size && { fabric: written.fabric, size };
};

/** Common practice, no source: 12 in of drop (10 to 14 for a coverlet) and 10 in for the pillow (10 to 12). */
const usualBed: Readonly<Record<Unit, { readonly drop: Rational; readonly tuck: Rational }>> = {
  in: { drop: rational(12), tuck: rational(10) },
  cm: { drop: rational(30), tuck: rational(25) },
};

const readBed = (written: WrittenFinish['bed'], { reading }: Around): FinishDesign['bed'] => {
  if (written === undefined) return null;
  const { drop: usualDrop, tuck: usualTuck } = usualBed[reading.unit];
  const far = { sign: 'zero-or-more' } as const;
  const drop = reading.length({ written: written.drop, path: '/finish/bed/drop', missing: usualDrop, ...far });
  const tuck = reading.length({ written: written.tuck, path: '/finish/bed/tuck', missing: usualTuck, ...far });
  return drop === null || tuck === null ? null : { size: written.size, drop, tuck };
};

interface WidthAt extends Around {
  readonly fabric: string;
  readonly cut: Rational;
  readonly path: string;
}

/** A join at 45 degrees takes one strip's width of each strip: from half the cloth on, more is lost than gained. */
const checkWidth = ({ fabric, cut, path, cloths, reading }: WidthAt): void => {
  const cloth = cloths.find(({ id }) => id === fabric);
  if (cloth === undefined) return;
  const sheet = joiningSheet(cloth.bought);
  // strips run along the longer side of a sheet that is wide enough for them
  const long = sheet !== null && compare(cut, sheet[0]) <= 0 ? sheet[1] : cloth.usableWidth;
  const most = div(compare(long, cloth.usableWidth) > 0 ? long : cloth.usableWidth, two);
  const { unit } = reading;
  if (compare(cut, most) > 0) reading.report({ code: 'design/binding-too-wide', path, cut, fabric, most, unit });
};

const checkFabric = (found: string, { path, reading, fabrics }: Around & { readonly path: string }): void => {
  if (!fabrics.has.has(found)) reading.report({ code: 'design/unknown-fabric', path, found, known: fabrics.ids });
};
