// A quilt with faults, as far as it can be drawn: what is at fault is stood in for by something plain in its place, so that the rest is seen
// and the faults can be lit where they lie. The document itself stays as it is.
import { type Problem, planQuilt } from '#craft';
import { parseLength } from '#craft/measure';
import type { Json, JsonObject } from '#workroom/editing';
import type { QuiltPicture } from './answer.ts';
import { askMeasures } from './measured.ts';
import { pictureOf } from './pictured.ts';

/** Standing in for one thing may show a fault in another, such as a row that no longer fits. */
const mostRounds = 5;

/** @returns null where too little is left to draw */
export const standIn = (document: JsonObject): QuiltPicture | null => {
  let nearest = document;
  for (let round = 0; round < mostRounds; round++) {
    const planned = planQuilt(nearest, { budget: { steps: 0 } });
    if (planned.ok) return pictureOf(planned.value);
    const next = faultsIn(planned.problems).reduce(without, nearest);
    if (next === nearest) return null;
    nearest = next;
  }
  return null;
};

/** Places of what is stood in for, each once: a whole cloth, a whole block, or a part of the top. */
const faultsIn = (problems: readonly Problem[]): readonly string[] => [
  ...new Set(problems.map(({ path }) => /^\/(?:blocks|fabrics)\/\d+(?:\/size$)?/.exec(path)?.[0] ?? path)),
];

const without = (document: JsonObject, path: string): JsonObject => {
  const [part = '', nth = '', ...rest] = path.slice(1).split('/');
  switch (part) {
    case '':
    case 'format':
    case 'version':
    case 'unit':
      return document; // nothing stands in for these
    case 'fabrics':
      return nth === '' ? { ...document, fabrics: [plainCloth(0)] } : inList(document, part, nth, clothFor);
    case 'blocks':
      return nth === ''
        ? document
        : inList(document, part, nth, (block, i) =>
            placeFor(rest[0] === 'size' ? { ...block, size: null } : block, i, document),
          );
    case 'top':
      return { ...document, top: topWithout(objectIn(document.top), [nth, ...rest], document) };
    default:
      return omitted(document, part);
  }
};

const inList = (
  document: JsonObject,
  part: 'fabrics' | 'blocks',
  nth: string,
  make: (old: JsonObject, index: number) => JsonObject,
): JsonObject => {
  const list = listIn(document[part]);
  return { ...document, [part]: list.map((old, i) => (String(i) === nth ? make(objectIn(old), i) : old)) };
};

const plainCloth = (index: number): JsonObject => ({ id: `cloth-${index + 1}`, colour: '#b3aa99' });

/** Of its own name and colour where they hold; as wide as any piece. */
const clothFor = ({ id, colour, usableWidth }: JsonObject, index: number): JsonObject => {
  const plain = plainCloth(index);
  return {
    // of one that is stood in for already the name is at fault
    id: typeof id === 'string' && usableWidth !== widestCloth ? id : (plain.id ?? null),
    colour: typeof colour === 'string' && /^#[0-9a-f]{6}$/i.test(colour) ? colour : (plain.colour ?? null),
    usableWidth: widestCloth,
  };
};

const widestCloth = '200';

/** A place of the block's own size, as for a panel that is made elsewhere; where its size is at fault, of another block's. */
const placeFor = ({ id, title, size, made }: JsonObject, index: number, document: JsonObject): JsonObject => ({
  id: typeof id === 'string' && made === undefined ? id : `block-${index + 1}`,
  ...(typeof title === 'string' ? { title: title.slice(0, 40) } : {}),
  size: made === undefined && isSize(size) ? (size ?? null) : otherSize(document),
  made: 'elsewhere',
});

const isSize = (size: Json | undefined): boolean =>
  [size].flat().every((side) => {
    const isWritten = typeof side === 'string' || typeof side === 'number';
    return isWritten && parseLength(side, { unit: 'in', sign: 'positive' }).ok;
  });

const otherSize = (document: JsonObject): Json => {
  const [first] = askMeasures(document).blocks;
  if (first !== undefined) return [...first.size];
  return document.unit === 'cm' ? '30' : '12';
};

const topWithout = (top: JsonObject, [key = '', ...rest]: readonly string[], document: JsonObject): JsonObject => {
  const [row = '', place = ''] = rest;
  const plain = { plain: firstCloth(document) };
  switch (key) {
    case 'rows':
    case 'between': {
      const rows = listIn(top[key]).map(listIn);
      const across = rows[0]?.length ?? 0;
      if (row === '') return omitted(top, key);
      return {
        ...top,
        [key]: rows.map((cells, i) => {
          if (String(i) !== row) return cells;
          if (place !== '') return cells.map((cell, j) => (String(j) === place ? plain : cell));
          return Array.from({ length: across }, (_, j) => cells[j] ?? plain);
        }),
      };
    }
    case 'borders':
      if (row === '') return omitted(top, key);
      return {
        ...top,
        borders: listIn(top.borders).map((border, i) =>
          String(i) === row ? { width: document.unit === 'cm' ? '5' : '2', fabric: firstCloth(document) } : border,
        ),
      };
    default:
      return key in top ? omitted(top, key) : top;
  }
};

const firstCloth = ({ fabrics }: JsonObject): Json =>
  listIn(fabrics).map((cloth) => objectIn(cloth).id)[0] ?? plainCloth(0).id ?? null;

const omitted = (object: JsonObject, key: string): JsonObject => {
  if (!(key in object)) return object;
  const { [key]: _, ...rest } = object;
  return rest;
};

const objectIn = (value: Json | undefined): JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as JsonObject) : {};

const listIn = (value: Json | undefined): readonly Json[] => (Array.isArray(value) ? (value as readonly Json[]) : []);
