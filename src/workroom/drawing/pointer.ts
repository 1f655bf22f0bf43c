// Where a pointer is, in what it is over.

interface Pointed {
  readonly clientX: number;
  readonly clientY: number;
}

/** From its upper left corner, in CSS pixels. */
export const pointIn = (element: Element, { clientX, clientY }: Pointed): readonly [number, number] => {
  const { left, top } = element.getBoundingClientRect();
  return [clientX - left, clientY - top];
};
