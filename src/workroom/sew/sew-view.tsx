// Sew: steps of a block and of the top, one after another.
import { useQuilt, type Within } from '#workroom/room';

export const SewView = ({ within: [entry] }: { readonly within: Within }) => {
  const { answer } = useQuilt();
  return (
    <ul aria-label="Blocks to sew">
      {answer?.picture.entries.map(({ id, title, colouring, mirror }) => (
        <li key={`${id} ${colouring} ${mirror}`} aria-current={id === entry ? 'true' : undefined}>
          {title}
        </li>
      ))}
    </ul>
  );
};
