// The printed pattern as text: Typst sources, pictures and facts, ready for any printer that takes them.
// Paper size is the printer's choice: the pages hold for Letter and for A4.
import type { QuiltPlan } from '#craft';
import type { PurchaseChange } from '#craft/shopping';
import { clothSignsFor } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { patternSources } from '#paper/typst';
import { withBreaks } from './breakable.ts';
import { type Chapter, patternChapters, usualFor } from './chapters.ts';
import type { PatternFacts } from './facts.ts';
import { factsOf } from './facts.ts';
import { type SizedPlan, withAllCloths } from './sized.ts';

export interface PatternPages {
  /** Typst files by path; "/main.typ" is the one to compile. */
  readonly sources: Readonly<Record<string, string>>;
  /** SVG text by name; the sources look for them at "/pictures/NAME.svg". */
  readonly pictures: ReadonlyMap<string, string>;
  /** What the sources read as "/facts.json": plain JSON values, user text included. */
  readonly facts: PatternFacts;
}

export interface PatternWishes {
  /** Printed in the order of the job, however they are listed; the usual ones when left out. */
  readonly chapters?: readonly Chapter[];
  /** Other sizes, planned, to be printed in the same pattern with shared steps. */
  readonly sizes?: readonly SizedPlan[];
  /** What would move the purchases (`purchaseChanges`), for the page of cloth to buy. */
  readonly changes?: readonly PurchaseChange[];
  /** Which hand cuts; the right one when left out. */
  readonly hand?: Hand;
}

export const patternPages = (plan: QuiltPlan, wishes: PatternWishes = {}): PatternPages => {
  const wanted = wishes.chapters ?? usualFor({ foundations: plan.blocks.some((block) => block.foundations !== null) });
  const sizes = wishes.sizes ?? [];
  return pagesOf({
    plan,
    sizes,
    signs: clothSignsFor(withAllCloths(plan, sizes)),
    album: new Map(),
    chapters: patternChapters.filter((chapter) => wanted.includes(chapter)),
    changes: wishes.changes ?? [],
    hand: wishes.hand ?? 'right',
    handout: null,
  });
};

/** @param of album: pictures drawn already, such as those of a handout's head */
export const pagesOf = (of: Parameters<typeof factsOf>[0]): PatternPages => ({
  sources: patternSources,
  pictures: of.album,
  facts: withBreaks(factsOf(of)),
});
