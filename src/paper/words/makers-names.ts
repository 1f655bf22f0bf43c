// Problems and notes name blocks and cloths by their ids in the document; a maker knows them by the names that she gave them,
// or the collection did.
import { collectionBlock } from '#craft/collection';

/** The ids in a problem or a note. */
interface Naming {
  readonly block?: string | null;
  readonly other?: string;
  readonly fabric?: string;
  readonly fabrics?: readonly string[];
}

/**
 * @param document  may be faulty: where a name cannot be read, the id stays
 * @returns puts names in the place of ids, before words are made of a problem or a note
 */
export const makersNames = (document: unknown): (<T extends object>(told: T) => T) => {
  const blocks = namesIn(
    document,
    'blocks',
    ({ title, from }) => title || (isText(from) && collectionBlock(from)?.name),
  );
  const cloths = namesIn(document, 'fabrics', ({ name }) => name);
  const clothOf = (id: string): string => cloths.get(id) ?? id;
  return (told) => {
    const { block, other, fabric, fabrics }: Naming = told;
    return {
      ...told,
      ...(typeof block === 'string' && { block: blocks.get(block) ?? block }),
      ...(typeof other === 'string' && { other: blocks.get(other) ?? other }),
      ...(typeof fabric === 'string' && { fabric: clothOf(fabric) }),
      ...(Array.isArray(fabrics) && { fabrics: fabrics.map(clothOf) }),
    };
  };
};

type Entry = Readonly<Record<string, unknown>>;

/** Only names that tell one from another: of two that are called alike the ids stay. */
const namesIn = (
  document: unknown,
  list: 'blocks' | 'fabrics',
  nameOf: (entry: Entry) => unknown,
): ReadonlyMap<string, string> => {
  const entries = isObject(document) && Array.isArray(document[list]) ? document[list].filter(isObject) : [];
  const names = entries.map(nameOf);
  const isOwn = (name: unknown): name is string =>
    isText(name) && name !== '' && names.indexOf(name) === names.lastIndexOf(name);
  return new Map(
    entries.flatMap(({ id }, i) => {
      const name = names[i];
      return isText(id) && isOwn(name) ? [[id, name] as const] : [];
    }),
  );
};

const isText = (value: unknown): value is string => typeof value === 'string';

const isObject = (value: unknown): value is Entry => typeof value === 'object' && value !== null;
