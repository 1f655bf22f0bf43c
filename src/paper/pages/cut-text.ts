// How one piece is cut, in a few words.
import type { QuiltPlan } from '#craft';
import type { Cut } from '#craft/cutting';
import { stripText } from '#paper/cutting';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';

export const cutText = ({ cut }: { readonly cut: Cut }, plan: QuiltPlan): string => {
  const { unit } = plan.quilt;
  const size = cut.size[0] === cut.size[1] ? lengthOnPaper(cut.size[0], unit) : sizeOnPaper(cut.size, unit);
  switch (cut.shape) {
    case 'half-square':
      return `half of a square ${size}`;
    case 'quarter-square':
      return `quarter of a square ${size}`;
    case 'angled':
      return cut.way
        ? `strip ${lengthOnPaper(cut.size[0], unit)}, ${stripText(cut.way, unit)}`
        : `strip ${lengthOnPaper(cut.size[0], unit)}`;
    case 'template':
      return `template, from ${size}`;
    default:
      // of units made together one piece of cloth gives several patches
      return cut.perSet !== undefined && cut.gives > 1
        ? `${cut.shape === 'square' ? 'square' : 'strip'} ${size} for ${cut.gives}`
        : `${cut.shape} ${size}`;
  }
};
