// Scenes of a quilt and of a block, with the words for each thing in them.
import { roleNouns } from '#paper/words';
import type { BlockPicture, QuiltPicture } from '#workroom/compute';
import { spotWords } from '#workroom/room';
import { type Matrix, middleOf, type PlacedSprite, type Scene, type Thing } from './scene.ts';

/** Says a size in the maker's unit. */
export type SizeWords = (size: readonly [number, number]) => string;

export const sceneOfQuilt = (picture: QuiltPicture, sizeWords: SizeWords): Scene => {
  const { entries, placed, strips, cloths } = picture;
  const names = new Map(cloths.map(({ id, name }) => [id, name]));
  const sprites = placed.map((one): PlacedSprite => {
    const entry = entries[one.entry] as BlockPicture;
    return {
      sprite: one.entry,
      matrix: matrixFor({ ...one, own: entry.size }),
      box: [one.at[0], one.at[1], one.size[0], one.size[1]],
      fabrics: one.fabrics,
    };
  });
  return {
    width: picture.width,
    height: picture.height,
    sprites: entries.map(({ size, patches }) => ({ size, shapes: patches })),
    placed: sprites,
    loose: strips,
    colours: new Map(cloths.map(({ id, colour }) => [id, colour])),
    things: [
      ...strips.map(
        ({ points, fabric, role, path, label, cut }, index): Thing => ({
          key: stripKey(index),
          name: [
            `Piece ${label}`,
            roleNouns[role],
            names.get(fabric) ?? fabric,
            `${sizeWords(boxSize(points))} finished`,
            `cut ${sizeWords(cut)}`,
            spotWords(path),
          ]
            .filter((words) => words !== '')
            .join(', '),
          outline: points,
          path,
          inside: null,
        }),
      ),
      ...placed.map((one, place): Thing => {
        const entry = entries[one.entry] as BlockPicture;
        const { matrix } = sprites[place] as PlacedSprite;
        return {
          key: placeKey(place),
          name: [entryWords(entry), spotWords(one.path) || 'in a border', turnWords(one.turn)]
            .filter((words) => words !== '')
            .join(', '),
          outline: under(matrix, [0, 0, entry.size[0], 0, entry.size[0], entry.size[1], 0, entry.size[1]]),
          path: one.path,
          inside: () => patchThings({ entry, matrix, fabrics: one.fabrics, names, sizeWords }),
        };
      }),
    ],
    shapes: strips.length + placed.reduce((all, { entry }) => all + (entries[entry]?.patches.length ?? 0), 0),
  };
};

export const placeKey = (place: number): string => `block ${place}`;
/** @returns null where the key is of no placed block */
export const placeOfKey = (key: string | null): number | null => {
  const found = /^block (\d+)$/.exec(key ?? '');
  return found ? Number(found[1]) : null;
};

export const patchKey = (patch: number): string => `patch ${patch}`;
/** @returns NaN where the key is of no patch */
export const patchOfKey = (key: string): number => Number(/^patch (\d+)$/.exec(key)?.[1] ?? Number.NaN);

export const stripKey = (strip: number): string => `strip ${strip}`;
/** @returns null where the key is of no strip */
export const stripOfKey = (key: string | null): number | null => {
  const found = /^strip (\d+)$/.exec(key ?? '');
  return found ? Number(found[1]) : null;
};

export const sceneOfBlock = (of: {
  readonly picture: BlockPicture;
  readonly cloths: QuiltPicture['cloths'];
  readonly sizeWords: SizeWords;
}): Scene => {
  const { picture, cloths, sizeWords } = of;
  const [width, height] = picture.size;
  const names = new Map(cloths.map(({ id, name }) => [id, name]));
  const matrix: Matrix = [1, 0, 0, 1, 0, 0];
  return {
    width,
    height,
    sprites: [{ size: picture.size, shapes: picture.patches }],
    placed: [{ sprite: 0, matrix, box: [0, 0, width, height], fabrics: null }],
    loose: [],
    colours: new Map(cloths.map(({ id, colour }) => [id, colour])),
    things: patchThings({ entry: picture, matrix, fabrics: null, names, sizeWords }),
    shapes: picture.patches.length,
  };
};

const patchThings = (of: {
  readonly entry: BlockPicture;
  readonly matrix: Matrix;
  readonly fabrics: readonly string[] | null;
  readonly names: ReadonlyMap<string, string>;
  readonly sizeWords: SizeWords;
}): readonly Thing[] =>
  of.entry.patches.map(({ points, fabric, label, cut }, index) => {
    const cloth = of.fabrics?.[index] ?? fabric;
    return {
      key: patchKey(index),
      name: `Piece ${label}, ${of.names.get(cloth) ?? cloth}, cut ${of.sizeWords(cut)}`,
      outline: under(of.matrix, points),
      inside: null,
    };
  });

const entryWords = ({ title, colouring, mirror }: BlockPicture): string =>
  [title, ...(colouring === 'default' ? [] : [`in ${colouring}`]), ...(mirror ? ['mirrored'] : [])].join(', ');

const turnWords = (turn: number): string => (turn === 0 ? '' : `turned ${turn}°`);

const boxSize = (points: readonly number[]): readonly [number, number] => {
  const [x, y] = [points.filter((_, i) => i % 2 === 0), points.filter((_, i) => i % 2 === 1)];
  return [Math.max(...x) - Math.min(...x), Math.max(...y) - Math.min(...y)];
};

/** Turned clockwise about its own middle, then laid with the box round it at `at`. */
const matrixFor = (of: {
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
  readonly own: readonly [number, number];
  readonly turn: number;
}): Matrix => {
  const [cos, sin] = cosSin(of.turn);
  const [mx, my] = [of.at[0] + of.size[0] / 2, of.at[1] + of.size[1] / 2];
  const [hx, hy] = [of.own[0] / 2, of.own[1] / 2];
  return [cos, sin, -sin, cos, mx - cos * hx + sin * hy, my - sin * hx - cos * hy];
};

/** Quarter turns are exact. */
const cosSin = (degrees: number): readonly [number, number] => {
  const quarters = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  const radians = (degrees * Math.PI) / 180;
  return quarters[degrees / 90] ?? [Math.cos(radians), Math.sin(radians)];
};

const under = ([a, b, c, d, e, f]: Matrix, points: readonly number[]): readonly number[] =>
  points.map((value, i) =>
    i % 2 === 0 ? a * value + c * (points[i + 1] as number) + e : b * (points[i - 1] as number) + d * value + f,
  );

/** Things in reading order: by their middles from the top down, then from left to right. */
export const inReadingOrder = (things: readonly Thing[], height: number): readonly Thing[] => {
  const placed = things.map((thing) => {
    const [x, y] = middleOf(thing.outline);
    return { thing, x, line: Math.round((y / Math.max(height, 1e-9)) * 400) };
  });
  return placed.sort((a, b) => a.line - b.line || a.x - b.x).map(({ thing }) => thing);
};
