// All cloths from light to dark, each over the grey that is as light: values are judged without their hues.
import { useEffect, useRef } from 'react';
import type { QuiltAnswer } from '#workroom/compute';
import { useQuilt } from '#workroom/room';

type ClothAnswer = QuiltAnswer['cloths'][number];

export const ValueLadder = (of: {
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
  readonly onAdd: () => void;
}) => {
  const { document, answer } = useQuilt();
  const known = new Map<string, ClothAnswer>(answer?.cloths.map((cloth) => [cloth.id, cloth]));
  const line = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (of.chosen === null) return;
    // the one chosen in the drawing may lie beyond the end; the page itself stays where it is
    const key = line.current?.querySelector<HTMLElement>('[aria-pressed=true]');
    const [list, at] = [line.current, key?.parentElement];
    if (list === null || !at) return;
    const beyond = Math.max(0, at.offsetLeft + at.offsetWidth - list.offsetLeft - list.clientWidth - list.scrollLeft);
    const before = Math.min(0, at.offsetLeft - list.offsetLeft - list.scrollLeft);
    list.scrollLeft += beyond || before;
  }, [of.chosen]);
  // what the quilt does not use yet stands last
  const sorted = document.fabrics.toSorted(
    (a, b) => (known.get(b.id)?.lightness ?? -1) - (known.get(a.id)?.lightness ?? -1),
  );
  return (
    <section className="strip" aria-label="Cloths, from light to dark">
      <ul ref={line}>
        {sorted.map(({ id, name, colour }) => {
          const cloth = known.get(id);
          return (
            <li key={id}>
              <button
                type="button"
                className="ladder-key"
                aria-pressed={id === of.chosen}
                onClick={() => of.onChoose(id)}
              >
                <span className="ladder-cloth" style={{ background: colour }} aria-hidden="true" />
                <span className="ladder-grey" style={{ background: cloth?.grey ?? 'transparent' }} aria-hidden="true" />
                <span>{name || id}</span>
                <span className="quiet">
                  {cloth === undefined ? 'not used' : `${cloth.value}, ${Math.round(cloth.lightness)}`}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      <div className="strip-keys">
        <button type="button" onClick={of.onAdd}>
          Add a cloth
        </button>
      </div>
    </section>
  );
};
