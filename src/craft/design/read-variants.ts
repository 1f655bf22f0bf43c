// The same quilt in other cloths, and in other sizes: names of its colourways, and a whole top for each size.
import { parseColour } from '#craft/fabric';
import { fromDecimal, type Rational } from '#ground/exact';
import type { WrittenBlock, WrittenColourway, WrittenSize } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import { pointer } from './pointer.ts';
import type { BlockDesign, Colourway, Fabric, FinishDesign, SizeDesign } from './quilt.ts';
import { readFinish } from './read-finish.ts';
import { readPhoto } from './read-photo.ts';
import { readTop } from './read-top.ts';
import { type Reading, readingFor } from './reading.ts';

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
}

export const readColourways = (
  written: readonly WrittenColourway[] | undefined,
  { reading, fabrics }: Around,
): readonly Colourway[] => {
  const isNew = onceEach(reading, '/colourways');
  return (written ?? []).map((colourway, i) => {
    const path = `/colourways/${i}`;
    isNew(colourway.id, i);
    const cloths = Object.entries(colourway.fabrics).map(([id, cloth]): Colourway['fabrics'][number] => {
      if (!fabrics.has.has(id)) {
        const place = pointer(['colourways', i, 'fabrics', id]);
        reading.report({ code: 'design/unknown-fabric', path: place, found: id, known: fabrics.ids });
      }
      const colour = cloth.colour === undefined ? null : parseColour(cloth.colour);
      return {
        id,
        name: cloth.name ?? null,
        colour: colour?.ok === true ? colour.value : null,
        photo: readPhoto(cloth.photo, { path: `${pointer(['colourways', i, 'fabrics', id])}/photo`, reading }),
        price: cloth.price === undefined ? null : fromDecimal(cloth.price),
      };
    });
    return { id: colourway.id, title: colourway.title ?? colourway.id, fabrics: cloths, path };
  });
};

export const readSizes = (
  written: readonly WrittenSize[] | undefined,
  around: Around & {
    readonly cloths: readonly Fabric[];
    readonly written: readonly WrittenBlock[];
    readonly blocks: readonly BlockDesign[];
    readonly seam: Rational | null;
    /** Of the quilt as drawn: where a size has none of its own. */
    readonly finish: FinishDesign;
  },
): readonly SizeDesign[] => {
  const isNew = onceEach(around.reading, '/sizes');
  return (written ?? []).flatMap((size, i) => {
    const path = `/sizes/${i}`;
    isNew(size.id, i);
    const inside = { ...around, reading: readingBelow(around.reading, path) };
    const top = readTop(size.top, inside);
    const finish = size.finish === undefined ? around.finish : readFinish(size.finish, inside);
    return top === null ? [] : [{ id: size.id, title: size.title ?? size.id, top, finish, path }];
  });
};

/** Reports at their places inside a part of the document. */
const readingBelow = (reading: Reading, base: string): Reading =>
  readingFor(reading.unit, (problem) => reading.report({ ...problem, path: `${base}${problem.path}` }));

const onceEach = (reading: Reading, list: '/sizes' | '/colourways'): ((id: string, at: number) => void) => {
  const first = new Map<string, string>();
  return (id, at) => {
    const path = `${list}/${at}`;
    const earlier = first.get(id);
    if (earlier !== undefined) reading.report({ code: 'design/variant-twice', path: `${path}/id`, id, first: earlier });
    else first.set(id, path);
    reading.name(id, `${path}/id`);
  };
};
