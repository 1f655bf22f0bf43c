// Why a curve cannot be laid as it lies, with the place.
import type { CurveFault } from '#craft/redrawing';
import { placeText } from './place-text.ts';

export const curveFaultWords = (fault: CurveFault): string => {
  switch (fault.kind) {
    case 'too-round':
      return 'A curve turns half round at most: it rises no further than half the way between its ends.';
    case 'leaves-block':
      return `It leaves the block near ${placeText(fault.at)}: let it rise less, or to the other side.`;
    case 'crosses-edge':
      return `It meets another seam or the edge at ${placeText(fault.at)}: lead it only to there, or let it rise less.`;
    case 'lies-on-edge':
      return `A seam or the edge runs there already, through ${placeText(fault.at)}.`;
    case 'meets-corner':
      return `Another seam meets this edge at ${placeText(fault.at)}: bend it from there, or to there.`;
    case 'edge-of-block':
      return 'The edge of the block stays straight. Mark two places on it to lay a curve inside.';
    case 'no-edge':
      return 'No edge leads from the one mark to the other.';
    case 'no-patch':
      return 'Both marks must lie at the edge of one patch, and the curve inside it.';
  }
};
