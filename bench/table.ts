// Rows of text as a table, columns as wide as their widest cell.

/** @param rows the first is the head */
export const printTable = (rows: readonly (readonly string[])[]): void => {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]) => `| ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |`;
  const rule = `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`;
  console.log([line(rows[0] ?? []), rule, ...rows.slice(1).map(line)].join('\n'));
};

export const msText = (value: number): string => `${value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0)} ms`;

export const shareText = (hundredths: number): string => `${hundredths.toFixed(2)} %`;

export const ofText = (some: number, all: number): string => `${some} of ${all}`;
