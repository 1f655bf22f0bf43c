// The link of where one is, kept in sight in a list that scrolls: the list alone is moved, the page stays where it is.
import { type RefObject, useEffect, useRef } from 'react';

/**
 * @param here where one is: the list is moved when it is another
 * @param size what else moves its links, as how many there are
 */
export const useHereInSight = <List extends HTMLElement>(
  here: string | number | null,
  size?: number | boolean,
): RefObject<List | null> => {
  const list = useRef<List>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is moved when it, or where one is in it, is another
  useEffect(() => {
    const line = list.current;
    const link = line?.querySelector<HTMLElement>('[aria-current]');
    if (line == null || link == null) return;
    const [own, whole] = [link.getBoundingClientRect(), line.getBoundingClientRect()];
    if (own.left < whole.left || own.right > whole.right) line.scrollLeft += own.left - whole.left;
    if (own.top < whole.top || own.bottom > whole.bottom) line.scrollTop += own.top - whole.top;
  }, [here, size]);
  return list;
};
