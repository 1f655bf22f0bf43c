// Line by line what each version comes to, and the difference in words.
import { quiltAddress, useQuilt } from '#workroom/room';
import type { Line } from './differences.ts';

export interface DifferenceTableOf {
  /** Null until both are planned. */
  readonly lines: readonly Line[] | null;
  /** One of them is gone or cannot be sewn, and was never planned: no lines will come. */
  readonly isWithout: boolean;
  readonly names: readonly [string, string];
  /** No layout is being looked for any more. */
  readonly isSettled: boolean;
  /** The two are one and the same. */
  readonly isOne: boolean;
}

export const DifferenceTable = ({ lines, names, isWithout, isSettled, isOne }: DifferenceTableOf) => {
  const { id } = useQuilt();
  const other = lines?.filter(({ isSame }) => !isSame).length ?? 0;
  return (
    <section className="differences" aria-label="Line by line">
      <p role="status">
        {lines !== null ? sumWords({ other, isOne }) : isWithout ? withoutWords(isOne) : 'Working both out …'}
      </p>
      {lines !== null && (
        <table>
          <thead>
            <tr>
              <td />
              <th scope="col">{names[0]}</th>
              <th scope="col">{names[1]}</th>
              <th scope="col">The second against the first</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two cloths may have one name
              <tr key={index} className={line.isSame ? 'is-same' : undefined}>
                <th scope="row">
                  {line.colour !== null && (
                    <span className="swatch" style={{ background: line.colour }} aria-hidden="true" />
                  )}
                  {line.name}
                </th>
                <td>{line.first}</td>
                <td>{line.second}</td>
                <td className="difference">{line.difference}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {!(lines === null && isWithout) && (
        <>
          <p className="quiet" role="status">
            {isSettled
              ? 'Time is an estimate of ours; cloth is what the best layouts take that were found.'
              : 'Layouts that take less cloth are still looked for: amounts may go down yet.'}
          </p>
          <p className="quiet">
            What cloth and batting cost is written in{' '}
            <a href={quiltAddress(id, 'finish', 'prices')}>Finish, under Prices</a>.
          </p>
        </>
      )}
    </section>
  );
};

const withoutWords = (isOne: boolean): string =>
  isOne
    ? 'There are no figures before it can be sewn: mend what is listed, or choose another.'
    : 'There are no figures to weigh before both can be sewn: mend what is listed, or choose another.';

const sumWords = ({ other, isOne }: { readonly other: number; readonly isOne: boolean }): string => {
  if (isOne) return 'Both are the same version: choose another to weigh it against.';
  return other === 0 ? 'In all these figures the two are the same.' : `They differ in ${other} of these lines.`;
};
