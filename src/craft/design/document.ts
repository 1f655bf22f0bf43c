// The document as it is written, version 1: every key of the format, whether this edition plans it or not.
// Only the form is judged here; what names and lengths mean is read afterwards.

import { z } from 'zod';
import { bedNames } from '#craft/finishing';
import { limits } from '#craft/limits';
import type { Expected } from './expected.ts';
import { unitKinds, wayNames } from './methods.ts';

// no code made from text at run time: pages with a strict content policy read documents too
z.config({ jitless: true });

/** Error texts are only a channel: `schemaProblems` turns them into facts. */
const expects = (expected: Expected) => ({ error: `expects ${expected}` });

const closed = <S extends z.ZodRawShape>(shape: S) =>
  z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? JSON.stringify(Object.keys(shape)) : undefined),
  });

export const namePattern = /^[A-Za-z0-9][A-Za-z0-9 _.-]*$/;

const name = z.string().max(limits.idCharacters).regex(namePattern);
const title = z.string().max(limits.titleCharacters);
const length = z.union([z.string().meta({ maxLength: 40 }), z.number()], expects('length')).meta({
  id: 'length',
  description:
    'A length: "2 1/2", "2-1/2", "2.5", "2½" or a number in the document’s unit; a unit may follow: "6 cm", "1/2 yd".',
});
const place = z.union([z.string().meta({ maxLength: 40 }), z.number()], expects('place')).meta({
  id: 'place',
  description: 'A number on the block’s grid: 1, 1.5 or "4/3".',
});
const places = z.tuple([place, place], expects('corner'));
const size = z.union([length, z.tuple([length, length])], expects('size'));
const turn = z.literal([0, 90, 180, 270]);

const count = z.int().min(1).max(limits.sheetsAtHand);
const pair = z.tuple([length, length]);
const price = z.number().min(0).max(1_000_000);

const minutes = z.number().min(0).max(limits.minutes).optional();

const bought = z.union(
  [
    z.enum(['yardage', 'fat-quarter', 'fat-eighth']),
    closed({ sheet: pair }),
    closed({
      sheets: z
        .array(
          closed({
            size: z.union([z.enum(['fat-quarter', 'fat-eighth']), pair], expects('sheet-size')),
            name: title.optional(),
            count: count.optional(),
            price: price.optional(),
          }),
        )
        .min(1)
        .max(limits.sheetKinds),
    }),
    closed({
      lengths: z
        .array(
          z.union(
            [length, closed({ length, count: count.optional(), price: price.optional() })],
            expects('bought-length'),
          ),
        )
        .min(1)
        .max(limits.sheetKinds),
    }),
  ],
  expects('bought'),
);

