// What a size of a cloth is called.

/** "C3": the third size cut from cloth C; on the drawing, in the table and on the bag. */
export const cutMark = (letter: string, index: number): string => `${letter}${index + 1}`;
