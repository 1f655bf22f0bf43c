// The hand on the table: which tool it holds, where it stands, and what a tap or a key does there.
import { useEffect, useMemo, useState } from 'react';
import { chosenBox, cutAlong, laidOn, movedBy, slackOf } from '#craft/redrawing';
import { clockwise, isNear, outlineFault } from '#ground/outline';
import { at, type Point } from '#ground/plane';
import { countWords, useRoom } from '#workroom/room';
import { fittedOn, keptOn, type Laying, outlineOfLaid } from './laid-shapes.ts';
import { placeText } from './place-text.ts';
import { type Arrow, cornersOf, isArrow, isOnSeam, snapped, steppedFrom, type Table } from './snap.ts';
import type { ChosenPatchesState } from './use-chosen-patches.ts';
import { type CurveInHand, useCurve } from './use-curve.ts';
import type { Redrawing } from './use-redrawing.ts';

export type Tool = 'choose' | 'move' | 'rule' | 'curve' | 'lay';

export const toolWords: Readonly<Record<Tool, string>> = {
  choose: 'Choose patches',
  move: 'Move patches',
  rule: 'Rule a seam',
  curve: 'Lay a curve',
  lay: 'Lay a patch',
};

export interface Hand {
  readonly tool: Tool;
  readonly take: (tool: Tool) => void;
  /** Into so many parts a square is divided. */
  readonly parts: number;
  readonly divide: (parts: number) => void;
  readonly laying: Laying;
  readonly lay: (laying: Laying) => void;
  /** Where it stands, and where the pointer is. */
  readonly cursor: Point;
  readonly over: Point | null;
  /** Points of a seam or a patch that is not ended yet. */
  readonly run: readonly Point[];
  readonly letGo: () => void;
  /** What the hand holds of a curve. */
  readonly curve: CurveInHand;
  /** Does at a place what the tool is for. */
  readonly pointAt: (point: Point) => void;
  readonly goTo: (point: Point) => void;
  /** @param reach how near a corner or a seam must lie, in squares */
  readonly hover: (point: Point | null, reach: number) => void;
  readonly tap: (point: Point, reach: number) => void;
  /** A pointer is drawn on from a place. @returns whether the hand holds something there */
  readonly grab: (point: Point, reach: number) => boolean;
  /** @returns whether the key was for it */
  readonly key: (key: string) => boolean;
  readonly toCorner: (ahead: 1 | -1) => void;
}

