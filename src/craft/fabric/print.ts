// When may two pieces of a cloth stand for each other? A print that stands upright forbids turning, a cloth without a
// right side allows a mirror image.

/** One-way: it has a top. Two-way: upside down it looks the same. */
export type Print = 'none' | 'one-way' | 'two-way';

/** Which way of the cloth the upright of its print runs: along the selvages, or from selvage to selvage. */
export type PrintRuns = 'lengthwise' | 'crosswise';

/** How one piece may lie and still be another of the same outline. */
export interface Likeness {
  readonly turns: 'any' | 'half' | 'none';
  readonly flips: boolean;
}

export interface PrintedCloth {
  readonly print: Print;
  readonly reversible: boolean;
}

export const likenessOf = ({ print, reversible }: PrintedCloth): Likeness => ({
  turns: ({ none: 'any', 'two-way': 'half', 'one-way': 'none' } as const)[print],
  flips: reversible,
});

/** What several cloths have in common, drawn at random from a list: the strictest print, and reversible when all are. */
export const strictestOf = (cloths: readonly PrintedCloth[]): PrintedCloth => ({
  print: (['one-way', 'two-way'] as const).find((print) => cloths.some((cloth) => cloth.print === print)) ?? 'none',
  reversible: cloths.every((cloth) => cloth.reversible),
});
