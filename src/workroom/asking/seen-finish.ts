// How the quilt is finished, part by part, in the words and pictures of its printed pages.
import type { QuiltPlan } from '#craft';
import { type Rational, toNumber } from '#ground/exact';
import { clothSignsFor } from '#paper/cloth';
import { checkLength } from '#paper/lengths';
import {
  type Album,
  borderParts,
  cautions,
  finishTold,
  type FinishPart as PagePart,
  type FinishTopic as PageTopic,
  totalLines,
} from '#paper/pages';

export type FinishTopic = 'borders' | PageTopic;

export interface FinishPart {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly picture: FinishPicture | null;
  readonly table: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] } | null;
}

export interface FinishPicture {
  /** Of a document of its own. */
  readonly svg: string;
  readonly widthPt: number;
}

export interface FinishSeen {
  readonly topics: readonly { readonly topic: FinishTopic; readonly parts: readonly FinishPart[] }[];
  /** What all cloth costs, as it is bought; empty where nothing has a price. */
  readonly total: readonly string[];
  readonly cautions: readonly FinishPart[];
  readonly figures: FinishFigures;
}

/** In the document's unit, also what the document leaves to us. Null where it has no such part. */
export interface FinishFigures {
  /** Finished. */
  readonly top: Size;
  readonly backing: {
    readonly size: Size;
    readonly overage: number;
    readonly panels: number;
    readonly run: 'upright' | 'level';
    /** A print that stands upright decides it. */
    readonly isRunFree: boolean;
  } | null;
  readonly batting: {
    readonly size: Size;
    readonly overage: number;
    readonly spacing: number;
    readonly cost: number | null;
  } | null;
  readonly binding: {
    /** As the pages say it, in the document's unit. */
    readonly length: string;
    readonly cut: number;
    readonly grain: 'straight' | 'bias';
    readonly joins: number;
  } | null;
  readonly sleeve: { readonly size: Size } | null;
  readonly label: { readonly size: Size } | null;
  readonly bed: {
    readonly wanted: Size;
    readonly drop: number;
    readonly tuck: number;
    readonly isLarge: boolean;
  } | null;
}

type Size = readonly [width: number, height: number];

export const seeFinish = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): FinishSeen => {
  const signs = clothSignsFor(plan);
  const album: Album = new Map();
  const of = { plan, signs, album };
  const borders = borderParts(of).map(
    ({ heading, lead, list, picture, table }): FinishPart => ({
      heading,
      lines: [...lead, ...list],
      picture: picture && pictureIn(album, picture),
      table,
    }),
  );
  return {
    topics: [
      { topic: 'borders', parts: borders },
      ...finishTold(of).map(({ topic, parts }) => ({ topic, parts: parts.map((part) => partOf(part, album)) })),
    ],
    total: totalLines(plan, signs),
    cautions: cautions.filter(({ heading }) => minded.has(heading)).map((part) => partOf(part, album)),
    figures: figuresOf(plan),
  };
};

const figuresOf = ({ quilt, top, finish }: QuiltPlan): FinishFigures => {
  const { backing, batting, binding, sleeve, label, bed } = finish;
  const own = quilt.finish;
  const number = (value: Rational | undefined): number => (value === undefined ? 0 : toNumber(value));
  const cloth = quilt.fabrics.find(({ id }) => id === backing?.fabric);
  return {
    top: [top.set.width, top.set.height],
    backing: backing && {
      size: [backing.width, backing.height],
      overage: number(own.backing?.overage),
      panels: backing.panels,
      run: backing.run,
      isRunFree: cloth?.print === 'none',
    },
    batting: batting && {
      size: [batting.width, batting.height],
      overage: number(own.batting?.overage),
      spacing: number(own.batting?.spacing),
      cost: batting.cost ?? null,
    },
    binding: binding && {
      length: checkLength(binding.length, quilt),
      cut: binding.cut,
      grain: binding.grain,
      joins: binding.joins,
    },
    sleeve: sleeve && { size: sleeve.finished },
    label: label && { size: label.finished },
    bed: bed && {
      wanted: bed.wanted,
      drop: number(own.bed?.drop),
      tuck: number(own.bed?.tuck),
      isLarge: Math.max(...bed.lacks) < 1e-9,
    },
  };
};

/** What finishing asks to mind; the rest is of cutting and pressing. */
const minded: ReadonlySet<string> = new Set(['Needles and pins', 'Sprays and dyes', 'Babies and children']);

const partOf = ({ heading, lines, picture }: PagePart, album: Album): FinishPart => ({
  heading,
  lines,
  picture: picture === undefined ? null : pictureIn(album, picture),
  table: null,
});

const pictureIn = (album: Album, { name, widthPt }: NonNullable<PagePart['picture']>): FinishPicture => {
  const svg = album.get(name);
  if (svg === undefined) throw new Error(`the album holds no picture ${name}`);
  return { svg, widthPt };
};
