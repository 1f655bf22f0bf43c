// Colour: the quilt in its cloths, in their greys or as other eyes see it; its colourways side by side; the chosen cloth at the right,
// all cloths from light to dark below.
import { useMemo, useState } from 'react';
import { useQuilt } from '#workroom/room';
import { ClothFields, OtherCloth } from './cloth-fields.tsx';
import { ColourStage, StageKeys } from './colour-stage.tsx';
import { ColourwayFields, ownWay } from './colourways.tsx';
import { looks } from './looks.ts';
import { ToneRecolour } from './tone-recolour.tsx';
import { type Colouring, useColouring } from './use-colouring.ts';
import { ValueLadder } from './value-ladder.tsx';
import { ValueWarnings } from './value-warnings.tsx';

export const ColourView = () => {
  const { document, answer } = useQuilt();
  const colouring = useColouring();
  const { look, lookAs, sight, colourway, chooseWay, cloths, chosen, chooseCloth, addCloth } = colouring;
  const [marks, setMarks] = useState<'shown' | 'hidden'>('shown');
  const near = useMemo(() => (answer?.values ?? []).filter((one) => one.colourway === colourway), [answer, colourway]);
  const lit = useMemo(() => (marks === 'shown' ? near : []), [marks, near]);
  const cloth = document.fabrics.find(({ id }) => id === chosen);
  const seen = cloths.find(({ id }) => id === chosen);
  const about = looks.find(({ value }) => value === look)?.about ?? '';
  return (
    <div className="view-parts">
      <div className="stage">
        <StageKeys colouring={colouring} />
        {about !== '' && <p className="look-about quiet">{about}</p>}
        <ColourStage colouring={colouring} near={lit} />
        <ValueLadder {...{ cloths, sight }} chosen={chosen ?? null} onChoose={chooseCloth} onAdd={addCloth} />
      </div>
      <aside className="side" aria-label="This cloth">
        <ValueWarnings {...{ near, cloths, colourway, marks }} onLook={lookAs} onMarks={setMarks} />
        <ColourwayFields chosen={colourway} onChoose={chooseWay} />
        {cloth !== undefined && seen !== undefined && <ClothFields {...{ cloth, seen, colourway }} />}
        {colourway === null ? (
          <>
            {seen !== undefined && <OtherCloth cloth={seen} cloths={cloths} onRemoved={() => chooseCloth(null)} />}
            <ToneRecolour cloths={cloths} />
            {colouring.isScrappy && <ScrappyCloths colouring={colouring} />}
          </>
        ) : (
          <section>
            <h2>The same in every colourway</h2>
            <p className="quiet">Which cloth lies where belongs to the quilt itself.</p>
            <button type="button" onClick={() => chooseWay(null)}>
              To the quilt {ownWay.toLowerCase()}
            </button>
          </section>
        )}
      </aside>
    </div>
  );
};

const ScrappyCloths = ({ colouring }: { readonly colouring: Colouring }) => (
  <section>
    <h2>Scrappy cloths</h2>
    <p className="quiet">
      Drawn for you: neighbours differ, and each cloth is used about equally often. This is draw{' '}
      {useQuilt().document.draw ?? 1}.
    </p>
    <button type="button" onClick={colouring.drawAgain}>
      Draw again
    </button>
  </section>
);
