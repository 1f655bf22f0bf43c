// Is a text well-formed XML of the small kind that our drawings use? A check for tests: tags, attributes in
// double quotes, escaped text; no comments, no CDATA, no document type.

const token =
  /<(\/?)([A-Za-z][\w-]*)((?: [\w:-]+="[^"<&]*(?:&(?:amp|lt|gt|quot);[^"<&]*)*")*)(\/?)>|((?:[^<>&]|&(?:amp|lt|gt|quot);)+)/y;

/** What is wrong and where; null when nothing is. */
export const faultInXml = (text: string): string | null => {
  const open: string[] = [];
  const xml = text.trimEnd();
  token.lastIndex = 0;
  while (token.lastIndex < xml.length) {
    const at = token.lastIndex;
    const found = token.exec(xml);
    if (found === null) return `not XML at ${at}: ${xml.slice(at, at + 40)}`;
    const [, closes, name = '', , isEmpty] = found;
    if (name === '') continue;
    if (closes === '/') {
      if (open.pop() !== name) return `</${name}> at ${at} closes nothing`;
    } else if (isEmpty !== '/') open.push(name);
  }
  return open.length === 0 ? null : `<${open.join('> <')}> stays open`;
};

/** Ids that occur twice, and references to ids that do not occur. */
export const faultInIds = (text: string): string | null => {
  const ids = [...text.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
  const known = new Set(ids);
  if (known.size !== ids.length) return `an id stands twice among ${ids.join(', ')}`;
  const missing = [...text.matchAll(/(?:url\(#|href="#)([^")]*)/g)].find(([, id]) => !known.has(id));
  return missing === undefined ? null : `nothing has the id ${missing[1]}`;
};
