// How large the top is: rows and columns of a straight set.
import { CountField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { resize, rowsOf, setOf } from './top-edits.ts';

/** More than anyone sews, and few enough to draw. */
const most = 60;

export const TopFields = () => {
  const { document, answer, words, edit } = useQuilt();
  const picture = answer?.picture ?? null;
  const { top } = document;
  const rows = rowsOf(top, picture);
  const size = top.arrangement ?? (rows === null ? null : { rows: rows.length, columns: rows[0]?.length ?? 0 });
  const become = (to: { rows: number; columns: number }) =>
    edit('Resize the top', (draft) => resize(draft.top, { ...to, picture }));
  return (
    <section>
      <h2>The top</h2>
      {size !== null ? (
        <div className="pair">
          <CountField
            label="Rows"
            value={size.rows}
            least={1}
            most={most}
            onChange={(count) => become({ rows: count, columns: size.columns })}
          />
          <CountField
            label="Columns"
            value={size.columns}
            least={1}
            most={most}
            onChange={(count) => become({ rows: size.rows, columns: count })}
          />
        </div>
      ) : (
        <p className="quiet">{setWords[setOf(top)]}</p>
      )}
      {answer !== null && (
        <dl className="facts">
          <dt>Finished</dt>
          <dd>{words.size(answer.figures.top)}</dd>
        </dl>
      )}
    </section>
  );
};

const setWords = {
  straight: 'Set straight, in rows and columns.',
  'on-point': 'Set on point, with setting triangles. An arrangement below makes a straight set of it.',
  sections: 'Set in sections. An arrangement below makes a straight set of it.',
} as const;
