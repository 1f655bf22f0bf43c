// Print: the pages of the pattern, a handout or the run sheets as they will lie on paper, and files to take along.
import { useCallback, useMemo, useState } from 'react';
import { patternChapters, usualFor } from '#paper/pages';
import { missingSignsText } from '#paper/words';
import { type PrintHand, type PrintPaper, type PrintWishes, printHands, printPapers, printWishesText } from '#wire';
import { type Command, useCommands } from '#workroom/commands';
import { withoutPhotos } from '#workroom/compute';
import { ChoiceKeys } from '#workroom/fields';
import {
  fileName,
  go,
  quiltAddress,
  useKeptValue,
  useLook,
  usePreferences,
  useQuilt,
  useRoom,
  type Within,
} from '#workroom/room';
import { ChapterChoice } from './chapter-choice.tsx';
import { FilesAlong } from './files-along.tsx';
import { Preview } from './preview.tsx';
import type { Order } from './shop.ts';
import { fileOf, subjectIn, subjectsOf, withinOf } from './subject.ts';
import { usePrint } from './use-print.ts';
import { useSaving } from './use-saving.ts';
import { openLiked, paperFor } from './wishes.ts';

const all = {};
const kept = openLiked();

export const PrintView = ({ within }: { readonly within: Within }) => {
  const { id, document, editing, problems } = useQuilt();
  const { preferences } = useRoom();
  const preferred = usePreferences(preferences);
  const paper = paperFor(preferred.paper, document.unit);
  // a print may be for somebody else than who cuts here
  const [takenHand, takeHand] = useState<PrintHand | null>(null);
  const hand = takenHand ?? preferred.hand;
  const liked = useKeptValue(kept);
  const prints = useLook('prints', all);
  const subject = useMemo(() => subjectIn(within), [within]);
  const text = useMemo(() => JSON.stringify(withoutPhotos(editing.document)), [editing.document]);
  const known = prints?.sizes;
  const sizes = (liked.sizes[id] ?? []).filter((size) => known === undefined || known.some((one) => one.id === size));
  const wishes = useSameWishes({ paper, hand, chapters: liked.chapters, sizes });
  const isSewn = problems.length === 0;
  const name = fileOf(subject);
  const order = useMemo((): Order | null => (isSewn ? { text, name, wishes } : null), [isSewn, text, name, wishes]);
  const printing = usePrint(order);
  const saving = useSaving({ text, wishes, base: fileName(document.title) });
  const { save, open } = saving;
  const [at, setAt] = useState({ name, page: 1 });
  const pages = printing.print?.told.pages ?? 0;
  // another print begins at its first page; one that became shorter ends earlier
  const page = at.name === name ? Math.min(at.page, Math.max(1, pages)) : 1;
  const turnTo = useCallback((to: number) => setAt({ name, page: to }), [name]);

  const takePaper = useCallback((to: PrintPaper) => preferences.prefer({ paper: to }), [preferences]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'print', part: 'Print', words: 'Save the PDF', keys: ['Mod+P'], isOff: !isSewn, run: () => save(name) },
        { id: 'print open', part: 'Print', words: 'Open the PDF to print it', isOff: !isSewn, run: () => open(name) },
        ...subjectsOf(prints).map(
          ({ within: to, words }): Command => ({
            id: `print ${to.join(' ')}`,
            part: 'Print',
            words: `See the pages: ${words}`,
            run: () => go(quiltAddress(id, 'print', ...to)),
          }),
        ),
        ...printPapers.map(
          (to): Command => ({
            id: `paper ${to}`,
            part: 'Print',
            words: `Print on ${paperWords[to]}`,
            run: () => takePaper(to),
          }),
        ),
        ...printHands.map(
          (to): Command => ({
            id: `print hand ${to}`,
            part: 'Print',
            words: `Print for ${handWords[to]}`,
            run: () => takeHand(to),
          }),
        ),
        {
          id: 'chapters usual',
          part: 'Print',
          words: 'Print the usual chapters',
          run: () => kept.put({ ...kept.now(), chapters: null }),
        },
        {
          id: 'chapters all',
          part: 'Print',
          words: 'Print every chapter',
          run: () => kept.put({ ...kept.now(), chapters: patternChapters }),
        },
      ],
      [id, isSewn, name, prints, save, open, takePaper],
    ),
  );

  return (
    <div className="view-parts">
      <Preview
        printing={printing}
        page={page}
        onPage={turnTo}
        isSewn={isSewn}
        onSave={() => save(name)}
        onOpen={() => open(name)}
        saving={saving}
      />
      <div className="side print-side">
        <section aria-label="What is printed">
          <h2>On paper</h2>
          <label className="field">
            <span>Print</span>
            <select
              value={withinOf(subject).join('/')}
              onChange={(event) =>
                go(quiltAddress(id, 'print', ...event.target.value.split('/').filter((part) => part !== '')))
              }
            >
              {subjectsOf(prints, subject).map(({ within: to, words }) => (
                <option key={to.join('/')} value={to.join('/')}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          <ChoiceKeys
            label="Paper"
            isLabelSeen
            choices={printPapers.map((value) => ({ value, words: paperWords[value] }))}
            value={paper}
            onChoose={takePaper}
          />
          <ChoiceKeys
            label="Drawn for"
            isLabelSeen
            choices={printHands.map((value) => ({ value, words: handWords[value] }))}
            value={hand}
            onChoose={takeHand}
          />
          {printing.print !== null && <PrintFacts {...printing.print} />}
        </section>
        {subject.kind === 'pattern' && (
          <ChapterChoice
            chosen={liked.chapters}
            usual={usualFor({ foundations: document.blocks.some(({ piecing }) => piecing === 'foundation') })}
            onChoose={(chapters) => kept.put({ ...kept.now(), chapters })}
          />
        )}
        {subject.kind === 'pattern' && prints !== null && prints.sizes.length > 0 && (
          <SizeChoice
            sizes={prints.sizes}
            chosen={sizes}
            onChoose={(next) => kept.put({ ...kept.now(), sizes: { ...kept.now().sizes, [id]: next } })}
          />
        )}
        <FilesAlong prints={prints} isSewn={isSewn} onSave={save} />
      </div>
    </div>
  );
};

/** The same value for as long as the same is wished. */
const useSameWishes = (wishes: PrintWishes): PrintWishes => {
  const text = printWishesText(wishes);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text says all that is in them
  return useMemo(() => wishes, [text]);
};

const handWords: Readonly<Record<PrintHand, string>> = { right: 'the right hand', left: 'the left hand' };
const paperWords: Readonly<Record<PrintPaper, string>> = { letter: 'US letter', a4: 'A4' };

const PrintFacts = ({ order, told, tookMs }: NonNullable<ReturnType<typeof usePrint>['print']>) => (
  <>
    <p className="print-facts">
      {told.pages === 1 ? 'One page' : `${told.pages} pages`} on {paperWords[order.wishes.paper]},{' '}
      {bytesText(told.bytes)}. Set in {secondsText(tookMs)}.
    </p>
    {told.missingSigns.length > 0 && <p className="quiet">{missingSignsText(told.missingSigns)}</p>}
  </>
);

const bytesText = (bytes: number): string =>
  bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

const secondsText = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;

const SizeChoice = (of: {
  readonly sizes: readonly { readonly id: string; readonly title: string }[];
  readonly chosen: readonly string[];
  readonly onChoose: (ids: readonly string[]) => void;
}) => (
  <section aria-labelledby="print-sizes">
    <h2 id="print-sizes">Other sizes in the same pattern</h2>
    <div>
      {of.sizes.map(({ id, title }) => (
        <label key={id} className="check">
          <input
            type="checkbox"
            checked={of.chosen.includes(id)}
            onChange={(event) =>
              of.onChoose(
                of.sizes
                  .map((size) => size.id)
                  .filter((one) => (one === id ? event.target.checked : of.chosen.includes(one))),
              )
            }
          />
          {title}
        </label>
      ))}
    </div>
  </section>
);
