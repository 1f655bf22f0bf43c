// Plain text in 80 columns: headings, wrapped lines, columns.

const widest = 80;

const widthOf = (text: string): number => [...text].length;

export const heading = (text: string): string => text.toUpperCase();

/** Broken at spaces; a word longer than the line is broken where the line ends. Control characters are left out, since a terminal would obey them. */
export const wrapped = (text: string, indent: string): readonly string[] => {
  const room = widest - widthOf(indent);
  const lines: string[] = [];
  let line = '';
  for (const word of printable(text)
    .split(' ')
    .flatMap((whole) => inPieces(whole, room))) {
    if (line !== '' && widthOf(line) + 1 + widthOf(word) > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((one) => indent + one);
};

const inPieces = (word: string, room: number): readonly string[] => {
  const signs = [...word];
  const pieces: string[] = [];
  for (let at = 0; at < signs.length || at === 0; at += room) pieces.push(signs.slice(at, at + room).join(''));
  return pieces;
};

/** Of the last column, where the others leave so much; our own figure. */
const narrowest = 24;

/** Rows in aligned columns, two spaces in; the last column wraps under itself, or stands below the others where they leave no room for it. */
export const columns = (rows: readonly (readonly string[])[]): readonly string[] => {
  const count = rows[0]?.length ?? 0;
  const widths = Array.from({ length: Math.max(0, count - 1) }, (_, at) =>
    Math.max(...rows.map((row) => widthOf(row[at] ?? ''))),
  );
  return rows.flatMap((row) => {
    const before = widths.reduce((line, width, at) => `${line}${padded(row[at] ?? '', width)}  `, '  ');
    const indent = Math.min(widthOf(before), widest - narrowest);
    const [first = '', ...rest] = wrapped(row.at(-1) ?? '', ' '.repeat(indent));
    if (widthOf(before) <= indent || first.trim() === '') return [before + first.trimStart(), ...rest];
    return [before.trimEnd(), first, ...rest];
  });
};

const padded = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - widthOf(text)));

/** One line of words: controls and spaces of any kind become one space, marks that turn the direction go. */
const printable = (text: string): string =>
  text
    .replace(/\p{Bidi_Control}/gu, '')
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim();
