// A cloth from a photograph: how wide it is, which part of it is kept; then its mean colour and a small picture go into the quilt.
import { type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import { parseLength, type Unit } from '#craft/measure';
import { toNumber } from '#ground/exact';
import type { PhotoCrop, PhotoFault } from '#workroom/compute';
import { pointIn } from '#workroom/drawing';
import { CountField, LengthField } from '#workroom/fields';
import { Sheet, useQuilt, useRoom } from '#workroom/room';
import { keptWidth } from './kept-width.ts';

export interface PhotoSheetOf {
  readonly file: File;
  readonly clothName: string;
  /** So many characters the document has left for the picture. */
  readonly room: number;
  readonly onTaken: (taken: { readonly image: string; readonly colour: string; readonly width: string }) => void;
  readonly onClose: () => void;
}

const whole: PhotoCrop = { left: 0, top: 0, right: 100, bottom: 100 };
const edges = [
  { edge: 'left', label: 'Left edge, %', least: () => 0, most: ({ right }: PhotoCrop) => right - 1 },
  { edge: 'right', label: 'Right edge, %', least: ({ left }: PhotoCrop) => left + 1, most: () => 100 },
  { edge: 'top', label: 'Upper edge, %', least: () => 0, most: ({ bottom }: PhotoCrop) => bottom - 1 },
  { edge: 'bottom', label: 'Lower edge, %', least: ({ top }: PhotoCrop) => top + 1, most: () => 100 },
] as const;

const faults: Readonly<Record<PhotoFault | 'too-many', string>> = {
  'not-a-picture': 'This file is no picture that the browser can read. Choose a JPEG, PNG or WebP file.',
  'too-large': 'This photograph is too large. Make it smaller than 60 MB, or take a smaller one.',
  'too-small': 'What is kept of the photograph is too small to show the cloth. Move the edges apart.',
  'no-means': 'This browser cannot make photographs smaller. Use a newer one, or give the cloth a colour.',
  'too-many':
    'The photographs of this quilt would together be larger than a document may be. Take one away from another cloth first.',
};

export const PhotoSheet = ({ file, clothName, room, onTaken, onClose }: PhotoSheetOf) => {
  const { document, words } = useQuilt();
  const { planner, say } = useRoom();
  const address = useMemo(() => URL.createObjectURL(file), [file]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  const [crop, setCrop] = useState(whole);
  const [width, setWidth] = useState('');
  const [pixels, setPixels] = useState<readonly [number, number] | null>(null);
  const [fault, setFault] = useState<PhotoFault | 'too-many' | null>(null);
  const [isReading, setReading] = useState(false);
  const isLeft = useRef(false);
  useEffect(() => {
    isLeft.current = false;
    return () => {
      isLeft.current = true;
    };
  }, []);
  const kept = keptSize({ width, pixels, crop, unit: document.unit });
  const take = async () => {
    if (kept === null) return;
    setFault(null);
    setReading(true);
    say('Reading the photograph');
    const taken = await planner.photo(file, crop);
    if (isLeft.current) return;
    setReading(false);
    if (taken.outcome === 'refused') setFault(taken.fault);
    else if (taken.image.length > room) setFault('too-many');
    else onTaken({ image: taken.image, colour: taken.colour, width: kept.written });
  };
  return (
    <Sheet title={`${clothName} from a photograph`} closeWords="Cancel" onClose={onClose}>
      {fault !== 'not-a-picture' && (
        <CropPicture
          address={address}
          crop={crop}
          onCrop={setCrop}
          onSize={setPixels}
          onFault={() => setFault('not-a-picture')}
        />
      )}
      <LengthField
        label="Width of cloth in the whole photograph"
        value={width}
        unit={document.unit}
        onChange={setWidth}
      />
      <p className="quiet">
        Lay a ruler on the cloth when you photograph it: how much cloth lies between the left and the right edge of the
        picture?
      </p>
      <fieldset className="crop-fields">
        <legend>What is kept of it</legend>
        {edges.map(({ edge, label, least, most }) => (
          <CountField
            key={edge}
            label={label}
            value={crop[edge]}
            least={least(crop)}
            most={most(crop)}
            onChange={(to) => setCrop({ ...crop, [edge]: to })}
          />
        ))}
      </fieldset>
      {fault !== null && (
        <p className="field-problem" role="alert">
          ◆ {faults[fault]}
        </p>
      )}
      <p role="status" className="quiet">
        {isReading
          ? 'Reading the photograph …'
          : kept === null
            ? 'The width is still missing.'
            : `Kept: ${words.size(kept.size)} of cloth.`}
      </p>
      <div className="row">
        <button type="button" className="main-key" disabled={kept === null || isReading} onClick={() => void take()}>
          Take this cloth
        </button>
        <button type="button" disabled={crop === whole} onClick={() => setCrop(whole)}>
          Keep all of it
        </button>
      </div>
    </Sheet>
  );
};

/** Null while the width or the picture is missing. */
const keptSize = (of: {
  readonly width: string;
  readonly pixels: readonly [number, number] | null;
  readonly crop: PhotoCrop;
  readonly unit: Unit;
}): { readonly written: string; readonly size: readonly [number, number] } | null => {
  const { width, pixels, crop, unit } = of;
  const read = parseLength(width, { unit, sign: 'positive' });
  if (!read.ok || pixels === null) return null;
  const written = keptWidth({ width, share: [crop.left, crop.right], unit });
  const hundredth = toNumber(read.value) / 100;
  const across = hundredth * (crop.right - crop.left);
  const down = (hundredth * (crop.bottom - crop.top) * pixels[1]) / pixels[0];
  return { written, size: [Math.round(across * 100) / 100, Math.round(down * 100) / 100] };
};

/** Two taps at opposite corners say what is kept. */
const CropPicture = (of: {
  readonly address: string;
  readonly crop: PhotoCrop;
  readonly onCrop: (crop: PhotoCrop) => void;
  readonly onSize: (pixels: readonly [number, number]) => void;
  readonly onFault: () => void;
}) => {
  const { address, crop, onCrop, onSize, onFault } = of;
  const [corner, setCorner] = useState<readonly [number, number] | null>(null);
  const tap = (event: PointerEvent<HTMLElement>) => {
    const { offsetWidth, offsetHeight } = event.currentTarget;
    const [x, y] = pointIn(event.currentTarget, event);
    const at = [Math.round((x / offsetWidth) * 100), Math.round((y / offsetHeight) * 100)] as const;
    if (corner === null) {
      setCorner(at);
      return;
    }
    setCorner(null);
    const [left, right] = [Math.min(at[0], corner[0]), Math.max(at[0], corner[0])];
    const [top, bottom] = [Math.min(at[1], corner[1]), Math.max(at[1], corner[1])];
    if (right > left && bottom > top) onCrop({ left, top, right, bottom });
  };
  return (
    <div className="crop">
      <div className="crop-picture" onPointerUp={tap}>
        <img
          src={address}
          alt="The photograph"
          draggable={false}
          onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) => onSize([naturalWidth, naturalHeight])}
          onError={onFault}
        />
        <span
          className="crop-kept"
          style={{
            left: `${crop.left}%`,
            top: `${crop.top}%`,
            width: `${crop.right - crop.left}%`,
            height: `${crop.bottom - crop.top}%`,
          }}
          aria-hidden="true"
        />
        {corner !== null && (
          <span className="crop-corner" style={{ left: `${corner[0]}%`, top: `${corner[1]}%` }} aria-hidden="true" />
        )}
      </div>
      <p className="quiet">
        {corner === null
          ? 'Tap two opposite corners to keep a part of it, or give the edges below.'
          : 'Now tap the opposite corner.'}
      </p>
    </div>
  );
};
