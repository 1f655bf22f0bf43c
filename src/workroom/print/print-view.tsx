// Print: the pattern, and files to take along.
import { useQuilt } from '#workroom/room';

export const PrintView = () => {
  const { document } = useQuilt();
  return <p>{document.title}</p>;
};
