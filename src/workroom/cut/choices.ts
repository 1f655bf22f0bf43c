// What can be chosen about cutting: of the quilt and of one cloth, each an edit of the document. What a choice comes to is weighed elsewhere.
import type { QuiltDocument } from '#craft/design';
import { exactText, parseLength, parseMeasure } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { withTrueFractions } from '#paper/lengths';
import { amountText } from '#paper/words';
import type { Weighed } from '#workroom/compute';
import { borderWords } from '#workroom/room';

export interface Choice {
  readonly id: string;
  /** What is chosen, as a line that its price follows. */
  readonly words: string;
  /** As undo names it. */
  readonly what: string;
  /** Whether it needs no new layout. */
  readonly isQuick: boolean;
  readonly apply: (draft: QuiltDocument) => void;
}

type Cutting = NonNullable<QuiltDocument['cutting']>;

/** A key that says what is usual is left out. */
const setCutting = <K extends keyof Cutting>(draft: QuiltDocument, key: K, to: Cutting[K] | undefined): void => {
  draft.cutting ??= {};
  if (to === undefined) delete draft.cutting[key];
  else draft.cutting[key] = to;
  if (Object.keys(draft.cutting).length === 0) delete draft.cutting;
};

/** Common practice, no source; as much as a cloth is commonly said to shrink. */
const usualShrinkage = 0.05;

/** What shops commonly cut by. Common practice, no source. */
const steps: Readonly<Record<QuiltDocument['unit'], readonly string[]>> = {
  in: ['1/8 yd', '1/4 yd', '1/2 yd', '1 yd'],
  cm: ['0.05 m', '0.1 m', '0.25 m', '0.5 m'],
};
/** docs/document.md#whole-document */
const usualStep = { in: '1/8 yd', cm: '0.1 m' } as const;

export const quiltChoices = (document: QuiltDocument): readonly Choice[] => [
  ...allowanceChoices(document),
  ...stepChoices(document),
  layoutChoice(document),
  foldChoice(document),
];

const allowanceChoices = ({ cutting, unit }: QuiltDocument): readonly Choice[] => {
  const isSquared = cutting?.squaring === undefined || parseLength(cutting.squaring, { unit, sign: 'positive' }).ok;
  const shrinks = (cutting?.shrinkage ?? 0) > 0;
  return [
    {
      id: 'squaring',
      words: isSquared ? 'Cloth with straight ends' : 'Squaring up both ends',
      what: isSquared ? 'Cloth with straight ends' : 'Square up both ends',
      isQuick: true,
      apply: (draft) => setCutting(draft, 'squaring', isSquared ? '0' : undefined),
    },
    {
      id: 'shrinkage',
      words: shrinks ? 'Cloth that does not shrink' : '5 % for shrinkage',
      what: shrinks ? 'Cloth that does not shrink' : 'Reckon with shrinkage',
      isQuick: true,
      apply: (draft) => setCutting(draft, 'shrinkage', shrinks ? undefined : usualShrinkage),
    },
  ];
};

const stepChoices = ({ cutting, unit }: QuiltDocument): readonly Choice[] => {
  const now = inCentimetres(cutting?.step ?? usualStep[unit]);
  return steps[unit]
    .filter((step) => inCentimetres(step) !== now)
    .map((step): Choice => {
      const words = soldWords(step);
      return {
        id: `step ${step}`,
        words,
        what: words,
        isQuick: true,
        apply: (draft) => setCutting(draft, 'step', step),
      };
    });
};

/** Exact, as a text: steps are the same however they are written. */
const inCentimetres = (step: string | number): string | null => {
  const read = parseLength(step, { unit: 'cm', sign: 'positive' });
  return read.ok ? exactText(read.value) : null;
};

/** "Sold by the ⅛ yd", "Sold by the yard" */
const soldWords = (step: string): string => {
  const read = parseMeasure(step);
  if (!read.ok) throw new Error(`no step of a shop: ${step}`);
  const { amount, unit } = read.value;
  if (step === '1 yd') return 'Sold by the yard';
  return `Sold by the ${withTrueFractions(amountText(toNumber(amount), unit === 'm' ? 'm' : 'yd'))}`;
};

