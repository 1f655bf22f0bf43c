// A choice of joins as a tree on the board: every form stands for the unit of it that is met first, from the whole
// block down, and each seam lies where that unit has it.

import { seamLine } from '#craft/chords';
import { type Arc, reversedArc } from '#ground/arc';
import { at, distance, type Point, turned } from '#ground/plane';
import { lineAlong } from './bent.ts';
import type { RingSeam } from './division.ts';
import {
  type Branch,
  type Choice,
  type Join,
  type JoinTask,
  type JoinTree,
  patchesOf,
  type RingJoin,
  type SeamJoin,
  type Ways,
} from './join.ts';

/** Forms in the order in which they are met: a unit before its parts, the first part before the second. */
export const laidOut = (task: JoinTask, ways: Ways, choice: Choice): Pick<JoinTree, 'joins' | 'root'> => {
  const joins = new Map<number, Join>();
  const turns = new Map<number, number>();
  const lay = (form: number, patches: readonly number[], turn: number): void => {
    const first = ways.firstUnits.get(form) as readonly number[];
    const move = motionOf({ task, from: first, to: patches, turn });
    const join = moved(choice.get(form) as Join, move, turn);
    turns.set(form, turn);
    joins.set(form, join);
    for (const branch of join.branches) {
      if ('form' in branch && !turns.has(branch.form)) lay(branch.form, branch.patches, branch.turn);
    }
  };
  lay(ways.root, ways.firstUnits.get(ways.root) as readonly number[], 0);
  return { joins: new Map([...joins].map(([form, join]) => [form, counted(join, turns)])), root: ways.root };
};

/** Turns of branches counted from the unit that is met first. */
const counted = (join: Join, turns: ReadonlyMap<number, number>): Join => {
  const branches = join.branches.map((branch) =>
    'form' in branch ? { ...branch, turn: wholeTurn(branch.turn - (turns.get(branch.form) as number)) } : branch,
  );
  return { ...join, branches } as unknown as Join;
};

const wholeTurn = (turn: number): number => {
  const whole = 2 * Math.PI;
  const t = ((turn % whole) + whole) % whole;
  return whole - t < 1e-6 || t < 1e-6 ? 0 : t;
};

/** Brings one unit of a form onto another. */
interface Motion {
  readonly point: (p: Point) => Point;
  readonly patch: (patch: number) => number;
}

const motionOf = (of: {
  readonly task: JoinTask;
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly turn: number;
}): Motion => {
  const { task, from, to, turn } = of;
  // what lies on itself may be turned all the same, and its parts with it
  if (wholeTurn(turn) === 0 && from.every((patch, i) => patch === to[i]))
    return { point: (p) => p, patch: (patch) => patch };
  const [a, b] = [middleOf(task, from), middleOf(task, to)];
  const point = (p: Point): Point => {
    const q = turned(at(p.x - a.x, p.y - a.y), turn);
    return at(b.x + q.x, b.y + q.y);
  };
  return { point, patch: (patch) => nearest(task, to, point(task.centres[patch] as Point)) };
};

const middleOf = (task: JoinTask, unit: readonly number[]): Point => {
  let x = 0;
  let y = 0;
  for (const patch of unit) {
    const centre = task.centres[patch] as Point;
    x += centre.x / unit.length;
    y += centre.y / unit.length;
  }
  return at(x, y);
};

const nearest = (task: JoinTask, unit: readonly number[], p: Point): number => {
  const far = (patch: number): number => distance(p, task.centres[patch] as Point);
  return unit.reduce((a, b) => (far(b) < far(a) ? b : a));
};

const moved = (join: Join, move: Motion, turn: number): Join => {
  const branches = join.branches.map((branch) => movedBranch(branch, move, turn));
  if (join.kind === 'ring') return movedRing(join, branches, move);
  const { line, isAsWalked } = movedLine(join, move);
  const path = join.path?.map(move.point) ?? null;
  const arcs = join.arcs.map(
    ({ from, to, centre, clockwise }): Arc => ({
      from: move.point(from),
      to: move.point(to),
      centre: move.point(centre),
      clockwise,
    }),
  );
  // the path runs as the line does, and the first part lies on its left hand
  return isAsWalked
    ? { ...join, line, path, arcs, branches: branches as unknown as SeamJoin['branches'] }
    : {
        ...join,
        line,
        path: path?.toReversed() ?? null,
        arcs: arcs.toReversed().map(reversedArc),
        branches: branches.toReversed() as unknown as SeamJoin['branches'],
      };
};

/** Of runs that are as long as each other another may count where the unit lies otherwise. */
const movedLine = (join: SeamJoin, move: Motion): ReturnType<typeof lineAlong> => {
  if (join.path !== null && join.arcs.length === 0) return lineAlong(join.path.map(move.point));
  return lineAlong([move.point(join.line.from), move.point(join.line.to)]);
};

/** The arms go on in the same way round, from the one with the first patch. */
const movedRing = (join: RingJoin, branches: readonly Branch[], move: Motion): RingJoin => {
  const [centre, ...arms] = branches as readonly [Branch, ...(readonly Branch[])];
  const seams = join.seams.map(
    (seam): RingSeam => ({ ...seam, line: seamLine(move.point(seam.line.from), move.point(seam.line.to)) }),
  );
  const firstPatches = arms.map((arm) => patchesOf(arm)[0] as number);
  const first = firstPatches.indexOf(Math.min(...firstPatches));
  const fromFirst = <T>(list: readonly T[]): readonly T[] => [...list.slice(first), ...list.slice(0, first)];
  return { ...join, branches: [centre, ...fromFirst(arms)], seams: fromFirst(seams) };
};

const movedBranch = (branch: Branch, move: Motion, turn: number): Branch =>
  'patch' in branch
    ? { patch: move.patch(branch.patch) }
    : { ...branch, turn: branch.turn + turn, patches: branch.patches.map(move.patch).sort((a, b) => a - b) };
