// One document in; its files, its pages and their pictures out. Planning and setting take the machine for about a second, and what was made
// last is kept, so that the next page of the same print, or its file, is had at once.
import { planQuilt, type QuiltPlan } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { purchaseChanges } from '#craft/shopping';
import type { IntegerSolver } from '#craft/strips';
import { type Recall, recalling } from '#ground/recall';
import { type Chapter, lessonsOf, patternChapters } from '#paper';
import { type PrintedFile, pictureFiles, picturesOf, type QuiltFile, quiltFiles, sizesPlanned } from '#paper/files';
import { makersNames, problemText } from '#paper/words';
import { fileMade, type PagePictures, type Press, type Printed, pngOf } from '#print';
import { type PagesTold, type PageWishes, type PrintWishes, type Refusal, refusalOf } from '#wire';

export interface PrintOrder {
  /** The document's text. */
  readonly text: string;
  /** Of the file that is wanted. */
  readonly name: string;
  readonly wishes: PrintWishes;
}

export interface Refused {
  readonly status: 400 | 404 | 422;
  readonly refusal: Refusal;
}

export interface Made {
  readonly content: Uint8Array | string | PagesTold;
  /** As http names it. */
  readonly type: string;
}

export interface PrintShop {
  /** A file as the command line writes it. */
  readonly file: (order: PrintOrder) => Promise<Made | Refused>;
  /** `PagesTold`. */
  readonly pages: (order: PrintOrder) => Promise<Made | Refused>;
  /** One page as PNG. */
  readonly page: (order: PrintOrder, wishes: PageWishes) => Promise<Made | Refused>;
}

const isRefused = (made: object): made is Refused => 'refusal' in made;

/** How much is kept, of documents, of prints, and of what was asked of one document: our own figures, some tens of megabytes. */
const most = { documents: 3, prints: 4, asked: 4 } as const;

/** A document planned, with what else was asked of it. */
interface OnTheTable {
  readonly plan: QuiltPlan;
  /** Of other sizes, and what would change the purchase. */
  readonly asked: Recall;
}

export const openPrintShop = ({
  press,
  solver,
}: {
  readonly press: Press;
  readonly solver: IntegerSolver;
}): PrintShop => {
  const documents = recalling(most.documents);
  const printed = recalling(most.prints);
  const pictured = recalling(most.prints);
  const search = { steps: defaultBudget.steps, solver };

  const onTheTable = (text: string): OnTheTable | Refused =>
    documents.recall(text, () => {
      const planned = planQuilt(text, { solver });
      return planned.ok ? { plan: planned.value, asked: recalling(most.asked) } : notSewn(planned, text);
    });

  const found = ({ text, name, wishes }: PrintOrder): QuiltFile | Refused => {
    const table = onTheTable(text);
    if (isRefused(table)) return table;
    const { plan } = table;
    const unknown = unknownIn(plan, wishes);
    if (unknown !== null) return unknown;
    const sizes = table.asked.recall(`sizes ${wishes.sizes.join()}`, () =>
      sizesPlanned({ plan, ids: wishes.sizes, solver, say: () => undefined }),
    );
    if (!sizes.ok) return notSewn(sizes, text);
    const files = [
      ...quiltFiles({
        plan,
        sizes: sizes.value,
        changes: () => table.asked.recall('changes', () => purchaseChanges({ plan, search })),
        chapters: wishes.chapters as readonly Chapter[] | null,
        handouts: lessonsOf(plan),
        runSheet: 'printed',
        hand: wishes.hand,
        search,
      }),
      ...picturesOf(plan)
        .slice(1)
        .flatMap((picture) => pictureFiles({ picture, look: 'colour' })),
    ];
    return files.find((file) => file.name === name) ?? noFile(name, files);
  };

  const print = (order: PrintOrder, file: PrintedFile): Promise<Printed> =>
    printed.recall(keyOf(order), () => press.pdf(file.pages(), order.wishes));
  const pictures = (order: PrintOrder, file: PrintedFile): Promise<PagePictures> =>
    pictured.recall(keyOf(order), () => press.pictures(file.pages(), order.wishes));

  const onPages = async (
    order: PrintOrder,
    make: (file: PrintedFile) => Promise<Made | Refused>,
  ): Promise<Made | Refused> => {
    const file = found(order);
    if (isRefused(file)) return file;
    return file.as === 'pdf' ? make(file) : noPages(order.name);
  };

  return {
    file: async (order) => {
      const file = found(order);
      if (isRefused(file)) return file;
      const { paper } = order.wishes;
      const content =
        file.as === 'pdf' ? (await print(order, file)).bytes : (await fileMade(file, { press, paper })).content;
      return { content, type: typeOf(file.name) };
    },
    pages: (order) =>
      onPages(order, async (file) => {
        const { bytes, missingSigns } = await print(order, file);
        const { pages, sizePt } = await pictures(order, file);
        const content = { pages: pages.length, sizePt, bytes: bytes.length, missingSigns };
        return { content, type: 'application/json' };
      }),
    page: (order, { page, widthPx }) =>
      onPages(order, async (file) => {
        const { pages } = await pictures(order, file);
        const svg = pages[page - 1];
        if (svg === undefined) return noPage(page, pages.length);
        return { content: await pngOf(svg, { widthPx, written: 'quick' }), type: 'image/png' };
      }),
  };
};

