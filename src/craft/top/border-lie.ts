// Borders, and the spacers of pieced ones: lengthwise in one piece, or joined? Where the document leaves it open ("least"), the way
// that makes the cloth's layout shorter; joined when equal, crosswise on cloth by the length, for it is the common way.
import type { Quilt } from '#craft/design';
import type { BorderLie } from './top-plan.ts';

/**
 * Rings are decided one after another, from the inside outward, the later ones taken as joined.
 *
 * @param lengthOf layout length of a fabric when the rings lie so; asked only for rings left open
 */
export const chooseBorderLie = (
  borders: Quilt['top']['borders'],
  lengthOf: (fabric: string, lies: readonly BorderLie[]) => number,
): readonly BorderLie[] => {
  let lies: readonly BorderLie[] = borders.map((b) => (b.kind === 'strip' && b.grain !== 'least' ? b.grain : 'joined'));
  borders.forEach((border, ring) => {
    const fabric = border.kind === 'pieced' ? border.spacer : border.fabric;
    if (fabric === null || (border.kind === 'strip' && border.grain !== 'least')) return;
    const lengthwise = lies.with(ring, 'lengthwise');
    if (lengthOf(fabric, lengthwise) < lengthOf(fabric, lies) - 1e-9) lies = lengthwise;
  });
  return lies;
};
