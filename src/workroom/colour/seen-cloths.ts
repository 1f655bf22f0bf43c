// The cloths of a quilt as they are looked at: in one of its colourways, with how light each is.
import type { QuiltDocument } from '#craft/design';
import { lightnessOf, lightnessSeen, parseColour, type Sight, type Value, valuesOf } from '#craft/fabric';

type Written = QuiltDocument['fabrics'][number];

export interface SeenCloth extends Pick<Written, 'id' | 'print' | 'photo'> {
  readonly name: string;
  /** #rrggbb. */
  readonly colour: string;
  /** CIE L*. */
  readonly lightness: number;
  /** Among all cloths of the quilt. */
  readonly value: Value;
  /** A colourway gives it another name, colour or photograph. */
  readonly isOwn: boolean;
}

/** @param colourway id of one of the quilt's; null: its own cloths */
export const seenCloths = (document: QuiltDocument, colourway: string | null): readonly SeenCloth[] => {
  const others = document.colourways?.find(({ id }) => id === colourway)?.fabrics ?? {};
  const cloths = document.fabrics.map((fabric) => {
    const other = others[fabric.id];
    const colour = fullColour(other?.colour ?? fabric.colour);
    // a photograph is of one colour of the cloth
    const photo = other?.photo ?? (other?.colour === undefined ? fabric.photo : undefined);
    const { id, print } = fabric;
    const name = other?.name || fabric.name || id;
    return { id, print, photo, name, colour, lightness: lightnessOf(colour), isOwn: other !== undefined };
  });
  const values = valuesOf(new Map(cloths.map(({ id, lightness }) => [id, lightness])));
  return cloths.map((cloth) => ({ ...cloth, value: values.get(cloth.id) ?? 'medium' }));
};

/** What a document holds may be wrong while one types: then it is shown in grey. */
const fullColour = (written: string): string => {
  const read = parseColour(written);
  return read.ok ? read.value : '#808080';
};

export const lightnessFor = (cloth: SeenCloth, sight: Sight | null): number =>
  sight === null ? cloth.lightness : lightnessSeen(cloth.colour, sight);