const types: Readonly<Record<string, string>> = {
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  png: 'image/png',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json; charset=utf-8',
};
const typeOf = (name: string): string => types[/[^.]*$/.exec(name)?.[0] ?? ''] ?? 'application/octet-stream';

const keyOf = ({ text, name, wishes }: PrintOrder): string => JSON.stringify([text, name, wishes]);

const notSewn = (
  planned: { readonly problems: readonly Parameters<typeof problemText>[0][]; readonly more: number },
  text: string,
): Refused => {
  const named = makersNames(objectIn(text));
  const problems = planned.problems.map((problem) => problemText(named(problem)));
  return { status: 422, refusal: { problems, more: planned.more } };
};

/** null where the text is not JSON: that is told as a problem of its own. */
const objectIn = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

const unknownIn = (plan: QuiltPlan, { chapters, sizes }: PrintWishes): Refused | null => {
  const wrong = [
    ...unknownOf({ key: 'chapters', noun: 'chapter', wished: chapters ?? [], known: patternChapters }),
    ...unknownOf({ key: 'sizes', noun: 'size', wished: sizes, known: plan.quilt.sizes.map(({ id }) => id) }),
  ];
  return wrong.length === 0 ? null : { status: 400, refusal: refusalOf(...wrong) };
};

const unknownOf = (of: {
  readonly key: string;
  readonly noun: string;
  readonly wished: readonly string[];
  readonly known: readonly string[];
}): Refusal['problems'] =>
  of.wished
    .filter((name) => !of.known.includes(name))
    .map((name) => ({
      where: of.key,
      what: `There is no ${of.noun} ${name}.`,
      mend: of.known.length === 0 ? `This quilt has no other ${of.noun}.` : `Take some of ${of.known.join(', ')}.`,
    }));

const noFile = (name: string, files: readonly QuiltFile[]): Refused => ({
  status: 404,
  refusal: refusalOf({
    where: name,
    what: 'This quilt has no such file.',
    mend: `It has ${files.map((file) => file.name).join(', ')}.`,
  }),
});

const noPages = (name: string): Refused => ({
  status: 404,
  refusal: refusalOf({ where: name, what: 'This file has no pages.', mend: 'Ask for those of a PDF.' }),
});

const noPage = (page: number, count: number): Refused => ({
  status: 404,
  refusal: refusalOf({ where: 'page', what: `There is no page ${page}.`, mend: `It has ${count} pages.` }),
});
