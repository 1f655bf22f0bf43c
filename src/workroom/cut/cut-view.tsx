// Cut: each cloth unrolled.
import { useLook, useQuilt, type Within } from '#workroom/room';

const all = {};

export const CutView = ({ within: [cloth] }: { readonly within: Within }) => {
  const { words } = useQuilt();
  const cloths = useLook('cloths', all);
  return (
    <ul aria-label="Cloths">
      {cloths?.map(({ id, name, width, length }) => (
        <li key={id} aria-current={id === cloth ? 'true' : undefined}>
          {name}: {words.length(width)} wide, {words.length(length)} long
        </li>
      ))}
    </ul>
  );
};
