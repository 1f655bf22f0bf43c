// SVG as text: elements, numbers and escaping. Knows nothing of quilts.

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** A picture with its true size on paper and a sentence that says what it shows. */
export interface Drawing {
  readonly svg: string;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly alt: string;
}

/** Rounded to a thousandth, so that the same plan gives the same bytes everywhere; never "-0". */
export const numberText = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`not a coordinate: ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
};

/** Text made safe for XML; characters that XML 1.0 forbids are left out, as no escape exists for them. */
export const escaped = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML forbids
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Cs}/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

export const element = (name: string, attributes: Attributes, content = ''): string => {
  let written = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    written += ` ${key}="${typeof value === 'number' ? numberText(value) : escaped(value)}"`;
  }
  return content === '' ? `${written}/>` : `${written}>${content}</${name}>`;
};

export const group = (attributes: Attributes, parts: readonly string[]): string =>
  parts.length === 0 ? '' : element('g', attributes, parts.join(''));

/** A whole picture; `parts` are drawn from 0, 0 to the given size. */
export const picture = (of: {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly alt: string;
  readonly parts: readonly string[];
}): Drawing => {
  const widthPt = Math.ceil(of.widthPt * 1000) / 1000;
  const heightPt = Math.ceil(of.heightPt * 1000) / 1000;
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${numberText(widthPt)} ${numberText(heightPt)}`,
      width: widthPt,
      height: heightPt,
      role: 'img',
    },
    element('title', {}, escaped(of.alt)) + of.parts.join(''),
  );
  return { svg: `${svg}\n`, widthPt, heightPt, alt: of.alt };
};
