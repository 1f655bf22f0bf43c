// Compare: two versions of the quilt side by side.
import { useQuilt } from '#workroom/room';

export const CompareView = () => {
  const { answer, words } = useQuilt();
  return <p>{answer === null ? '…' : words.size(answer.figures.top)}</p>;
};