const colour = z.string().regex(/^#(?:[0-9A-Fa-f]{3}|[0-9A-Fa-f]{6})$/);

/** Pictures that every browser shows, in the signs of base 64: nothing outside the document is fetched. */
const imagePattern = /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/;

const photo = closed({ image: z.string().max(limits.photoCharacters).regex(imagePattern), width: length }).meta({
  id: 'photo',
  description: 'A photograph of the cloth, and how much cloth it shows from its left edge to its right.',
});

const fabric = closed({
  id: name,
  name: title.optional(),
  colour,
  photo: photo.optional(),
  usableWidth: length.optional(),
  print: z.enum(['none', 'one-way', 'two-way']).optional(),
  printRuns: z.enum(['lengthwise', 'crosswise']).optional(),
  reversible: z.boolean().optional(),
  turning: z.enum(['as-they-may', 'none']).optional(),
  bought: bought.optional(),
  ends: z
    .array(closed({ size: pair, count: count.optional(), name: title.optional() }))
    .max(limits.sheetKinds)
    .optional(),
  repeat: closed({ along: length, across: length.optional(), motif: pair }).optional(),
  price: price.optional(),
});

const logCabin = closed({
  kind: z.literal('log-cabin'),
  centre: z.union([length, z.tuple([length, length]), closed({ block: name })], expects('centre')),
  centreTone: name.optional(),
  order: z
    .array(z.enum(['left', 'top', 'right', 'bottom']))
    .min(1)
    .max(limits.logs)
    .optional(),
  rounds: z
    .array(
      closed({
        width: z.union([length, z.array(length).min(1).max(limits.logs)], expects('widths')),
        tones: z.array(name).min(1).max(limits.logs),
      }),
    )
    .min(1)
    .max(limits.rounds),
});

const unitsRecipe = closed({
  kind: z.literal('units'),
  grid: places,
  units: z
    .array(
      closed({
        at: places,
        span: places.optional(),
        unit: z.enum([
          'square',
          'half-square',
          'quarter-square',
          'flying-geese',
          'square-in-square',
          'four-patch',
          'rails',
        ]),
        turn: turn.optional(),
        tones: z.array(name).min(1).max(limits.logs),
      }),
    )
    .min(1)
    .max(limits.patches),
});

const arc = closed({ to: places, centre: places, sweep: z.enum(['clockwise', 'counterclockwise']) });

const patches = closed({
  grid: z.tuple([place, place], expects('corner')),
  list: z
    .array(
      closed({
        points: z
          .array(z.union([places, arc], expects('corner')))
          // two arcs enclose a patch
          .min(2)
          .max(limits.corners),
        tone: name,
      }),
    )
    .min(1)
    .max(limits.patches),
});

const drawing = closed({
  grid: places,
  seams: z
    .array(
      z
        .array(z.union([places, arc], expects('corner')))
        .min(2)
        .max(limits.corners),
    )
    .max(limits.seams),
  tonesAt: z
    .array(closed({ at: places, tone: name }))
    .min(1)
    .max(limits.patches),
});

const tone = z.union([name, z.array(name).min(1)], expects('tone'));

const method = closed({
  unit: z.enum(unitKinds),
  size: size.optional(),
  fabrics: z.array(name).min(1).max(limits.methodFabrics).optional(),
  way: z.enum(wayNames),
  trimmed: z.boolean().optional(),
});
const methods = z.array(method).max(limits.methods);

const block = closed({
  id: name,
  title: title.optional(),
  size: size.optional(),
  recipe: z.discriminatedUnion('kind', [logCabin, unitsRecipe]).optional(),
  patches: patches.optional(),
  drawing: drawing.optional(),
  from: name.optional(),
  frame: z
    .array(closed({ width: length, fabric: name }))
    .max(limits.frames)
    .optional(),
  made: z.literal('elsewhere').optional(),
  piecing: z.literal('foundation').optional(),
  colourings: z.record(name, z.record(name, tone)).optional(),
  motifs: z.array(name).max(limits.tones).optional(),
  methods: methods.optional(),
});

const placedBlock = closed({
  block: name,
  turn: turn.optional(),
  mirror: z.boolean().optional(),
  colouring: name.optional(),
});

const cell = z.union([placedBlock, closed({ plain: name })], expects('cell'));
const rows = z.array(z.array(cell).max(limits.columns)).max(limits.rows);

type Section =
  | { down: Section[] }
  | { across: Section[] }
  | z.infer<typeof placedBlock>
  | { strip: string; width: string | number }
  | { fill: string };

const section: z.ZodType<Section> = z
  .lazy(() =>
    z.union(
      [
        closed({ down: z.array(section).min(1) }),
        closed({ across: z.array(section).min(1) }),
        placedBlock,
        closed({ strip: name, width: length }),
        closed({ fill: name }),
      ],
      expects('section'),
    ),
  )
  .meta({ id: 'section' });

const border = z.union(
  [
    closed({
      width: length,
      fabric: name,
      corners: z.enum(['butted', 'squares', 'mitred']).optional(),
      cornerFabric: name.optional(),
      grain: z.enum(['lengthwise', 'crosswise', 'least']).optional(),
    }),
    closed({ pieced: closed({ block: name, spacer: name.optional() }) }),
  ],
  expects('border'),
);

const top = closed({
  set: z.enum(['straight', 'on-point', 'sections']).optional(),
  rows: rows.optional(),
  between: rows.optional(),
  sections: section.optional(),
  arrangement: closed({
    kind: z.enum([
      'barn-raising',
      'straight-furrow',
      'sunshine-and-shadow',
      'streak-of-lightning',
      'fields-and-furrows',
      'pinwheel',
    ]),
    block: name,
    rows: z.int().min(1).max(limits.rows),
    columns: z.int().min(1).max(limits.columns),
    swap: z.boolean().optional(),
    darkCorner: z.enum(['upper-left', 'upper-right', 'lower-right', 'lower-left']).optional(),
    colouring: name.optional(),
  }).optional(),
  sashing: closed({
    width: z.union([length, closed({ across: length, down: length })], expects('sash-widths')),
    fabric: name,
    cornerstones: name.optional(),
    outer: z.boolean().optional(),
  }).optional(),
  settingFabric: name.optional(),
  float: length.optional(),
  borders: z.array(border).max(limits.borders).optional(),
});

const finish = closed({
  binding: closed({
    fabric: name,
    cut: length.optional(),
    grain: z.enum(['straight', 'bias']).optional(),
  }).optional(),
  backing: closed({
    fabric: name,
    overage: length.optional(),
    run: z.enum(['upright', 'level']).optional(),
  }).optional(),
  batting: closed({ overage: length.optional(), spacing: length.optional(), price: price.optional() }).optional(),
  sleeve: closed({ fabric: name }).optional(),
  label: closed({ fabric: name, size: size.optional() }).optional(),
  bed: closed({ size: z.enum(bedNames), drop: length.optional(), tuck: length.optional() }).optional(),
});

const colourway = closed({
  id: name,
  title: title.optional(),
  fabrics: z.record(
    z.string(),
    closed({
      name: title.optional(),
      colour: colour.optional(),
      photo: photo.optional(),
      price: price.optional(),
    }),
  ),
});

const otherSize = closed({ id: name, title: title.optional(), top, finish: finish.optional() });

export const quiltDocument = closed({
  format: z.literal('seamstead-quilt'),
  version: z.literal(1),
  title: title.optional(),
  designer: title.optional(),
  notes: z.string().max(limits.notesCharacters).optional(),
  edition: title.optional(),
  date: title.optional(),
  corrections: z
    .array(closed({ edition: title, text: z.string().max(limits.notesCharacters) }))
    .max(limits.corrections)
    .optional(),
  unit: z.enum(['in', 'cm']),
  seam: length.optional(),
  ruler: length.optional(),
  cutting: closed({
    squaring: length.optional(),
    shrinkage: z.number().min(0).max(1).optional(),
    step: length.optional(),
    layout: z.enum(['least', 'easy']).optional(),
    fold: z.boolean().optional(),
  }).optional(),
  currency: z.string().max(limits.idCharacters).optional(),
  minutes: closed({
    cut: minutes,
    fold: minutes,
    lay: minutes,
    chain: minutes,
    seam: minutes,
    inch: minutes,
    press: minutes,
    trim: minutes,
    match: minutes,
    curve: minutes,
    draw: minutes,
    part: minutes,
    baste: minutes,
    quilt: minutes,
    hand: minutes,
    begin: minutes,
    show: minutes,
    showInch: minutes,
  }).optional(),
  draw: z.int().min(1).max(limits.draws).optional(),
  fabrics: z.array(fabric).min(1).max(limits.fabrics),
  blocks: z.array(block).min(1).max(limits.blocks),
  top,
  finish: finish.optional(),
  colourways: z.array(colourway).max(limits.colourways).optional(),
  sizes: z.array(otherSize).max(limits.sizes).optional(),
  methods: methods.optional(),
  extras: z.unknown().optional(),
});

export type QuiltDocument = z.infer<typeof quiltDocument>;
export type WrittenFabric = z.infer<typeof fabric>;
export type WrittenBlock = z.infer<typeof block>;
export type WrittenLogCabin = z.infer<typeof logCabin>;
export type WrittenPatches = z.infer<typeof patches>;
export type WrittenUnits = z.infer<typeof unitsRecipe>;
export type WrittenDrawing = z.infer<typeof drawing>;
export type WrittenPlace = z.infer<typeof places>;
export type WrittenRun = WrittenDrawing['seams'][number];
export type WrittenPhoto = z.infer<typeof photo>;
export type WrittenColourway = z.infer<typeof colourway>;
export type WrittenSize = z.infer<typeof otherSize>;
export type WrittenMethod = z.infer<typeof method>;
export type WrittenTop = z.infer<typeof top>;
export type WrittenFinish = z.infer<typeof finish>;
export type WrittenLength = z.infer<typeof length>;
