// All cloths from light to dark, each over the grey that is as light: values are judged without their hues.
import { useEffect, useRef } from 'react';
import { type Sight, seenAs } from '#craft/fabric';
import { useQuilt } from '#workroom/room';
import type { SeenCloth } from './seen-cloths.ts';

export const ValueLadder = (of: {
  readonly cloths: readonly SeenCloth[];
  readonly sight: Sight | null;
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
  readonly onAdd: () => void;
}) => {
  const { answer } = useQuilt();
  const used = new Set(answer?.cloths.map(({ id }) => id));
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
    // on a tablet it stands in several lines
    const below = Math.max(0, at.offsetTop + at.offsetHeight - list.offsetTop - list.clientHeight - list.scrollTop);
    const above = Math.min(0, at.offsetTop - list.offsetTop - list.scrollTop);
    list.scrollTop += below || above;
  }, [of.chosen]);
  return (
    <section className="strip ladder" aria-label="Cloths, from light to dark">
      <ul ref={line}>
        {of.cloths
          .toSorted((a, b) => b.lightness - a.lightness)
          .map(({ id, name, colour, photo, value, lightness }) => (
            <li key={id}>
              <button
                type="button"
                className="ladder-key"
                aria-pressed={id === of.chosen}
                onClick={() => of.onChoose(id)}
              >
                <ClothPatch
                  className="ladder-cloth"
                  colour={of.sight === null ? colour : seenAs(colour, of.sight)}
                  image={of.sight === null ? photo?.image : undefined}
                />
                <span className="ladder-grey" style={{ background: seenAs(colour, 'grey') }} aria-hidden="true" />
                <span className="ladder-name">{name}</span>
                <span className="quiet">
                  {answer !== null && !used.has(id) ? 'not used' : `${value}, ${Math.round(lightness)}`}
                </span>
              </button>
            </li>
          ))}
      </ul>
      <div className="strip-keys">
        <button type="button" onClick={of.onAdd}>
          Add a cloth
        </button>
      </div>
    </section>
  );
};

/** A small square of the cloth: its photograph where it has one. */
export const ClothPatch = (of: {
  readonly className: string;
  readonly colour: string;
  readonly image: string | undefined;
}) => (
  <span
    className={of.className}
    style={{
      backgroundColor: of.colour,
      ...(of.image === undefined ? {} : { backgroundImage: `url("${of.image}")`, backgroundSize: 'cover' }),
    }}
    aria-hidden="true"
  />
);
