// One document in, its pattern out: as PDF or as pictures of the pages. Planning and setting take the machine for about a second; requests wait
// for each other.
import { planQuilt, type QuiltPlan } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { purchaseChanges } from '#craft/shopping';
import type { IntegerSolver } from '#craft/strips';
import { patternPages } from '#paper';
import { makersNames, problemText } from '#paper/words';
import type { Press } from '#print';
import type { PagePictures, PrintPaper, Refusal } from '#wire';

export interface PrintShop {
  readonly press: Press;
  readonly solver: IntegerSolver;
}

export interface PrintOrder {
  /** The document's text. */
  readonly text: string;
  readonly paper: PrintPaper;
}

export const printPattern = async (shop: PrintShop, { text, paper }: PrintOrder): Promise<Uint8Array | Refusal> => {
  const planned = planFor(shop, text);
  return 'problems' in planned ? planned : (await shop.press.pdf(pagesFor(shop, planned), { paper })).bytes;
};

export const picturePages = async (shop: PrintShop, { text, paper }: PrintOrder): Promise<PagePictures | Refusal> => {
  const planned = planFor(shop, text);
  return 'problems' in planned ? planned : shop.press.pictures(pagesFor(shop, planned), { paper });
};

const planFor = ({ solver }: PrintShop, text: string): QuiltPlan | Refusal => {
  const planned = planQuilt(text, { solver });
  if (planned.ok) return planned.value;
  const named = makersNames(objectIn(text));
  return { problems: planned.problems.map((problem) => problemText(named(problem))), more: planned.more };
};

/** null where the text is not JSON: that is told as a problem of its own. */
const objectIn = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

const pagesFor = ({ solver }: PrintShop, plan: QuiltPlan) =>
  patternPages(plan, { changes: purchaseChanges({ plan, search: { steps: defaultBudget.steps, solver } }) });
