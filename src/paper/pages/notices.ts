// What to mind of this quilt, for who has the pattern alone: blocks and cloths by their names, not by the document's ids.
import type { Note, QuiltPlan } from '#craft';
import { noteText } from '#paper/words';

/** A block in several colourings has one note in each; what a block's own page tells is not told twice. */
export const noticesOf = (plan: QuiltPlan): readonly string[] => [
  ...new Set(
    plan.notes.filter(({ code }) => !toldAtBlock.has(code)).map((note) => noteText(named(note, plan), plan.quilt.unit)),
  ),
];

const toldAtBlock: ReadonlySet<Note['code']> = new Set(['piecing/searched', 'piecing/not-straight']);

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
