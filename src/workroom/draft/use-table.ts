// The drafting table: what the hand does on a block's drawing, and what is chosen on it. Every gesture is one edit.
import { useCallback, useEffect, useMemo, useState } from 'react';
import {
  chosenBox,
  cutAlong,
  type Drawn,
  type DrawnPatch,
  isNear,
  joined,
  laidOn,
  mirroredIn,
  movedBy,
  type Repeating,
  repeatedBy,
  repeatedRound,
  seamsBetween,
  slackOf,
  turnedIn,
} from '#craft/redrawing';
import { at, type Point, signedArea } from '#ground/plane';
import type { JsonObject } from '#workroom/editing';
import { countWords, useQuilt, useRoom } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { pointsOf, putPatches, putSeams, type Reseamed, regridded, regridSeams } from './drawing-edits.ts';
import { keptOn, type Laying, outlineOfLaid } from './laid-shapes.ts';
import { placeText } from './place-text.ts';
import { type Arrow, cornersOf, isArrow, isOnSeam, snapped, steppedFrom, type Table } from './snap.ts';
import { type ToneChoice, toneChoices, usualTone } from './tones.ts';
import { type DrawnState, useDrawn } from './use-drawn.ts';

export type Tool = 'choose' | 'move' | 'rule' | 'lay';

export interface TableState extends DrawnState {
  readonly tool: Tool;
  readonly take: (tool: Tool) => void;
  readonly parts: number;
  readonly divide: (parts: number) => void;
  readonly laying: Laying;
  readonly lay: (laying: Laying) => void;
  /** What can be laid, and what is. */
  readonly tones: readonly ToneChoice[];
  readonly tone: string;
  readonly takeTone: (tone: string) => void;
  /** Where the hand stands, and where the pointer is. */
  readonly cursor: Point;
  readonly over: Point | null;
  /** Points of a seam or a patch that is not ended yet. */
  readonly run: readonly Point[];
  readonly chosen: readonly number[];
  readonly mark: number | null;
  readonly isSeveral: boolean;
  readonly taps: 'choose' | 'add';
  readonly tapTo: (taps: 'choose' | 'add') => void;
  readonly choose: (mark: number | null, more?: readonly number[]) => void;
  readonly toggle: (index: number) => void;
  readonly extend: (index: number) => void;
  /** What the last gesture came to, where it came to nothing. */
  readonly word: string;
  readonly pointAt: (point: Point) => void;
  readonly goTo: (point: Point) => void;
  readonly hover: (point: Point | null, reach: number) => void;
  readonly tap: (point: Point, reach: number) => void;
  readonly key: (key: string) => boolean;
  readonly toCorner: (ahead: 1 | -1) => void;
  readonly mirror: (way: 'left-right' | 'top-bottom') => void;
  readonly turn: () => void;
  readonly takeOut: () => void;
  readonly join: () => void;
  readonly colour: (tone: string) => void;
  readonly repeat: (repeating: Repeating | 'round') => void;
  readonly regrid: (grid: Drawn['grid']) => void;
  readonly fill: () => void;
  readonly trim: () => void;
}

