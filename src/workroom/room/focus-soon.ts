// A key that is gone when it has done its work hands the focus on: who works by keys stays where she is.

/** When what was done is drawn. @param id of an element that can be focused; nothing where there is none */
export const focusSoon = (id: string): void => {
  requestAnimationFrame(() => requestAnimationFrame(() => document.getElementById(id)?.focus({ preventScroll: true })));
};
