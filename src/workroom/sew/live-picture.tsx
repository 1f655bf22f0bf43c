// A picture as it stands on paper, in the page: its groups keep their classes, so that a screen can light and move them.
import { type CSSProperties, type MouseEvent, useId, useLayoutEffect, useRef } from 'react';
import type { Drawing } from '#paper/drawing';

export interface LivePictureOf {
  readonly picture: Drawing;
  readonly className: string;
  /** For motion: read by the page's look. */
  readonly style?: CSSProperties;
  /** Another value lays the same picture anew, so that its motion is seen again. */
  readonly again?: number;
  /** A shape that has one of these was met; for pointers alone, whatever keys do stands beside the picture. */
  readonly onThing?: (thing: number) => void;
}

export const LivePicture = ({ picture, className, style, again = 0, onThing }: LivePictureOf) => {
  const place = useRef<HTMLDivElement>(null);
  const own = useId().replaceAll(':', '');
  // biome-ignore lint/correctness/useExhaustiveDependencies: laid anew when it is to be seen again
  useLayoutEffect(() => {
    place.current?.replaceChildren(laid(picture, own));
  }, [picture.svg, own, again]);
  const meet = (event: MouseEvent<HTMLDivElement>): void => {
    const thing = (event.target as Element).closest('[data-thing]')?.getAttribute('data-thing');
    if (thing != null) onThing?.(Number(thing));
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys have the same beside it
    // biome-ignore lint/a11y/useKeyWithClickEvents: keys have the same beside it
    <div
      ref={place}
      className={`live-picture ${className}`}
      style={style}
      onClick={onThing === undefined ? undefined : meet}
    />
  );
};

/** Names of patterns and blocks are made this picture's own: a page holds several. */
const laid = ({ svg, alt }: Drawing, own: string): Node => {
  const root = document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
  root.removeAttribute('width');
  root.removeAttribute('height');
  root.setAttribute('aria-label', alt);
  // its words would stand at the pointer
  root.querySelector('title')?.remove();
  for (const one of root.querySelectorAll('[id]')) one.id = `${own}-${one.id}`;
  for (const one of root.querySelectorAll('[fill^="url(#"]')) {
    one.setAttribute('fill', (one.getAttribute('fill') ?? '').replace('url(#', `url(#${own}-`));
  }
  for (const one of root.querySelectorAll('[href^="#"]')) {
    one.setAttribute('href', `#${own}-${(one.getAttribute('href') ?? '').slice(1)}`);
  }
  return root;
};