export const useTable = (block: Block | undefined, asked: JsonObject): TableState => {
  const state = useDrawn(block, asked);
  const { drawn, answer, isFresh } = state;
  const { edit, document } = useQuilt();
  const { say } = useRoom();
  const [tool, setTool] = useState<Tool>('choose');
  const [parts, divide] = useState(1);
  const [laying, setLaying] = useState<Laying>({ shape: 'square', across: 1, down: 1, turn: 0 });
  const [wished, takeTone] = useState('');
  const [cursor, setCursor] = useState<Point>(at(0, 0));
  const [over, setOver] = useState<Point | null>(null);
  const [run, setRun] = useState<readonly Point[]>([]);
  const [mark, setMark] = useState<number | null>(null);
  const [more, setMore] = useState<readonly number[]>([]);
  const [taps, tapTo] = useState<'choose' | 'add'>('choose');
  const [word, setWord] = useState('');
  const id = block?.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the hand holds belongs to the block that was left
  useEffect(() => {
    setRun([]);
    setMark(null);
    setMore([]);
    setWord('');
    setOver(null);
    setCursor(at(0, 0));
    takeTone('');
  }, [id]);

  const count = drawn?.patches.length ?? 0;
  const chosen = useMemo(() => {
    const all = more.length > 0 ? more : mark === null ? [] : [mark];
    return all.filter((index) => index < count);
  }, [more, mark, count]);
  const table = useMemo((): Table | null => (drawn === null ? null : { drawn, parts }), [drawn, parts]);

  const tones = useMemo(
    () => (block === undefined || drawn === null ? [] : toneChoices(block, drawn, document.fabrics)),
    [block, drawn, document.fabrics],
  );
  const isKnown = tones.some(({ tone: known }) => known === wished);
  const tone = isKnown || drawn === null ? wished : usualTone(tones, drawn);

  const tell = useCallback(
    (words: string) => {
      setWord(words);
      say(words);
    },
    [say],
  );
  const done = useCallback(
    (words: string) => {
      setWord('');
      say(words);
    },
    [say],
  );
  const choose = useCallback(
    (to: number | null, many: readonly number[] = []) => {
      setMark(to);
      if (many.length > 0 || taps === 'choose' || to === null) setMore(many);
      setWord('');
    },
    [taps],
  );

  /** The patches become these; a block drawn by its seams stays one where seams say it all. */
  const put = useCallback(
    (what: string, to: { readonly patches: readonly DrawnPatch[]; readonly seams?: Partial<Reseamed> }): boolean => {
      if (drawn === null || id === undefined) return false;
      if (!isFresh) {
        tell('One moment: the drawing is still being worked out. Then do it again.');
        return false;
      }
      if (to.patches.length === 0) {
        tell('A block has one patch at least: lay another before this one is taken out.');
        return false;
      }
      edit(what, (draft) => {
        const own = draft.blocks.find((one) => one.id === id);
        if (own === undefined) return;
        if (own.drawing !== undefined && to.seams !== undefined)
          putSeams(own.drawing, { grid: drawn.grid, patches: to.patches, ...to.seams });
        else putPatches(own, { before: drawn, patches: to.patches, colourings: answer?.colourings ?? {} });
      });
      return true;
    },
    [drawn, answer, isFresh, id, edit, tell],
  );

  const rule = useCallback(
    (p: Point) => {
      if (drawn === null) return;
      const slack = slackOf(drawn.grid);
      const last = run.at(-1);
      if (last === undefined) {
        if (!isOnSeam(p, drawn)) tell('A seam begins on another seam, or on the edge of the block.');
        else {
          setRun([p]);
          done(`The seam begins at ${placeText(p)}. Lead it to another seam or to the edge.`);
        }
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
      if (cut.divided === 0) tell('Nothing is divided there: a seam lies there already, or it leads along the edge.');
      else if (put('Rule a seam', { patches: cut.patches, seams: { ruled: whole } })) {
        setMark(null);
        setMore([]);
        done(`A seam is ruled; it divides ${countWords(cut.divided, 'patch', 'patches')}.`);
      }
    },
    [drawn, run, put, tell, done],
  );

  const layAt = useCallback(
    (points: readonly Point[]) => {
      if (drawn === null) return;
      const slack = slackOf(drawn.grid);
      const patch = { points: signedArea(points) < 0 ? points.toReversed() : points, tone };
      const patches = laidOn(drawn.patches, patch, slack);
      if (!put('Lay a patch', { patches })) return;
      setMark(patches.length - 1);
      setMore([]);
      done(`A patch is laid; there are ${countWords(patches.length, 'patch', 'patches')} now.`);
    },
    [drawn, tone, put, done],
  );
  const corner = useCallback(
    (p: Point) => {
      if (drawn === null) return;
      const slack = slackOf(drawn.grid);
      const [first] = run;
      const isClosed = run.length > 2 && [first, run.at(-1)].some((end) => end !== undefined && isNear(end, p, slack));
      if (!isClosed) {
        if (run.some((one) => isNear(one, p, slack))) return;
        setRun([...run, p]);
        done(`Corner ${run.length + 1} at ${placeText(p)}.`);
        return;
      }
      setRun([]);
      if (!isPlain(run, slack)) tell('Its sides cross, or it has no room in it: give the corners in order round it.');
      else layAt(run);
    },
    [drawn, run, layAt, tell, done],
  );
  const moveTo = useCallback(
    (p: Point) => {
      if (drawn === null) return;
      if (chosen.length === 0) {
        tell('Choose the patches first; then they can be moved.');
        return;
      }
      const box = chosenBox(drawn.patches, chosen);
      const moved = movedBy(drawn, chosen, [p.x - box.x, p.y - box.y]);
      const to = chosenBox(moved, chosen);
      if (Math.abs(to.x - box.x) + Math.abs(to.y - box.y) < slackOf(drawn.grid)) return;
      if (put('Move patches', { patches: moved })) done(`Moved to ${placeText(at(to.x, to.y))}.`);
    },
    [drawn, chosen, put, tell, done],
  );

  const pointAt = useCallback(
    (p: Point) => {
      setCursor(p);
      if (tool === 'rule') rule(p);
      else if (tool === 'move') moveTo(p);
      else if (tool === 'lay') {
        const points = drawn === null ? null : outlineOfLaid(laying, keptOn(drawn.grid, laying, p));
        if (points === null) corner(p);
        else layAt(points);
      }
    },
    [tool, rule, moveTo, corner, layAt, laying, drawn],
  );
  const goTo = useCallback(
    (p: Point) => {
      setCursor(p);
      setOver(null);
      const words = table !== null && isOnSeam(p, table.drawn) ? ', on a seam or the edge' : '';
      say(`${placeText(p)}${words}`);
    },
    [table, say],
  );
  /** A shape is laid with its upper left corner on the lines above and left of the pointer. */
  const placeFor = useCallback(
    (p: Point, reach: number): Point => {
      if (table === null) return p;
      if (tool !== 'lay' || laying.shape === 'corners') return snapped(p, table, reach);
      const above = at(Math.floor(p.x * parts + 1e-9) / parts, Math.floor(p.y * parts + 1e-9) / parts);
      return keptOn(table.drawn.grid, laying, above);
    },
    [table, tool, laying, parts],
  );
  const hover = useCallback(
    (p: Point | null, reach: number) => {
      const place = p === null ? null : placeFor(p, reach);
      setOver((was) => (was !== null && place !== null && was.x === place.x && was.y === place.y ? was : place));
    },
    [placeFor],
  );
  const take = useCallback(
    (to: Tool) => {
      setTool(to);
      setRun([]);
      setWord('');
      setOver(null);
      say(toolWords[to]);
    },
    [say],
  );
  const walk = useCallback(
    (arrow: Arrow) => {
      if (table === null) return;
      if (tool !== 'move' || chosen.length === 0) {
        goTo(steppedFrom(cursor, arrow, table));
        return;
      }
      const box = chosenBox(table.drawn.patches, chosen);
      const [dx, dy] = ways[arrow];
      moveTo(at(box.x + dx / parts, box.y + dy / parts));
    },
    [table, tool, chosen, cursor, parts, goTo, moveTo],
  );
  const key = useCallback(
    (pressed: string): boolean => {
      if (isArrow(pressed)) walk(pressed);
      else if (pressed === 'Enter' || pressed === ' ') pointAt(cursor);
      else if (pressed === 'Backspace' && run.length > 0) setRun(run.slice(0, -1));
      else if (pressed === 'Escape' && run.length > 0) {
        setRun([]);
        done('Let go of.');
      } else if (pressed === 'Escape') take('choose');
      else return false;
      return true;
    },
    [walk, pointAt, cursor, run, done, take],
  );
  const toCorner = useCallback(
    (ahead: 1 | -1) => {
      if (drawn === null) return;
      const corners = cornersOf(drawn);
      const here = corners.findIndex((p) => isNear(p, cursor, slackOf(drawn.grid)));
      const next = corners[(Math.max(here, ahead > 0 ? here : 0) + ahead + corners.length) % corners.length];
      if (next !== undefined) goTo(next);
    },
    [drawn, cursor, goTo],
  );

  const onChosen = useCallback(
    (what: string, said: string, to: (of: Drawn) => readonly DrawnPatch[]) => {
      if (drawn === null || chosen.length === 0) return;
      const patches = to(drawn);
      const own = new Set(chosen.map((index) => drawn.patches[index]));
      if (!put(what, { patches })) return;
      if (patches.length !== drawn.patches.length) {
        const still = patches.flatMap((patch, index) => (own.has(patch) ? [index] : []));
        setMark(still[0] ?? null);
        setMore(still.length > 1 ? still : []);
      }
      done(said);
    },
    [drawn, chosen, put, done],
  );
  const join = useCallback(() => {
    if (drawn === null) return;
    const slack = slackOf(drawn.grid);
    const patches = chosen.length < 2 ? null : joined(drawn.patches, chosen, slack);
    if (patches === null) {
      tell('These do not make one patch: choose patches that lie along each other, with no hole between them.');
      return;
    }
    const own = chosen.flatMap((index) => {
      const points = drawn.patches[index]?.points;
      return points === undefined ? [] : [points];
    });
    if (!put('Take out a seam', { patches, seams: { out: seamsBetween(own, slack) } })) return;
    setMark(Math.min(...chosen));
    setMore([]);
    done(`They are one patch; there are ${countWords(patches.length, 'patch', 'patches')} now.`);
  }, [drawn, chosen, put, tell, done]);

  const regrid = useCallback(
    (grid: Drawn['grid']) => {
      if (drawn === null || id === undefined || !isFresh) return;
      edit('Divide the block otherwise', (draft) => {
        const own = draft.blocks.find((one) => one.id === id);
        if (own?.drawing !== undefined) regridSeams(own.drawing, grid);
        else if (own !== undefined)
          putPatches(own, {
            before: drawn,
            patches: regridded(drawn, grid),
            grid,
            colourings: answer?.colourings ?? {},
          });
      });
      setRun([]);
      setCursor(at(0, 0));
    },
    [drawn, answer, isFresh, id, edit],
  );

  return {
    ...state,
    tool,
    take,
    parts,
    divide,
    laying,
    lay: (to) => {
      setLaying(to);
      setRun([]);
    },
    tones,
    tone,
    takeTone,
    cursor,
    over,
    run,
    chosen,
    mark: mark !== null && mark < count ? mark : null,
    isSeveral: more.length > 0,
    taps,
    tapTo,
    choose,
    toggle: useCallback(
      (index: number) => {
        setMark(index);
        setMore(
          chosen.includes(index) && more.length > 0 ? without(chosen, index) : [...without(chosen, index), index],
        );
      },
      [chosen, more],
    ),
    extend: useCallback(
      (index: number) => {
        setMark(index);
        setMore([...without(chosen, index), index]);
      },
      [chosen],
    ),
    word,
    pointAt,
    goTo,
    hover,
    tap: (p, reach) => pointAt(placeFor(p, reach)),
    key,
    toCorner,
    mirror: (way) => onChosen('Mirror patches', 'Mirrored.', ({ patches }) => mirroredIn(patches, chosen, way)),
    turn: () => onChosen('Turn patches', 'Turned a quarter clockwise.', (of) => turnedIn(of, chosen)),
    takeOut: () =>
      onChosen(
        'Take out patches',
        `${countWords(chosen.length, 'patch is', 'patches are')} taken out.`,
        ({ patches }) => patches.filter((_, index) => !chosen.includes(index)),
      ),
    join,
    colour: (to) => {
      if (drawn === null || chosen.length === 0) return;
      const patches = drawn.patches.map((patch, index) => (chosen.includes(index) ? { ...patch, tone: to } : patch));
      if (put('Colour patches', { patches, seams: {} })) done(`In the tone ${to}.`);
    },
    repeat: (repeating) =>
      onChosen('Repeat patches', 'Repeated.', (of) =>
        repeating === 'round' ? repeatedRound(of, chosen) : repeatedBy(of, chosen, repeating),
      ),
    regrid,
    fill: () => {
      if (drawn === null || answer === null) return;
      const laid = answer.bare.map((points) => ({ points: pointsOf(points), tone }));
      if (put('Fill the gaps', { patches: [...drawn.patches, ...laid] })) done('The gaps are filled.');
    },
    trim: () => {
      if (drawn === null) return;
      const slack = slackOf(drawn.grid);
      const patches = drawn.patches.reduce<readonly DrawnPatch[]>((all, patch) => laidOn(all, patch, slack), []);
      if (put('Cut away overlaps', { patches })) done('Where patches lay over each other, the lower ones end now.');
    },
  };
};

export const toolWords: Readonly<Record<Tool, string>> = {
  choose: 'Choose patches',
  move: 'Move patches',
  rule: 'Rule a seam',
  lay: 'Lay a patch',
};

const ways: Readonly<Record<Arrow, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const without = (all: readonly number[], one: number): readonly number[] => all.filter((index) => index !== one);

/** Sides that touch nowhere but at their corners, round some room. */
const isPlain = (points: readonly Point[], slack: number): boolean =>
  Math.abs(signedArea(points)) > slack &&
  !points.some((_, i) => points.some((__, k) => k > i && crosses(points, i, k)));

const crosses = (points: readonly Point[], i: number, k: number): boolean => {
  const n = points.length;
  if (k === i + 1 || (i === 0 && k === n - 1)) return false;
  const [a, b, c, d] = [points[i], points[(i + 1) % n], points[k], points[(k + 1) % n]] as [Point, Point, Point, Point];
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
};
