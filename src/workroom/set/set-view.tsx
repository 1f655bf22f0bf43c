// Set: the quilt in the middle, what is chosen and the top at the right, arrangements below.
import { useMemo } from 'react';
import { DrawingView, litKeys, sceneOfQuilt } from '#workroom/drawing';
import { usePicture, useQuilt } from '#workroom/room';
import { Arrangements } from './arrangements.tsx';
import { BorderFields } from './border-fields.tsx';
import { ChosenPlaces } from './chosen-places.tsx';
import { FrameFields } from './frame-fields.tsx';
import { placesOf } from './place-edits.ts';
import { SashingFields } from './sashing-fields.tsx';
import { SectionFields } from './section-fields.tsx';
import { TargetFields } from './target-fields.tsx';
import { isBlock } from './top-edits.ts';
import { TopFields } from './top-fields.tsx';
import { useChoice } from './use-choice.ts';
import { useMeasures } from './use-measures.ts';
import { usePlaces } from './use-places.ts';

const none: readonly string[] = [];

export const SetView = () => {
  const { document, words, problems } = useQuilt();
  const picture = usePicture();
  const scene = useMemo(() => (picture === null ? null : sceneOfQuilt(picture, words.nearSize)), [picture, words]);
  const all = useMemo(() => placesOf(document.top, picture), [document.top, picture]);
  const choice = useChoice(scene, all);
  const done = usePlaces(choice, all);
  const measured = useMeasures();
  const [first] = done.held;
  const block =
    isBlock(first) && done.held.every((one) => isBlock(one) && one.block === first.block) ? first.block : null;
  const lit = useMemo(
    () => (picture === null ? [] : litKeys({ problems, picture, blocks: document.blocks })),
    [problems, picture, document.blocks],
  );
  return (
    <div className="view-parts">
      <div className="stage">
        {scene === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be drawn when what stands above is mended.' : 'Drawing the quilt …'}
          </p>
        ) : (
          <DrawingView
            scene={scene}
            label={`The quilt, ${words.nearSize([scene.width, scene.height])}`}
            chosen={choice.thing?.key ?? null}
            onChoose={choice.chooseKey}
            lit={lit}
            several={choice.several}
            foot={
              <button
                type="button"
                className="quiet-key"
                aria-pressed={choice.taps === 'add'}
                onClick={() => choice.tapTo(choice.taps === 'add' ? 'choose' : 'add')}
              >
                Choose several
              </button>
            }
          />
        )}
        <Arrangements chosen={choice.isSeveral ? choice.places : none} />
      </div>
      <aside className="side" aria-label="What is chosen">
        <ChosenPlaces choice={choice} done={done} />
        {document.top.set === 'sections' && <SectionFields choice={choice} />}
        {block !== null && <FrameFields block={block} measured={measured} />}
        <TopFields measured={measured} />
        <TargetFields measured={measured} />
        <SashingFields />
        <BorderFields measured={measured} />
      </aside>
    </div>
  );
};
