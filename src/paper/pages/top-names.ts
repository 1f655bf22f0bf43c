// What the parts of the top are called, one by one and counted.
import type { QuiltPlan, TopPiece } from '#craft';
import type { StripRole, TopThing } from '#craft/setting';
import { sizeOnPaper } from '#paper/lengths';

export const roleNouns: Readonly<Record<StripRole, string>> = {
  sash: 'sash',
  cornerstone: 'cornerstone',
  plain: 'plain piece',
  strip: 'strip',
  fill: 'plain piece',
  'side-triangle': 'side triangle',
  'corner-triangle': 'corner triangle',
  border: 'border',
  spacer: 'spacer strip',
  'border-corner': 'corner square',
};

export const plural = (noun: string): string => (noun.endsWith('sh') ? `${noun}es` : `${noun}s`);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "block", "sash", … */
export const nounOf = (plan: QuiltPlan, thing: TopThing): string =>
  'block' in thing ? 'block' : roleNouns[plan.top.set.strips[thing.strip]?.role ?? 'plain'];

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

/** How a strip longer than its cloth is put together; null when it is cut in one piece. */
export const joinedText = (plan: QuiltPlan, piece: TopPiece): string | null => {
  if (piece.joinedFrom.length < 2) return null;
  const { unit } = plan.quilt;
  const from = piece.joinedFrom.map((size) => sizeOnPaper(size, unit)).join(' and ');
  return `${sizeOnPaper(piece.cut.size, unit)}, joined end to end from ${from}`;
};
