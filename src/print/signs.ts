// What becomes of signs that the fonts cannot draw? An empty square stands in their place, and they are
// reported: a missing glyph would stop a tagged PDF as a whole.

export const stand = '□';

export interface DrawableText {
  readonly text: string;
  /** Signs replaced, each once, in order of first place. */
  readonly missing: readonly string[];
}

/** Signs that have no form of their own: joiners, variation selectors, direction marks, tags, and controls. */
const formless = /[\p{Default_Ignorable_Code_Point}\p{Cc}\p{Bidi_Control}]/u;

export const drawable = (text: string, covered: ReadonlySet<number>): DrawableText => {
  const missing = new Set<string>();
  let out = '';
  for (const sign of text.normalize('NFC')) {
    if (covered.has(sign.codePointAt(0) ?? 0)) out += sign;
    else if (sign === '\u200b')
      out += sign; // a place to break, drawn by no font
    else if (sign === '\t' || sign === '\n') out += ' ';
    else if (!formless.test(sign)) {
      out += stand;
      missing.add(sign);
    }
  }
  return { text: out, missing: [...missing] };
};

/** Every string inside plain JSON values, made drawable; keys are ours and stay. */
export const allDrawable = (
  value: unknown,
  covered: ReadonlySet<number>,
): { readonly value: unknown; readonly missing: readonly string[] } => {
  const missing = new Set<string>();
  const walk = (part: unknown): unknown => {
    if (typeof part === 'string') {
      const drawn = drawable(part, covered);
      for (const sign of drawn.missing) missing.add(sign);
      return drawn.text;
    }
    if (Array.isArray(part)) return part.map(walk);
    if (part !== null && typeof part === 'object') {
      return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, walk(inner)]));
    }
    return part;
  };
  const walked = walk(value);
  return { value: walked, missing: [...missing] };
};
