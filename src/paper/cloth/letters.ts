// Letters by order: A to Z, then AA, AB, … as the columns of a ledger run.

/** @param index 0-based, whole */
export const lettersFor = (index: number): string => {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : lettersFor(Math.floor(index / 26) - 1) + last;
};
