// What a curve in hand needs: where it begins and ends, how far it rises or with which radius, and to which side.
import { parseLength } from '#craft/measure';
import { quarterRise } from '#craft/redrawing';
import { toNumber } from '#ground/exact';
import { distance } from '#ground/plane';
import { ChoiceKeys, LengthField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { mostRise, radiusFor, riseFor } from './curve-rise.ts';
import { curveFaultWords } from './curve-words.ts';
import { PlaceFields } from './place-fields.tsx';
import { placeText } from './place-text.ts';
import type { CurveInHand } from './use-curve.ts';
import type { TableState } from './use-table.ts';

export const CurveFields = ({ table }: { readonly table: TableState }) => {
  const { drawn, curve, cursor } = table;
  if (drawn === null) return null;
  return (
    <section>
      <h2>Lay a curve</h2>
      {curve.held === null ? (
        <>
          <p className="quiet">
            {curve.marks.length === 0
              ? 'Mark where it begins and where it ends, on seams or on the edge of the block: it bends the edge between them, or divides the patch. Or drag an edge. By keys: arrows, then Enter.'
              : 'Mark where it ends. The same place again takes the edge through it. Backspace takes the mark back.'}
          </p>
          <PlaceFields value={cursor} grid={drawn.grid} onChange={table.goTo} />
          <div className="row">
            <button type="button" className="main-key" onClick={() => table.pointAt(cursor)}>
              {curve.marks.length === 0 ? 'Begin it here' : 'End it here'}
            </button>
            {curve.marks.length > 0 && (
              <button type="button" onClick={table.letGo}>
                Let go
              </button>
            )}
          </div>
        </>
      ) : (
        <HeldFields curve={curve} held={curve.held} tell={table.tell} />
      )}
    </section>
  );
};

const ways = [
  { value: 'bend', words: 'Bend the edge' },
  { value: 'rule', words: 'A seam more' },
] as const;

const HeldFields = (of: {
  readonly curve: CurveInHand;
  readonly held: NonNullable<CurveInHand['held']>;
  readonly tell: (why: string) => void;
}) => {
  const { curve, held, tell } = of;
  const { document, words } = useQuilt();
  const { unit } = document;
  const chord = distance(held.from, held.to);
  const side = held.rise < 0 ? -1 : 1;
  const radius = radiusFor(held, held.rise);
  const { square, outcome } = curve;
  const inSquares = (written: string): number | null => {
    const read = parseLength(written, { unit, sign: 'zero-or-more' });
    return read.ok && square !== null ? toNumber(read.value) / square : null;
  };
  const takeRise = (written: string): void => {
    const rise = inSquares(written);
    if (rise === null) return;
    if (rise > mostRise(held) + 1e-9) tell(curveFaultWords({ kind: 'too-round' }));
    else curve.rise(side * rise);
  };
  const takeRadius = (written: string): void => {
    const wanted = inSquares(written);
    const rise = wanted === null ? null : riseFor(held, wanted);
    if (rise !== null) curve.rise(side * rise);
    else if (square !== null)
      tell(`So small a radius does not reach from end to end: ${words.length(mostRise(held) * square)} is the least.`);
  };
  return (
    <>
      <p className="quiet">
        From {placeText(held.from)} to {placeText(held.to)}. Arrows bend it, Enter lays it; or drag it, or tap where it
        is to run.
      </p>
      {curve.hasEdge && (
        <ChoiceKeys label="What it is" isLabelSeen choices={ways} value={held.way} onChoose={curve.way} />
      )}
      {square !== null && (
        <div className="pair">
          <LengthField
            label="Rise"
            value={written(Math.abs(held.rise) * square)}
            unit={unit}
            sign="zero-or-more"
            onChange={takeRise}
          />
          <LengthField
            label="Radius"
            value={radius === null ? '' : written(radius * square)}
            unit={unit}
            onChange={takeRadius}
          />
        </div>
      )}
      <div className="row">
        <button type="button" onClick={() => curve.rise(side * quarterRise(chord))}>
          Quarter round
        </button>
        <button type="button" onClick={() => curve.rise(side * mostRise(held))}>
          Half round
        </button>
        <button type="button" onClick={() => curve.rise(0)}>
          Straight
        </button>
        <button type="button" disabled={held.rise === 0} onClick={() => curve.rise(-held.rise)}>
          Other side
        </button>
      </div>
      {outcome?.ok === false && <p>{curveFaultWords(outcome.fault)}</p>}
      <div className="row">
        <button type="button" className="main-key" onClick={() => curve.lay()}>
          {held.way === 'rule' ? 'Lay it' : held.rise === 0 ? 'Make it straight' : 'Bend it'}
        </button>
        <button type="button" onClick={curve.letGo}>
          Let go
        </button>
      </div>
    </>
  );
};

/** As it stands in a field: far finer than any ruler. */
const written = (length: number): string => String(Number(length.toFixed(6)));
