// The drafting table in the middle: tools above, the drawing under the hand.
import { useMemo } from 'react';
import type { Drawn } from '#craft/redrawing';
import { arcWithRise, chordPoints, pointOnArc } from '#ground/arc';
import { at, type Point } from '#ground/plane';
import type { BlockAnswer } from '#workroom/compute';
import { DrawingView, type HandOf, patchKey, patchOfKey, type SeveralOf } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { pointsOf } from './drawing-edits.ts';
import { sceneOfDrawn } from './drawn-scene.ts';
import { keptOn, outlineOfLaid } from './laid-shapes.ts';
import { LayingKeys } from './laying-keys.tsx';
import { placeText } from './place-text.ts';
import { overTable } from './table-over.ts';
import { type Tool, toolWords } from './use-hand.ts';
import type { TableState } from './use-table.ts';

export interface DraftingTableOf {
  readonly block: Block;
  readonly table: TableState;
  /** Finished, without a frame. */
  readonly size: readonly [number, number];
  /** What follows from the block as it stands; null where it does not tile. */
  readonly answer: BlockAnswer | null;
  /** Lines that would let straight seams alone join it, on the grid. */
  readonly advised: readonly (readonly Point[])[];
}

/** How near the pointer must come to a corner or a seam, in CSS pixels; our own figure. */
const reachPx = 16;
const shortWords: Readonly<Record<Tool, string>> = {
  choose: 'Choose',
  move: 'Move',
  rule: 'Seam',
  curve: 'Curve',
  lay: 'Patch',
};
const tools: readonly Tool[] = ['choose', 'move', 'rule', 'curve', 'lay'];

export const DraftingTable = ({ block, table, size, answer, advised }: DraftingTableOf) => {
  const { document, words } = useQuilt();
  const { drawn, tool } = table;
  const title = block.title || block.id;
  const scene = useMemo(
    () =>
      drawn === null
        ? null
        : sceneOfDrawn({ drawn, block, size, fabrics: document.fabrics, answer, sizeWords: words.size }),
    [drawn, block, size, document.fabrics, answer, words],
  );
  const { parts, answer: told, chosen, run, over: pointer, cursor, laying, curve } = table;
  const { held, marks } = curve;
  const over = useMemo(() => {
    if (drawn === null) return undefined;
    const here = pointer ?? cursor;
    // patches that are moved show themselves where they stand: the hand is where the pointer is
    const isSeen = tool !== 'choose' && (tool !== 'move' || pointer !== null);
    return overTable(
      shownOver({ drawn, size, tool, parts, told, chosen, run, here, isSeen, laying, advised, held, marks }),
    );
  }, [drawn, size, tool, parts, told, chosen, run, pointer, cursor, laying, advised, held, marks]);
  if (scene === null || drawn === null) return null;
  const scale = [size[0] / drawn.grid[0], size[1] / drawn.grid[1]] as const;
  const onGrid = ([x, y]: readonly [number, number]): Point => at(x / scale[0], y / scale[1]);
  const reachAt = (pixels: number): number => reachPx / (pixels * Math.min(...scale));
  const hand: HandOf | undefined =
    tool === 'choose'
      ? undefined
      : {
          label: `${toolWords[tool]} on the block ${title}: at ${placeText(table.cursor)}`,
          onTap: (point, pixels) => table.tap(onGrid(point), reachAt(pixels)),
          onOver: (point, pixels) => table.hover(point === null ? null : onGrid(point), reachAt(pixels)),
          onKey: table.key,
          onGrab: (point, pixels) => table.grab(onGrid(point), reachAt(pixels)),
        };
  const several: SeveralOf = {
    keys: new Set(table.isSeveral ? table.chosen.map(patchKey) : []),
    taps: table.taps,
    onToggle: (key) => table.toggle(patchOfKey(key)),
    onExtend: (key) => table.extend(patchOfKey(key)),
  };
  return (
    <>
      <div className="table-tools">
        <ChoiceKeys
          label="What the hand does"
          choices={tools.map((value) => ({ value, words: shortWords[value], spoken: toolWords[value] }))}
          value={tool}
          onChoose={table.take}
        />
        {tool === 'lay' && <LayingKeys table={table} />}
        <p className="table-word" role="status">
          {table.word}
        </p>
      </div>
      <DrawingView
        scene={scene}
        label={`The block ${title}, ${words.size(size)}`}
        chosen={table.mark === null ? null : patchKey(table.mark)}
        onChoose={(key) => table.choose(key === null ? null : patchOfKey(key))}
        several={several}
        {...(over === undefined ? {} : { over })}
        {...(hand === undefined ? {} : { hand })}
      />
    </>
  );
};

interface Shown extends Pick<TableState, 'tool' | 'parts' | 'chosen' | 'run' | 'laying'> {
  readonly drawn: Drawn;
  readonly size: readonly [number, number];
  readonly told: TableState['answer'];
  readonly here: Point;
  readonly isSeen: boolean;
  readonly advised: DraftingTableOf['advised'];
  readonly held: TableState['curve']['held'];
  readonly marks: TableState['curve']['marks'];
}

const shownOver = (shown: Shown): Parameters<typeof overTable>[0] => {
  const { drawn, size, tool, parts, told, run, here, isSeen, laying, chosen } = shown;
  return {
    drawn,
    size,
    parts,
    grid: tool === 'choose' ? 'faint' : 'shown',
    bare: told?.bare.map(pointsOf) ?? [],
    double: told?.double.map(pointsOf) ?? [],
    advised: shown.advised,
    chosen: tool === 'move' ? chosen.flatMap((index) => [drawn.patches[index]?.points ?? []]) : [],
    run,
    marks: [...run, ...shown.marks, ...(shown.held === null ? [] : curveShown(shown.held).middle)],
    next: nextOf({
      tool,
      here,
      run: [...run, ...shown.marks],
      held: shown.held,
      laid: tool === 'lay' ? outlineOfLaid(laying, keptOn(drawn.grid, laying, here)) : null,
    }),
    isClosed: tool === 'lay' && (laying.shape !== 'corners' || run.length > 1),
    cursor: isSeen && shown.held === null ? here : null,
  };
};

const nextOf = (of: {
  readonly tool: Tool;
  readonly here: Point;
  readonly run: readonly Point[];
  readonly laid: readonly Point[] | null;
  readonly held: Shown['held'];
}): readonly Point[] => {
  const { tool, here, run, laid, held } = of;
  if (laid !== null) return laid;
  if (held !== null) return curveShown(held).line;
  if (tool === 'rule' || tool === 'curve') return [...run.slice(-1), here];
  return tool === 'lay' ? [...run, here] : [];
};

/** Chords that cannot be told from a curve on any screen, and its middle, where one takes hold of it. */
const curveShown = ({ from, to, rise }: NonNullable<Shown['held']>) => {
  if (Math.abs(rise) < 1e-6) return { line: [from, to], middle: [at((from.x + to.x) / 2, (from.y + to.y) / 2)] };
  const arc = arcWithRise({ from, to, rise });
  return { line: [from, ...chordPoints(arc, Math.abs(rise) / 500), to], middle: [pointOnArc(arc, 0.5)] };
};
