// The only road to PDF: Typst, kept behind this one module. Everything is handed over in memory; the
// compiler's own folder does not exist, so that a page can read no file of the machine.
import { NodeCompiler, type NodeError } from '@myriaddreamin/typst-ts-node-compiler';
import type { PatternPages } from '#paper';
import type { PressFault } from './failure.ts';
import { PressFailure } from './failure.ts';
import { fontFiles, glyphsOf, openFont } from './fonts.ts';
import { openOutliner } from './outlined.ts';
import { type PagePictures, pagesIn } from './page-pictures.ts';
import { allDrawable } from './signs.ts';

export type Paper = 'letter' | 'a4';

export interface Printed {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Signs in the maker's words that no font of ours draws; an empty square stands in their place. */
  readonly missingSigns: readonly string[];
}

export interface Press {
  /** Tagged PDF (PDF/UA-1); the same pages give the same bytes. Throws PressFailure. */
  readonly pdf: (pages: PatternPages, options: { readonly paper: Paper }) => Promise<Printed>;
  /** The same pages to look at on a screen, each by itself. Throws PressFailure. */
  readonly pictures: (pages: PatternPages, options: { readonly paper: Paper }) => Promise<PagePictures>;
  readonly close: () => void;
}

const root = '/seamstead-pages';
const typstPaper: Record<Paper, string> = { letter: 'us-letter', a4: 'a4' };

export const openPress = (): Press => {
  const files = fontFiles();
  const compiler = NodeCompiler.create({ workspace: root, fontArgs: [{ fontPaths: [...files] }] });
  const covered = new Set(files.flatMap((file) => [...glyphsOf(openFont(file)).keys()]));
  const outlined = openOutliner();
  const outlinedAll = (pictures: PatternPages['pictures']) =>
    new Map([...pictures].map(([name, svg]) => [name, outlined(svg)]));
  let isOpen = true;
  const run = async <T>(pages: PatternPages, paper: Paper, take: (compiled: Compiled) => T): Promise<T> => {
    if (!isOpen) throw new Error('the press is closed');
    try {
      return take(compiled(compiler, { pages, paper, covered }));
    } finally {
      compiler.resetShadow();
      // both are needed, or memory grows with every document: native handles are freed only when the
      // event loop turns
      compiler.evictCache(5);
      await new Promise((resolve) => setImmediate(resolve));
    }
  };
  return {
    pdf: (pages, { paper }) =>
      run(pages, paper, ({ document, missing }) => ({
        bytes: written(compiler, document),
        pages: document.numOfPages,
        missingSigns: missing,
      })),
    // a picture within a picture finds no letters where it is shown
    pictures: (pages, { paper }) =>
      run({ ...pages, pictures: outlinedAll(pages.pictures) }, paper, ({ document }) =>
        pagesIn(compiler.plainSvg(document)),
      ),
    close: () => {
      isOpen = false;
      compiler.evictCache(0);
    },
  };
};

type TypstDocument = Parameters<NodeCompiler['pdf']>[0];

interface Compiled {
  readonly document: Extract<TypstDocument, { readonly numOfPages: number }>;
  readonly missing: readonly string[];
}

const compiled = (
  compiler: NodeCompiler,
  of: { readonly pages: PatternPages; readonly paper: Paper; readonly covered: ReadonlySet<number> },
): Compiled => {
  const { pages, paper } = of;
  const facts = allDrawable(pages.facts, of.covered);
  const file = (path: string, text: string) => compiler.mapShadow(`${root}${path}`, Buffer.from(text));
  for (const [path, text] of Object.entries(pages.sources)) file(path, text);
  for (const [name, svg] of pages.pictures) file(`/pictures/${name}.svg`, svg);
  file('/facts.json', JSON.stringify(facts.value));
  const run = compiler.compile({ mainFilePath: `${root}/main.typ`, inputs: { paper: typstPaper[paper] } });
  const document = run.result;
  if (document === null || run.hasError()) throw new PressFailure(faultsIn(compiler, run.takeError()));
  // a warning is an unknown font or a thing that does not fit: as good as a fault
  const warnings = faultsIn(compiler, run.takeWarnings());
  if (warnings.length > 0) throw new PressFailure(warnings);
  return { document, missing: facts.missing };
};

const written = (compiler: NodeCompiler, document: TypstDocument): Uint8Array => {
  try {
    return compiler.pdf(document, { pdfStandard: 'ua-1', creationTimestamp: 0 });
  } catch (error) {
    // the writer's own checks (glyphs, alternative texts) come as a thrown text without a place
    throw new PressFailure([
      { message: error instanceof Error ? error.message : String(error), file: '/main.typ', line: null, column: null },
    ]);
  }
};

interface Diagnostic {
  readonly message: string;
  readonly path: string;
  readonly range: null | { readonly start: { readonly line: number; readonly character: number } };
}

const faultsIn = (compiler: NodeCompiler, error: NodeError | null): readonly PressFault[] => {
  if (error === null) return [];
  return (compiler.fetchDiagnostics(error) as Diagnostic[]).map(({ message, path, range }) => ({
    message,
    file: path.replace(root, ''),
    line: range === null ? null : range.start.line + 1,
    column: range === null ? null : range.start.character + 1,
  }));
};
