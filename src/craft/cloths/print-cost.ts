// What does it cost in cloth that a print stands upright? The quilt laid out again as if it did not matter, its panels and
// joined borders with it.
import type { Quilt } from '#craft/design';
import type { FabricPlan, Note, TopPlan } from '#craft/plan';
import { type ClothSearch, clothsBySteps } from './cloth-plan.ts';
import type { Natures } from './natures.ts';
import type { WantedPiece } from './wanted-pieces.ts';

/**
 * One note for each used cloth whose print stands upright.
 *
 * @param piecesFor all pieces of the quilt, were its cloths of this nature
 */
export function* printCostNotes(of: {
  readonly quilt: Quilt;
  readonly fabrics: readonly FabricPlan[];
  readonly natures: Natures;
  readonly search: ClothSearch;
  readonly top: TopPlan;
  readonly piecesFor: (natures: Natures) => readonly WantedPiece[];
}): Generator<void, readonly Note[], void> {
  const used = of.fabrics.filter(({ id }) => of.natures.get(id)?.print !== 'none');
  if (used.length === 0) return [];
  const plain: Natures = new Map([...of.natures].map(([id, nature]) => [id, { ...nature, print: 'none' }]));
  const onPoint = of.top.set.placed.some(({ turn }) => turn % 90 !== 0);
  const ids = new Set(used.map(({ id }) => id));
  const pieces = of.piecesFor(plain).filter(({ fabric }) => ids.has(fabric));
  const { fabrics } = yield* clothsBySteps({ quilt: of.quilt, pieces, natures: plain, search: of.search });
  return used.flatMap(({ id, laid, pieces: cut }): readonly Note[] => {
    const uses = cut.flatMap((line) => line.for);
    const free = fabrics.find((fabric) => fabric.id === id);
    if (free === undefined) return [];
    return [
      {
        code: 'cutting/print-upright',
        level: 'note',
        path: `/fabrics/${of.quilt.fabrics.findIndex((fabric) => fabric.id === id)}/print`,
        fabric: id,
        ...costsOf({ upright: laid, anyWay: free.laid, isSheets: isInSheets(of.quilt, id) }),
        leans: onPoint && uses.some(({ role }) => role === 'block'),
      },
    ];
  });
}

/** Sheets are counted; of given lengths of cloth what is cut is measured. */
const isInSheets = (quilt: Quilt, id: string): boolean =>
  quilt.fabrics.some(({ id: one, bought }) => one === id && (bought.kind === 'sheets' || bought.kind === 'stock'));

const costsOf = (of: {
  readonly upright: FabricPlan['laid'];
  readonly anyWay: FabricPlan['laid'];
  readonly isSheets: boolean;
}) =>
  of.isSheets && 'sheets' in of.upright && 'sheets' in of.anyWay
    ? ({ of: 'sheets', upright: of.upright.sheets.length, anyWay: of.anyWay.sheets.length } as const)
    : ({ of: 'length', upright: of.upright.layout.length, anyWay: of.anyWay.layout.length } as const);
