// Ways to make that a document chooses. Whether the quilt has such units is found when its blocks are drawn.
import type { WrittenMethod } from './document.ts';
import { type Method, mayTrim, waysOfKind } from './methods.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { Reading } from './reading.ts';

/** Those that could be read; nothing where there is none. */
export const readMethods = (
  written: readonly WrittenMethod[] | undefined,
  around: { readonly path: string; readonly reading: Reading; readonly fabrics: NamedFabrics },
): { readonly methods?: readonly Method[] } => {
  const methods = (written ?? []).flatMap(
    (method, i) => readMethod(method, { ...around, path: `${around.path}/${i}` }) ?? [],
  );
  return methods.length === 0 ? {} : { methods };
};

const readMethod = (
  written: WrittenMethod,
  { path, reading, fabrics }: Parameters<typeof readMethods>[1],
): Method | null => {
  const { unit, way, trimmed = false } = written;
  const known = waysOfKind[unit];
  if (!known.includes(way)) reading.report({ code: 'design/way-not-for-unit', path: `${path}/way`, unit, way, known });
  else if (trimmed && !mayTrim(unit, way))
    reading.report({ code: 'design/way-not-trimmed', path: `${path}/trimmed`, unit, way });
  written.fabrics?.forEach((found, i) => {
    if (!fabrics.has.has(found))
      reading.report({ code: 'design/unknown-fabric', path: `${path}/fabrics/${i}`, found, known: fabrics.ids });
  });
  const size = written.size === undefined ? null : readSides(written.size, { path: `${path}/size`, reading });
  if (written.size !== undefined && size === null) return null;
  return { unit, size, fabrics: written.fabrics ?? null, way, trimmed, path };
};

const readSides = (
  written: NonNullable<WrittenMethod['size']>,
  { path, reading }: { readonly path: string; readonly reading: Reading },
): Method['size'] => {
  if (!Array.isArray(written)) {
    const side = reading.length({ written, path });
    return side && [side, side];
  }
  const [across, down] = written.map((side, i) => reading.length({ written: side, path: `${path}/${i}` }));
  return across && down ? [across, down] : null;
};
