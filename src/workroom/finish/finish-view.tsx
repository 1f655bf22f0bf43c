// Finish: what goes round the quilt, and what lies under it.
import { useQuilt } from '#workroom/room';

export const FinishView = () => {
  const { answer, words } = useQuilt();
  const backing = answer?.figures.backing ?? null;
  return <p>{backing === null ? 'The quilt has no backing yet.' : `Backing ${words.size(backing)}`}</p>;
};
