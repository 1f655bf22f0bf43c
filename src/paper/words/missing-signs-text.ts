// Signs that no letters of the pages have.

/** @param signs each once; at least one */
export const missingSignsText = (signs: readonly string[]): string =>
  `The pattern's fonts have no sign for ${signs.join(' ')}; an empty square stands in its place.`;
