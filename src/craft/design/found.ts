// What stands in the document, as short JSON text for a problem.

const most = 60;

export const foundText = (value: unknown): string => {
  if (Array.isArray(value)) return value.length === 0 ? '[]' : '[…]';
  if (typeof value === 'object' && value !== null) return Object.keys(value).length === 0 ? '{}' : '{…}';
  if (typeof value === 'string') return JSON.stringify(short(value));
  return short(String(value));
};

/** Cut to a whole number of characters, so that no half of a surrogate pair is left. */
const short = (text: string): string => {
  if (text.length <= most) return text;
  return `${[...text.slice(0, most)].slice(0, -1).join('')}…`;
};
