// Where in the workroom something is mended: the view that holds it, by its place in the document.
import type { QuiltDocument } from '#craft/design';
import type { Stop } from './address.ts';

/** Null where no view holds it, as the seam allowance of the whole quilt. */
export const placeStop = (
  where: string,
  blocks: readonly Pick<QuiltDocument['blocks'][number], 'id'>[],
): { readonly stop: Stop; readonly within: readonly string[] } | null => {
  const [part = '', nth = ''] = where.replace(/^\//, '').split('/');
  switch (part) {
    case 'blocks': {
      const block = blocks[Number(nth)]?.id;
      return { stop: 'draft', within: nth === '' || block === undefined ? [] : [block] };
    }
    case 'fabrics':
    case 'colourways':
      return { stop: 'colour', within: [] };
    case 'top':
      return { stop: 'set', within: [] };
    case 'finish':
      return { stop: 'finish', within: nth === '' ? [] : [nth] };
    default:
      return null;
  }
};
