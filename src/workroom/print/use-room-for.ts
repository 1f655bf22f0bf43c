// How much room an element has, as it changes with the window.
import { type RefObject, useLayoutEffect, useState } from 'react';

/** Width and height in CSS pixels; null before it stands. */
export const useRoomFor = (place: RefObject<HTMLElement | null>): readonly [width: number, height: number] | null => {
  const [room, setRoom] = useState<readonly [number, number] | null>(null);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    const measure = () => {
      // the element's own box: bars that come and go with what lies in it are left out of account
      const { width, height } = element.getBoundingClientRect();
      setRoom((now) => (now !== null && now[0] === width && now[1] === height ? now : [width, height]));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [place]);
  return room;
};
