// What stands in the way, where, and how to mend it: said once, in the words that the pages and the command line use.
import type { QuiltDocument } from '#craft/design';
import type { WorkroomProblem } from '#workroom/compute';
import { quiltAddress, type Stop } from './address.ts';
import { placeStop } from './place-stop.ts';
import { placeWords } from './place-words.ts';

export interface ProblemsOf {
  readonly problems: readonly WorkroomProblem[];
  readonly more?: number;
  /** The quilt that they are of: places are then told in its words, not as in its file. */
  readonly document?: QuiltDocument;
  /** Where they are looked at: the view that mends one is told as a way there, unless one is there. */
  readonly from?: { readonly id: string; readonly stop: Stop };
}

export const Problems = ({ problems, more = 0, document, from }: ProblemsOf) => (
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
        {where !== '' && (
          <p className="quiet">
            {document === undefined ? where : <Place where={where} document={document} from={from} />}
          </p>
        )}
      </li>
    ))}
    {more > 0 && <li className="quiet">and {more} more</li>}
  </ul>
);

const Place = (of: { readonly where: string; readonly document: QuiltDocument; readonly from: ProblemsOf['from'] }) => {
  const { where, document, from } = of;
  const words = placeWords(where, document);
  const to = placeStop(where, document.blocks);
  // where one stands there already, it still leads to the block or the part
  const isHere = to !== null && to.stop === from?.stop && to.within.length === 0;
  return from === undefined || to === null || isHere ? (
    words
  ) : (
    <a href={quiltAddress(from.id, to.stop, ...to.within)}>{words}</a>
  );
};
