// Borders, and the spacers of pieced ones: lengthwise in one piece, or joined? Where the document leaves it open ("least"), the way
// that makes the cloth's layout shorter; joined when equal, crosswise on cloth by the length, for it is the common way.
import type { Quilt } from '#craft/design';
import type { BorderLie } from './top-plan.ts';

export interface LieLayout {
  readonly lengthOf: (fabric: string, lies: readonly BorderLie[]) => number;
  /** What no layout is shorter than. */
  readonly leastOf: (fabric: string, lies: readonly BorderLie[]) => number;
}

/**
 * Rings are decided one after another, from the inside outward, the later ones taken as joined.
 *
 * @param layout of a fabric when the rings lie so; asked only for rings left open
 */
export const chooseBorderLie = (borders: Quilt['top']['borders'], layout: LieLayout): readonly BorderLie[] => {
  let lies = joinedUnlessTold(borders);
  borders.forEach((border, ring) => {
    const fabric = clothLeftOpen(border);
    if (fabric === null) return;
    const lengthwise = lies.with(ring, 'lengthwise');
    if (isShorter({ fabric, layout, lengthwise, joined: lies })) lies = lengthwise;
  });
  return lies;
};

/** Whether these are what is chosen. Each ring is asked by itself, so that the first that lies otherwise is enough; the outermost first. */
export const isBorderLie = (
  borders: Quilt['top']['borders'],
  lies: readonly BorderLie[],
  layout: LieLayout,
): boolean => {
  const joined = joinedUnlessTold(borders);
  return borders.toReversed().every((border, fromOutside) => {
    const ring = borders.length - 1 - fromOutside;
    const fabric = clothLeftOpen(border);
    if (fabric === null) return true;
    const before = joined.map((own, other) => (other < ring ? (lies[other] as BorderLie) : own));
    const lengthwise = before.with(ring, 'lengthwise');
    return isShorter({ fabric, layout, lengthwise, joined: before }) === (lies[ring] === 'lengthwise');
  });
};

/** In one piece a border makes its cloth at least as long as itself: often that is too long already. */
const isShorter = (of: {
  readonly fabric: string;
  readonly layout: LieLayout;
  readonly lengthwise: readonly BorderLie[];
  readonly joined: readonly BorderLie[];
}): boolean => {
  const { fabric, layout, lengthwise, joined } = of;
  const most = layout.lengthOf(fabric, joined) - 1e-9;
  return layout.leastOf(fabric, lengthwise) < most && layout.lengthOf(fabric, lengthwise) < most;
};

/** Every way that may be chosen, whatever the layouts. */
export const borderLies = (borders: Quilt['top']['borders']): readonly (readonly BorderLie[])[] =>
  borders.reduce<readonly (readonly BorderLie[])[]>(
    (before, border, ring) =>
      clothLeftOpen(border) === null ? before : before.flatMap((lies) => [lies, lies.with(ring, 'lengthwise')]),
    [joinedUnlessTold(borders)],
  );

const joinedUnlessTold = (borders: Quilt['top']['borders']): readonly BorderLie[] =>
  borders.map((border) => (border.kind === 'strip' && border.grain !== 'least' ? border.grain : 'joined'));

/** Of a ring whose way to lie is left open; null of others. */
const clothLeftOpen = (border: Quilt['top']['borders'][number]): string | null => {
  if (border.kind === 'pieced') return border.spacer;
  return border.grain === 'least' ? border.fabric : null;
};
