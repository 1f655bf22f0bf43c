// What would move a purchase, in a few words: "42 in usable saves ⅛ yd".

import type { Unit } from '#craft/measure';
import type { PurchaseChange } from '#craft/shopping';
import { never } from '#ground/outcome';
import { amountText, lengthText, numberText } from './length-text.ts';

/** Words without a full stop, small letter first, for lists of them. */
export const changeText = (change: PurchaseChange, unit: Unit): string => {
  switch (change.code) {
    case 'shopping/usable-width':
      return `${lengthText(change.width, unit)} usable ${movesText(change)}`;
    case 'shopping/no-turning':
      return `with no piece turned it ${movesText(change)}`;
    case 'shopping/any-way':
      return `a print that may lie any way ${movesText(change)}`;
    case 'shopping/straight-ends':
      return `cloth with straight ends ${movesText(change)}`;
    case 'shopping/shrinkage':
      return change.share === 0
        ? `cloth that does not shrink ${movesText(change)}`
        : `with ${numberText(100 * change.share)} % for shrinkage it ${movesText(change)}`;
    case 'shopping/in-fat-quarters':
      return `${change.after.amount === 1 ? '1 fat quarter' : `${change.after.amount} fat quarters`} would do instead`;
    case 'shopping/by-length':
      return `${amountText(change.after.amount, change.after.unit)} of cloth ${lengthText(change.width, unit)} wide would do instead`;
    default:
      return never(change);
  }
};

const movesText = ({ difference, before, after }: PurchaseChange): string => {
  if (difference === null) return `takes ${amountText(after.amount, after.unit)}`;
  return difference < 0
    ? `saves ${amountText(-difference, before.unit)}`
    : `takes ${amountText(difference, before.unit)} more`;
};
