// What stands in the way, where, and how to mend it: said once, in the words that the pages and the command line use.
import type { WorkroomProblem } from '#workroom/compute';

export const Problems = ({
  problems,
  more = 0,
}: {
  readonly problems: readonly WorkroomProblem[];
  readonly more?: number;
}) => (
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
        <p className="quiet">{where}</p>
      </li>
    ))}
    {more > 0 && <li className="quiet">and {more} more</li>}
  </ul>
);
