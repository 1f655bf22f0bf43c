// What to mind of this quilt, for who has the pattern alone: blocks and cloths by their names, not by the document's ids.
import type { Note, QuiltPlan } from '#craft';
import { noteText, type OffMarks, offMarksText } from '#paper/words';

/** A block in several colourings has one note in each, and the pieces of a block that are off the marks share one. */
export const noticesOf = (plan: QuiltPlan): readonly string[] => {
  const { unit } = plan.quilt;
  const notes = plan.notes.filter(({ code }) => !left.has(code)).map((note) => named(note, plan));
  const offMarks = notes.filter(isOffMarks);
  const text = (note: Note): string =>
    isOffMarks(note)
      ? offMarksText(
          offMarks.filter(({ block }) => block === note.block),
          unit,
        )
      : noteText(note, unit);
  return [...new Set(notes.map(text))];
};

/** What a block's own page tells is not told twice, and what only whoever writes the document can use is not told here. */
const left: ReadonlySet<Note['code']> = new Set([
  'piecing/searched',
  'piecing/not-straight',
  'piecing/lines-to-add',
  'piecing/no-lines-to-add',
  'design/unused-tone',
  'design/unused-block',
]);

const isOffMarks = (note: Note): note is OffMarks => note.code === 'cutting/off-marks';

const named = (note: Note, { quilt }: QuiltPlan): Note => {
  const block = (id: string): string => quilt.blocks.find((one) => one.id === id)?.title || id;
  const cloth = (id: string): string => quilt.fabrics.find((one) => one.id === id)?.name || id;
  if (note.code === 'fabric/values-near') {
    const side = (one: typeof note.light) => ({ ...one, fabrics: one.fabrics.map(cloth) });
    return { ...note, block: block(note.block), light: side(note.light), dark: side(note.dark) };
  }
  if ('block' in note) return { ...note, block: block(note.block) };
  if ('fabric' in note) return { ...note, fabric: cloth(note.fabric) };
  return 'fabrics' in note ? { ...note, fabrics: note.fabrics.map(cloth) } : note;
};
