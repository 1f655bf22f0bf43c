// The hand of all drawings: colours, weights and lettering. Sizes are points on paper.
import { element, escaped } from './svg.ts';

export const ink = '#24211c';
export const softInk = '#6a6458';
export const hush = '#ece6d8';
export const sheet = '#fffdf8';
/** The one accent: "here" and "next" only. */
export const thread = '#a13d2b';

export const patchEdgePt = 0.5;
export const cutEdgePt = 0.75;
export const hairlinePt = 0.3;

/** Width of a letter as a share of its size: the mean of capitals and figures in Source Sans 3, measured from its widths. */
const letterShare = 0.56;

export const textWidthPt = (text: string, sizePt: number): number => [...text].length * letterShare * sizePt;

export const lettering = (of: {
  readonly text: string;
  readonly x: number;
  /** Middle of the capitals, not the baseline. */
  readonly y: number;
  readonly sizePt: number;
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly weight?: 400 | 600;
}): string =>
  element(
    'text',
    {
      x: of.x,
      // capitals of Source Sans 3 stand 0.66 of its size high
      y: of.y + 0.33 * of.sizePt,
      'font-family': 'Source Sans 3',
      'font-size': of.sizePt,
      'font-weight': of.weight === 600 ? 600 : undefined,
      fill: of.fill ?? ink,
      'text-anchor': of.anchor === 'start' ? undefined : (of.anchor ?? 'middle'),
    },
    escaped(of.text),
  );

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);

/** Relative luminance 0 to 1 of #rrggbb (WCAG 2.2, definition of relative luminance). */
export const luminanceOf = (colour: string): number => {
  const [r, g, b] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255));
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
};

/** Ink or sheet, whichever stands out more from the cloth (contrast ratio of WCAG 2.2). */
export const inkOn = (colour: string): string => {
  const cloth = luminanceOf(colour) + 0.05;
  const toInk = cloth / (luminanceOf(ink) + 0.05);
  const toSheet = (luminanceOf(sheet) + 0.05) / cloth;
  return toInk >= toSheet ? ink : sheet;
};

/** A colour mixed with white: the wrong side of a cloth. `share` of the colour stays. */
export const paler = (colour: string, share: number): string =>
  `#${[1, 3, 5]
    .map((at) => {
      const channel = Number.parseInt(colour.slice(at, at + 2), 16);
      return Math.round(255 - (255 - channel) * share)
        .toString(16)
        .padStart(2, '0');
    })
    .join('')}`;
