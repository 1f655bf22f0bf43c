// The collection, as pictures: searched by name and by what a block is pieced of.
import { useEffect, useState } from 'react';
import type { CollectedBlock } from '#workroom/compute';
import { SmallPicture, sceneOfCollected } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { Sheet, useQuilt, useRoom } from '#workroom/room';
import { type Block, fromCollection } from './block-edits.ts';

export interface AnotherBlockOf {
  readonly onClose: () => void;
  readonly onTake: (make: (draft: Parameters<typeof fromCollection>[0]) => Block, what: string) => void;
  readonly onCabin: () => void;
}

type Shape = CollectedBlock['shape'] | 'any';
const shapes: readonly { readonly value: Shape; readonly words: string }[] = [
  { value: 'any', words: 'All' },
  { value: 'strips', words: 'Squares and strips' },
  { value: 'triangles', words: 'With triangles' },
  { value: 'other', words: 'Other slants' },
];

const families: readonly (readonly [CollectedBlock['family'], string])[] = [
  ['four-patch', 'a four-patch: 2, 4 or 8 squares a side'],
  ['nine-patch', 'a nine-patch: 3, 6 or 9 a side'],
  ['five-patch', 'five squares a side'],
  ['seven-patch', 'seven squares a side'],
  ['logs', 'logs round a centre'],
  ['eight-pointed', 'an eight-pointed star'],
];
const patchShapes: readonly (readonly [CollectedBlock['shapes'][number], string])[] = [
  ['square', 'squares'],
  ['rectangle', 'rectangles'],
  ['half-square', 'half-square triangles'],
  ['quarter-square', 'quarter-square triangles'],
  ['other', 'other shapes'],
];
/** Up to so many patches, from one more than the line before. */
const counts: readonly (readonly [string, number, number])[] = [
  ['up to 9', 1, 9],
  ['10 to 20', 10, 20],
  ['more than 20', 21, Number.POSITIVE_INFINITY],
];

const picturePx = 88;

export const AnotherBlock = ({ onClose, onTake, onCabin }: AnotherBlockOf) => {
  const { document, answer } = useQuilt();
  const { planner } = useRoom();
  const [all, setAll] = useState<readonly CollectedBlock[] | null>(null);
  const [name, setName] = useState('');
  const [shape, setShape] = useState<Shape>('any');
  const [family, setFamily] = useState('');
  const [within, setWithin] = useState('');
  const [count, setCount] = useState('');
  useEffect(() => {
    planner.collection().then(setAll, () => setAll([]));
  }, [planner]);
  const [, least = 1, most = Number.POSITIVE_INFINITY] = counts.find(([words]) => words === count) ?? [];
  const shown = (all ?? []).filter(
    (block) =>
      isNamed(block, name) &&
      (shape === 'any' || block.shape === shape) &&
      (family === '' || block.family === family) &&
      (within === '' || block.shapes.some((one) => one === within)) &&
      block.patches.length >= least &&
      block.patches.length <= most,
  );
  const size = usualSize(answer?.picture.entries.map((entry) => entry.size[0]) ?? [], document.unit);
  return (
    <Sheet title="Another block" onClose={onClose}>
      <label className="field">
        <span>By name</span>
        <input type="search" value={name} onChange={(event) => setName(event.target.value)} />
      </label>
      <ChoiceKeys label="Pieced of" choices={shapes} value={shape} onChoose={setShape} />
      <div className="by-shape">
        <Narrowing label="Drawn on" choices={families} value={family} onChange={setFamily} />
        <Narrowing label="With" choices={patchShapes} value={within} onChange={setWithin} />
        <Narrowing
          label="Patches"
          choices={counts.map(([words]) => [words, words] as const)}
          value={count}
          onChange={setCount}
        />
      </div>
      <p className="quiet" role="status">
        {all === null
          ? 'Opening the collection …'
          : shown.length === 0
            ? 'No block of the collection is like that. Try a part of its name, or another shape.'
            : `${shown.length} of ${all.length} blocks`}
      </p>
      <ul className="collection">
        {shown.map((block) => (
          <li key={block.id}>
            <button
              type="button"
              onClick={() => onTake((draft) => fromCollection(draft, { ...block, size }), `Add ${block.name}`)}
            >
              <SmallPicture scene={sceneOfCollected(block)} sidePx={picturePx} alt="" />
              <span>{block.name}</span>
              {block.otherNames.length > 0 && <span className="quiet">also {block.otherNames.join(', ')}</span>}
            </button>
          </li>
        ))}
      </ul>
      <div className="row">
        <button type="button" onClick={onCabin}>
          A log cabin by its measures
        </button>
      </div>
    </Sheet>
  );
};

const Narrowing = (of: {
  readonly label: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
  readonly value: string;
  readonly onChange: (value: string) => void;
}) => (
  <label className="field">
    <span>{of.label}</span>
    <select value={of.value} onChange={(event) => of.onChange(event.target.value)}>
      <option value="">any</option>
      {of.choices.map(([value, words]) => (
        <option key={value} value={value}>
          {words}
        </option>
      ))}
    </select>
  </label>
);

const isNamed = ({ name, otherNames }: CollectedBlock, words: string): boolean => {
  const text = [name, ...otherNames].join(' ').toLowerCase();
  return words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
};

/** As wide as the first block of the top, so that it fits beside it; where that has no plain width, a usual one. */
const usualSize = (widths: readonly number[], unit: 'in' | 'cm'): string => {
  const [first] = widths;
  const isWritten = first !== undefined && Math.abs(first * 8 - Math.round(first * 8)) < 1e-9;
  return isWritten ? String(first) : unit === 'in' ? '12' : '30';
};
