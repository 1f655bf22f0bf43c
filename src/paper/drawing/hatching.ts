// A cloth's hatch as an SVG pattern, in ink or sheet by what stands out from the cloth.
import type { ClothSign } from '#paper/cloth';
import { inkOn, sheet } from './ink.ts';
import { element, numberText } from './svg.ts';

export const hatchId = (sign: ClothSign): string => `hatch-${sign.letter}`;

/** Pattern definition; fill with `url(#…)` of `hatchId`. */
export const hatchPattern = (sign: ClothSign): string => {
  const { gapPt: gap, stroke, turn } = sign.hatch;
  const colour = inkOn(sign.colour);
  const strokeOpacity = colour === sheet ? 0.6 : 0.42;
  const mid = numberText(gap / 2);
  const all = numberText(gap);
  const level = `M0 ${mid}H${all}`;
  const marks: Record<typeof stroke, string> = {
    line: level,
    double: `M0 ${numberText(gap * 0.36)}H${all}M0 ${numberText(gap * 0.64)}H${all}`,
    dash: `M0 ${mid}H${numberText(gap * 0.6)}`,
    cross: `${level}M${mid} 0V${all}`,
    dots: '',
  };
  const content =
    stroke === 'dots'
      ? element('circle', { cx: gap / 2, cy: gap / 2, r: 0.55, fill: colour, 'fill-opacity': strokeOpacity })
      : element('path', {
          d: marks[stroke],
          stroke: colour,
          'stroke-width': 0.4,
          'stroke-opacity': strokeOpacity,
          fill: 'none',
        });
  return element(
    'pattern',
    {
      id: hatchId(sign),
      patternUnits: 'userSpaceOnUse',
      width: gap,
      height: gap,
      patternTransform: turn === 0 ? undefined : `rotate(${turn})`,
    },
    content,
  );
};

export const hatchDefinitions = (signs: Iterable<ClothSign>): string => {
  const all = [...signs].map(hatchPattern).join('');
  return all === '' ? '' : element('defs', {}, all);
};
