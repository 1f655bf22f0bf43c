// Both versions drawn to one scale, side by side.
import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { convert } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';
import { ClothPhotos, SmallPicture, sceneOfQuilt } from '#workroom/drawing';
import { lengthWordsFor, Problems, usePreferences, useRoom } from '#workroom/room';
import type { Weighed } from './use-weighed.ts';

export interface PicturesOf {
  readonly sides: readonly [Weighed, Weighed];
  readonly names: readonly [string, string];
}

/** Of the taller one, in CSS pixels. */
const mostHighPx = 420;
const gapPx = 24;

const cmInInch = toNumber(convert(rational(1), { from: 'in', to: 'cm' }));

export const Pictures = ({ sides, names }: PicturesOf) => {
  const ground = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(ground);
  const scale = useMemo(() => {
    const sizes = sides.flatMap(({ answer }) => (answer === null ? [] : [sizeInCm(answer)]));
    if (sizes.length === 0) return 0;
    const half = Math.max(80, (widthPx - gapPx) / 2);
    return Math.min(
      half / Math.max(...sizes.map(([width]) => width)),
      mostHighPx / Math.max(...sizes.map(([, height]) => height)),
    );
  }, [sides, widthPx]);
  return (
    <div className="pictures" ref={ground}>
      {sides.map((side, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: first and second are places
        <Side key={index} side={side} name={names[index] ?? ''} pxPerCm={scale} />
      ))}
    </div>
  );
};

type Answer = NonNullable<Weighed['answer']>;

const cmIn = ({ unit }: Answer): number => (unit === 'cm' ? 1 : cmInInch);

const sizeInCm = (answer: Answer): readonly [number, number] => {
  const { width, height } = answer.picture;
  return [width * cmIn(answer), height * cmIn(answer)];
};

const Side = ({ side, name, pxPerCm }: { readonly side: Weighed; readonly name: string; readonly pxPerCm: number }) => {
  const { found, answer, problems } = side;
  const { preferences } = useRoom();
  const liked = usePreferences(preferences);
  const picture = answer?.picture ?? null;
  const unit = answer?.unit ?? 'in';
  const words = useMemo(
    () => lengthWordsFor(found.document ?? { unit }, liked.unit),
    [found.document, unit, liked.unit],
  );
  const scene = useMemo(() => (picture === null ? null : sceneOfQuilt(picture, words.nearSize)), [picture, words]);
  return (
    <figure>
      <figcaption>{name}</figcaption>
      {found.state === 'gone' && (
        <p className="empty" role="status">
          It is gone: it was removed, or the step was let go. Choose another.
        </p>
      )}
      {found.state !== 'gone' && scene === null && problems.length === 0 && (
        <p className="empty" role="status">
          Drawing it …
        </p>
      )}
      {problems.length > 0 && found.document !== null && (
        <>
          <p>It cannot be sewn as it stands{scene === null ? '.' : '; drawn as it last could be.'}</p>
          <Problems
            problems={problems.slice(0, mostProblems)}
            more={Math.max(0, problems.length - mostProblems)}
            document={found.document}
          />
        </>
      )}
      {scene !== null && found.document !== null && (
        <ClothPhotos cloths={found.document.fabrics} unit={found.document.unit}>
          <SmallPicture
            scene={scene}
            sidePx={Math.max(scene.width, scene.height) * (unit === 'cm' ? 1 : cmInInch) * pxPerCm}
            alt={`${name}: the quilt, ${words.nearSize([scene.width, scene.height])}`}
          />
        </ClothPhotos>
      )}
    </figure>
  );
};

const mostProblems = 3;

const useWidth = (of: { readonly current: HTMLElement | null }): number => {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const ground = of.current;
    if (ground === null) return;
    const measure = () => setWidth(ground.clientWidth);
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(ground);
    return () => watch.disconnect();
  }, [of]);
  return width;
};
