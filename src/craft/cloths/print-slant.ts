// Which prints that have an upright lie slanted in a top on point? They follow their blocks, an eighth of a turn off.
import type { Quilt } from '#craft/design';
import type { BlockPlan, Note, TopPlan } from '#craft/plan';
import { signedArea } from '#ground/plane';

/** One note for each such cloth, in the document's order. Setting triangles and borders stand upright. */
export const printSlantNotes = (of: {
  readonly quilt: Quilt;
  readonly top: TopPlan;
  readonly blocks: readonly BlockPlan[];
}): readonly Note[] => {
  if (of.quilt.fabrics.every(({ print }) => print === 'none')) return [];
  const slanted = new Set([...inBlocks(of), ...inStrips(of.top)]);
  return of.quilt.fabrics.flatMap(({ id, print }, i): readonly Note[] =>
    print === 'none' || !slanted.has(id)
      ? []
      : [{ code: 'cutting/print-slanted', level: 'warning', path: `/fabrics/${i}/print`, fabric: id }],
  );
};

const inBlocks = ({ top, blocks }: { readonly top: TopPlan; readonly blocks: readonly BlockPlan[] }) =>
  top.set.placed.flatMap(({ block, colouring, mirror, turn }, place) => {
    if (turn % 90 === 0) return [];
    const entry = blocks.find((one) => one.id === block && one.colouring === colouring && one.mirror === mirror);
    return top.drawn[place] ?? entry?.patches.map(({ fabric }) => fabric) ?? [];
  });

/** A slanted rectangle covers less than its box, a triangle half of it. */
const inStrips = ({ set }: TopPlan): readonly string[] =>
  set.strips
    .filter(({ points, rect, border }) => {
      const share = signedArea(points) / (rect.width * rect.height);
      return border === null && points.length === 4 && share < 1 - 1e-9;
    })
    .map(({ fabric }) => fabric);
