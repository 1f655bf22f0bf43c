// What the parts of the top are called, one by one and counted.
import type { QuiltPlan, TopPiece } from '#craft';
import type { TopThing } from '#craft/setting';
import { entryTitle } from '#paper/cutting';
import { sizeOnPaper } from '#paper/lengths';
import { inWords, plural, roleNouns } from '#paper/words';
import { marksOfTopPiece } from './marks.ts';
import type { TopChapter } from './top-part.ts';

/** "block", "sash", … */
export const nounOf = (plan: QuiltPlan, thing: TopThing): string =>
  'block' in thing ? 'block' : roleNouns[plan.top.set.strips[thing.strip]?.role ?? 'plain'];

/** "Log cabin", "sash B" */
export const thingText = (plan: QuiltPlan, thing: TopThing): string => {
  if ('strip' in thing) {
    const { role, label } = pieceOfStrip(plan, thing.strip);
    return `${roleNouns[role]} ${label}`;
  }
  const placed = plan.top.set.placed[thing.block];
  return placed === undefined ? 'block' : entryTitle(plan, placed);
};

/** "6 blocks, 5 sashes" */
export const countedNames = (names: readonly string[]): string => {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${count} ${count === 1 ? name : plural(name)}`).join(', ');
};

/** The kind of piece that a strip of the top is. */
export const pieceOfStrip = (plan: QuiltPlan, strip: number): TopPiece => {
  const piece = plan.top.pieces.find(({ strips }) => strips.includes(strip));
  if (piece === undefined) throw new Error(`no piece for the strip ${strip} of the top`);
  return piece;
};

/** How a piece is come by: "4½ × 75¼ in (E1)"; one longer than its cloth is put together: "…, C3 and C5 joined end to end". */
export const madeText = (of: Omit<TopChapter, 'album'>, piece: TopPiece, cut: string): string => {
  const { unit } = of.plan.quilt;
  if (piece.joinedFrom.length < 2) {
    const marks = marksOfTopPiece(of, piece);
    return marks.length === 0 ? cut : `${cut} (${marks.join(', ')})`;
  }
  const from = piece.joinedFrom.map((size) => {
    const marks = marksOfTopPiece(of, piece, size);
    return marks.length === 0 ? sizeOnPaper(size, unit) : marks.join(' or ');
  });
  return `${sizeOnPaper(piece.cut.size, unit)}, ${inWords(from)} joined end to end`;
};
