// What stands in the way, where, and how to mend it: said once, in the words that the pages and the command line use.
import type { QuiltDocument } from '#craft/design';
import type { WorkroomProblem } from '#workroom/compute';
import { placeWords } from './place-words.ts';

export interface ProblemsOf {
  readonly problems: readonly WorkroomProblem[];
  readonly more?: number;
  /** The quilt that they are of: places are then told in its words, not as in its file. */
  readonly document?: QuiltDocument;
}

export const Problems = ({ problems, more = 0, document }: ProblemsOf) => (
  <ul className="problems">
    {problems.map(({ where, what, mend }) => (
      <li key={`${where} ${what}`}>
        <p>
          <span className="problem-mark" aria-hidden="true">
            ◆
          </span>
          {what}
        </p>
        <p>{mend}</p>
        <p className="quiet">{document === undefined ? where : placeWords(where, document)}</p>
      </li>
    ))}
    {more > 0 && <li className="quiet">and {more} more</li>}
  </ul>
);
