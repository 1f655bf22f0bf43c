// Labels: A, B, … Z, AA, AB, …

/** The label at a place, 0-based. */
export const labelAt = (place: number): string => {
  const letter = String.fromCharCode(65 + (place % 26));
  return place < 26 ? letter : labelAt(Math.floor(place / 26) - 1) + letter;
};