const layoutChoice = ({ cutting }: QuiltDocument): Choice => {
  const isEasy = cutting?.layout === 'easy';
  const words = isEasy ? 'The least cloth, whatever the work' : 'Layouts that are less work';
  return {
    id: 'layout',
    words,
    what: words,
    isQuick: false,
    apply: (draft) => setCutting(draft, 'layout', isEasy ? undefined : 'easy'),
  };
};

const foldChoice = ({ cutting }: QuiltDocument): Choice => {
  const isFolded = cutting?.fold === true;
  const words = isFolded ? 'Cloth cut opened' : 'Cloth cut on the fold';
  return {
    id: 'fold',
    words,
    what: words,
    isQuick: false,
    apply: (draft) => setCutting(draft, 'fold', isFolded ? undefined : true),
  };
};

type Fabric = QuiltDocument['fabrics'][number];

const setTurning = (fabric: Fabric, to: 'as-they-may' | 'none'): void => {
  if (to === 'none') fabric.turning = 'none';
  else delete fabric.turning;
};

/** Of one cloth, all that is no other width or way to buy it. */
export const clothChoices = (document: QuiltDocument, cloth: string): readonly Choice[] => [
  ...turningChoice(document, cloth),
  ...borderChoices(document, cloth),
];

const turningChoice = ({ fabrics }: QuiltDocument, cloth: string): readonly Choice[] => {
  const own = fabrics.find(({ id }) => id === cloth);
  if (own === undefined) return [];
  const isKept = own.turning === 'none';
  const words = isKept ? 'Pieces turned where that helps' : 'No piece turned';
  return [
    {
      id: `turning ${cloth}`,
      words,
      what: words,
      isQuick: false,
      apply: (draft) => {
        const fabric = draft.fabrics.find(({ id }) => id === cloth);
        if (fabric !== undefined) setTurning(fabric, isKept ? 'as-they-may' : 'none');
      },
    },
  ];
};

type Grain = 'lengthwise' | 'crosswise' | 'least';
const grains: Readonly<Record<Grain, string>> = {
  lengthwise: 'along the selvage',
  crosswise: 'across the cloth',
  least: 'whichever way takes least',
};

/** How the borders of one cloth lie on it. */
const borderChoices = (document: QuiltDocument, cloth: string): readonly Choice[] => {
  const borders = document.top.borders ?? [];
  return borders.flatMap((border, index) => {
    if (!('width' in border) || border.fabric !== cloth) return [];
    const now: Grain = border.grain ?? 'least';
    const name = borderWords(index + 1, borders.length);
    return (Object.keys(grains) as Grain[])
      .filter((grain) => grain !== now)
      .map(
        (grain): Choice => ({
          id: `border ${index} ${grain}`,
          words: `${name} cut ${grains[grain]}`,
          what: `${name} cut ${grains[grain]}`,
          isQuick: false,
          apply: (draft) => {
            const own = draft.top.borders?.[index];
            if (own === undefined || !('width' in own)) return;
            if (grain === 'least') delete own.grain;
            else own.grain = grain;
          },
        }),
      );
  });
};

type ClothWeighed = Extract<Weighed, { readonly kind: 'cloth' }>;

/** Takes a change of one cloth's purchase into the document. */
export const takeChange = (draft: QuiltDocument, { change }: ClothWeighed): void => {
  const own = draft.fabrics.find(({ id }) => id === change.fabric);
  if (own === undefined) return;
  switch (change.code) {
    case 'shopping/usable-width':
      own.usableWidth = String(change.width);
      break;
    case 'shopping/any-way':
      delete own.print;
      break;
    case 'shopping/in-fat-quarters':
      own.bought = 'fat-quarter';
      delete own.usableWidth;
      // the price of a yard is none of a sheet
      delete own.price;
      break;
    case 'shopping/by-length':
      delete own.bought;
      own.usableWidth = String(change.width);
      delete own.price;
      break;
    default:
      throw new Error(`no choice of one cloth: ${change.code}`);
  }
};