export const useHand = (redrawing: Redrawing, { chosen, choose }: ChosenPatchesState): Hand => {
  const { id, drawn, tone, put, tell, done } = redrawing;
  const { say } = useRoom();
  const [tool, setTool] = useState<Tool>('choose');
  const [parts, divide] = useState(1);
  const [wished, setLaying] = useState<Laying>({ shape: 'square', across: 1, down: 1, turn: 0 });
  const [cursor, setCursor] = useState<Point>(at(0, 0));
  const [over, setOver] = useState<Point | null>(null);
  const [run, setRun] = useState<readonly Point[]>([]);
  const curve = useCurve(redrawing);
  const grid = drawn?.grid.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it holds belongs to the block, and to the grid, that was left
  useEffect(() => {
    setRun([]);
    setOver(null);
    setCursor(at(0, 0));
  }, [id, grid]);
  const laying = useMemo(() => (drawn === null ? wished : fittedOn(drawn.grid, wished)), [drawn, wished]);
  const table = useMemo((): Table | null => (drawn === null ? null : { drawn, parts }), [drawn, parts]);
  const slack = drawn === null ? 0 : slackOf(drawn.grid);

  const beginSeam = (p: Point): void => {
    if (drawn === null || !isOnSeam(p, drawn)) {
      tell('A seam begins on another seam, or on the edge of the block.');
      return;
    }
    setRun([p]);
    done(`The seam begins at ${placeText(p)}. Lead it to another seam or to the edge.`);
  };
  const rule = (p: Point): void => {
    const last = run.at(-1);
    if (drawn === null || last === undefined) {
      beginSeam(p);
      return;
    }
    if (isNear(p, last, slack)) return;
    const whole = [...run, p];
    if (!isOnSeam(p, drawn)) {
      setRun(whole);
      done(`The seam bends at ${placeText(p)}. Lead it on to another seam or to the edge.`);
      return;
    }
    setRun([]);
    const cut = cutAlong(drawn.patches, whole, slack);
    if (cut.divided === 0)
      tell('Nothing is divided there. To take a seam out, choose the patches on both sides of it.');
    else if (put('Rule a seam', { patches: cut.patches, seams: { ruled: cut.ruled } })) {
      choose(null);
      done(`A seam is ruled; it divides ${countWords(cut.divided, 'patch', 'patches')}.`);
    }
  };
  const layPatch = (points: readonly Point[]): void => {
    if (drawn === null) return;
    const patches = laidOn(drawn.patches, { points: clockwise(points), tone }, slack);
    if (!put('Lay a patch', { patches }) || patches === null) return;
    choose(patches.length - 1, [patches.length - 1]);
    done(`A patch is laid; there are ${countWords(patches.length, 'patch', 'patches')} now.`);
  };
  const setCorner = (p: Point): void => {
    const isClosed = run.length > 2 && [run[0], run.at(-1)].some((end) => end !== undefined && isNear(end, p, slack));
    if (!isClosed) {
      if (run.some((one) => isNear(one, p, slack))) return;
      setRun([...run, p]);
      done(`Corner ${run.length + 1} at ${placeText(p)}.`);
      return;
    }
    setRun([]);
    if (outlineFault(run, slack) === null) layPatch(run);
    else tell('Its sides cross, or it has no room in it: give the corners in order round it.');
  };
  const layAt = (p: Point): void => {
    const points = drawn === null ? null : outlineOfLaid(laying, keptOn(drawn.grid, laying, p));
    if (points === null) setCorner(p);
    else layPatch(points);
  };
  const moveTo = (p: Point): void => {
    if (drawn === null) return;
    if (chosen.length === 0) {
      tell('Choose the patches first; then they can be moved.');
      return;
    }
    const box = chosenBox(drawn.patches, chosen);
    const patches = movedBy(drawn, chosen, [p.x - box.x, p.y - box.y]);
    const to = chosenBox(patches, chosen);
    if (Math.abs(to.x - box.x) + Math.abs(to.y - box.y) < slack) return;
    if (put('Move patches', { patches })) done(`Moved to ${placeText(at(to.x, to.y))}.`);
  };
  const pointAt = (p: Point): void => {
    setCursor(p);
    if (tool === 'rule') rule(p);
    else if (tool === 'move') moveTo(p);
    else if (tool === 'lay') layAt(p);
    else if (tool === 'curve' && curve.held === null) curve.mark(p);
    else if (tool === 'curve') curve.lay();
  };

  const goTo = (p: Point): void => {
    setCursor(p);
    setOver(null);
    say(`${placeText(p)}${drawn !== null && isOnSeam(p, drawn) ? ', on a seam or the edge' : ''}`);
  };
  /** A shape is laid with its upper left corner on the lines above and left of the pointer. */
  const placeFor = (p: Point, reach: number): Point => {
    if (table === null) return p;
    if (tool !== 'lay' || laying.shape === 'corners') return snapped(p, table, reach);
    const above = at(Math.floor(p.x * parts + 1e-9) / parts, Math.floor(p.y * parts + 1e-9) / parts);
    return keptOn(table.drawn.grid, laying, above);
  };
  const walk = (arrow: Arrow): void => {
    if (table === null) return;
    if (tool === 'curve' && curve.held !== null) {
      curve.step(arrow, parts);
      return;
    }
    if (tool !== 'move' || chosen.length === 0) {
      goTo(steppedFrom(cursor, arrow, table));
      return;
    }
    const box = chosenBox(table.drawn.patches, chosen);
    const [dx, dy] = ways[arrow];
    moveTo(at(box.x + dx / parts, box.y + dy / parts));
  };
  const letGo = (): void => {
    setRun([]);
    curve.letGo();
  };
  const take = (to: Tool): void => {
    setTool(to);
    setRun([]);
    curve.letGo();
    setOver(null);
    done(toolWords[to]);
  };
  return {
    tool,
    take,
    parts,
    divide,
    laying,
    lay: (to) => {
      setLaying(to);
      setRun([]);
    },
    cursor,
    over,
    run,
    curve,
    letGo,
    pointAt,
    goTo,
    hover: (p, reach) => {
      if (tool === 'curve' && p !== null) curve.through(p, { parts, reach });
      const place = p === null ? null : placeFor(p, reach);
      setOver((was) => (was !== null && place !== null && was.x === place.x && was.y === place.y ? was : place));
    },
    tap: (p, reach) => {
      const through = tool === 'curve' ? curve.through(p, { parts, reach }) : null;
      if (through === null) pointAt(placeFor(p, reach));
      else curve.lay(through);
    },
    grab: (p, reach) => {
      if (tool !== 'curve' || drawn === null) return false;
      if (curve.held !== null) return true;
      const place = placeFor(p, reach);
      return isNear(place, p, reach) && curve.takeEdge(place);
    },
    key: (pressed) => {
      if (isArrow(pressed)) walk(pressed);
      else if (pressed === 'Enter' || pressed === ' ') pointAt(cursor);
      else if (pressed === 'Backspace' && curve.marks.length > 0) curve.back();
      else if (pressed === 'Backspace' && run.length > 0) setRun(run.slice(0, -1));
      else if (pressed === 'Escape' && run.length + curve.marks.length > 0) letGo();
      else if (pressed === 'Escape') take('choose');
      else return false;
      return true;
    },
    toCorner: (ahead) => {
      if (drawn === null) return;
      const corners = cornersOf(drawn);
      const here = corners.findIndex((p) => isNear(p, cursor, slack));
      // from between corners the first, or the last, is next
      const from = here < 0 && ahead < 0 ? 0 : here;
      const next = corners[(from + ahead + corners.length) % corners.length];
      if (next !== undefined) goTo(next);
    },
  };
};

const ways: Readonly<Record<Arrow, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
