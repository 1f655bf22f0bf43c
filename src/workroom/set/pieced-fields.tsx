// A pieced border: of which block, with which spacer, and the lengths at which it fits as keys with their figures.
import { usualSewing } from '#craft/measure';
import { toNumber } from '#ground/exact';
import type { Measured } from '#workroom/compute';
import { ClothField } from '#workroom/fields';
import { borderWords, type LengthWords, useBlockName, useQuilt, useRoom } from '#workroom/room';
import {
  type Fit,
  fitAsItIs,
  fitBlock,
  fitMark,
  fitsNear,
  isPieced,
  isStrip,
  type PiecedBorder,
  stripBefore,
} from './border-edits.ts';
import { inUnit, writtenLength } from './written-length.ts';

export interface PiecedFieldsOf {
  readonly border: PiecedBorder;
  readonly index: number;
  readonly count: number;
  readonly measured: Measured;
}

/** Keys beside its own size. */
const shown = 3;

export const PiecedFields = ({ border, index, count, measured }: PiecedFieldsOf) => {
  const { document, edit } = useQuilt();
  const { fabrics, blocks } = document;
  const nameOf = useBlockName();
  const { block, spacer } = border.pieced;
  const change = (to: (border: PiecedBorder) => void) =>
    edit('Change a border', (draft) => {
      const own = draft.top.borders?.[index];
      if (isPieced(own)) to(own);
    });
  return (
    <>
      <label className="field">
        <span>{borderWords(index + 1, count)}, pieced of</span>
        <select
          value={block}
          onChange={(event) => {
            const { value } = event.target;
            change((draft) => void Object.assign(draft.pieced, { block: value }));
          }}
        >
          {blocks.map(({ id }) => (
            <option key={id} value={id}>
              {nameOf(id)}
            </option>
          ))}
        </select>
      </label>
      <ClothField
        label="Spacers and plain corners"
        fabrics={fabrics}
        value={spacer ?? null}
        none="none"
        onChange={(id) =>
          change((draft) => {
            if (id === null) delete draft.pieced.spacer;
            else draft.pieced.spacer = id;
          })
        }
      />
      <FitKeys border={border} index={index} count={count} measured={measured} />
    </>
  );
};

const FitKeys = ({ border, index, measured }: PiecedFieldsOf) => {
  const { document, edit, words } = useQuilt();
  const { say } = useRoom();
  const { unit, top, blocks } = document;
  const sides = measured.rings[index];
  const own = measured.blocks.find(({ id }) => id === border.pieced.block);
  if (sides === undefined || own === undefined) return null;
  const [along] = own.size;
  const mark = fitMark[unit];
  // its height falls on a mark too where it is so many times as long
  const heights = Math.max(1, Math.round(along / own.size[1]));
  const seam = inUnit(document.seam ?? '', unit) ?? toNumber(usualSewing[unit].seam);
  const asItIs = fitAsItIs({ sides, along, seam });
  const block = blocks.find(({ id }) => id === own.id);
  const canChange = block?.size !== undefined && block.frame === undefined;
  const fits = canChange
    ? fitsNear({ sides, near: along, mark: mark * heights }).filter(({ along: one }) => one !== along)
    : [];
  const inside = top.borders?.[index - 1];
  const around = measured.rings[index - 1];
  const isFitting = asItIs.spacer.every((width) => width === 0);
  const width = isStrip(inside) && around !== undefined ? (sides[0] - around[0]) / 2 : null;
  const before =
    isFitting || width === null || around === undefined ? null : stripBefore({ sides: around, width, along, mark });
  return (
    <>
      <p className="quiet">{fitWords(asItIs, words)}</p>
      {(fits.length > 0 || before !== null) && (
        <fieldset className="choose-keys">
          <legend>{isFitting ? 'Others that fit' : 'Make it fit'}</legend>
          {before !== null && (
            <button
              type="button"
              onClick={() => {
                edit('Make the pieced border fit', (draft) => {
                  const strip = draft.top.borders?.[index - 1];
                  if (isStrip(strip)) strip.width = writtenLength(before);
                });
                say('It fits without a spacer');
              }}
            >
              the strip inside it {words.length(before)} wide
            </button>
          )}
          {fits.slice(0, shown).map((fit) => (
            <button
              key={fit.along}
              type="button"
              onClick={() => {
                edit('Make the pieced border fit', (draft) =>
                  fitBlock(draft, { index, along: fit.along, size: own.size }),
                );
                say(fitWords(fit, words));
              }}
            >
              {words.length(fit.along)} long, {fit.counts[0]} × {fit.counts[1]}
            </button>
          ))}
        </fieldset>
      )}
    </>
  );
};

const fitWords = ({ along, counts, spacer }: Fit, words: LengthWords): string => {
  const blocks = `${counts[0]} along the top, ${counts[1]} along a side, each ${words.length(along)} long`;
  const [sides, ends] = spacer;
  if (sides === 0 && ends === 0) return `${blocks}.`;
  return `${blocks}; spacers ${words.length(sides)} at the sides, ${words.length(ends)} at top and bottom.`;
};
