// The curve in hand: where it begins and ends, how far it rises, and whether it bends an edge or is a seam more.
import { useEffect, useMemo, useState } from 'react';
import {
  type Curve,
  type CurveOutcome,
  type Drawn,
  edgesBetween,
  edgeThrough,
  laidCurve,
  quarterRise,
  riseAlong,
  slackOf,
} from '#craft/redrawing';
import { isNear } from '#ground/outline';
import { distance, type Point, signedArea } from '#ground/plane';
import { countWords, useQuilt } from '#workroom/room';
import { radiusFor, riseStepped, riseThrough } from './curve-rise.ts';
import { curveFaultWords } from './curve-words.ts';
import { placeText } from './place-text.ts';
import { type Arrow, isOnSeam } from './snap.ts';
import type { Redrawing } from './use-redrawing.ts';

export interface CurveInHand {
  /** Where it begins, and ends. */
  readonly marks: readonly Point[];
  /** Null before both are marked. */
  readonly held: Curve | null;
  /** What it would come to. */
  readonly outcome: CurveOutcome | null;
  /** An edge leads from mark to mark: it can be bent, or a seam more ruled. */
  readonly hasEdge: boolean;
  /** Of a square, in the document's unit; null before it is known. */
  readonly square: number | null;
  readonly mark: (p: Point) => void;
  readonly rise: (rise: number) => void;
  readonly way: (way: Curve['way']) => void;
  readonly through: (p: Point, of: { readonly parts: number; readonly reach: number }) => Curve | null;
  readonly step: (arrow: Arrow, parts: number) => void;
  /** The edge through a place is taken whole. */
  readonly takeEdge: (p: Point) => boolean;
  readonly lay: (curve?: Curve) => void;
  readonly back: () => void;
  readonly letGo: () => void;
}

export const useCurve = (redrawing: Redrawing): CurveInHand => {
  const { id, drawn, answer, put, tell, done } = redrawing;
  const { words } = useQuilt();
  const [first, setFirst] = useState<Point | null>(null);
  const [held, setHeld] = useState<Curve | null>(null);
  const grid = drawn?.grid.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it holds belongs to the block, and to the grid, that was left
  useEffect(() => {
    setFirst(null);
    setHeld(null);
  }, [id, grid]);
  const outcome = useMemo(() => (drawn === null || held === null ? null : laidCurve(drawn, held)), [drawn, held]);
  const hasEdge = useMemo(
    () => drawn !== null && held !== null && edgesBetween(drawn, held.from, held.to).length > 0,
    [drawn, held],
  );
  const square = answer === null ? null : answer.size[0] / answer.grid[0];

  const risenWords = ({ from, to, rise }: Curve): string => {
    const radius = radiusFor({ from, to }, rise);
    if (radius === null) return 'Straight.';
    const told = (squares: number): string => (square === null ? `${squares}` : words.length(squares * square));
    return `Rise ${told(Math.abs(rise))}, radius ${told(radius)}.`;
  };
  const hold = (curve: Curve): void => {
    setHeld(curve);
    done(risenWords(curve));
  };
  const letGo = (): void => {
    setFirst(null);
    setHeld(null);
  };
  const takeEdge = (p: Point): boolean => {
    const edge = drawn === null ? null : edgeThrough(drawn, p);
    if (edge === null || drawn === null) return false;
    if (edgesBetween(drawn, edge.from, edge.to).length === 0) {
      setFirst(null);
      tell(curveFaultWords({ kind: 'edge-of-block' }));
      return false;
    }
    setFirst(edge.from);
    const own = riseAlong(edge);
    const rise = own === 0 ? usualRise(drawn, { from: edge.from, to: edge.to, way: 'bend' }) : own;
    hold({ from: edge.from, to: edge.to, rise, way: 'bend' });
    return true;
  };
  const mark = (p: Point): void => {
    if (drawn === null) return;
    const slack = slackOf(drawn.grid);
    if (first === null) {
      if (!isOnSeam(p, drawn)) {
        tell('A curve begins on a seam, or on the edge of the block.');
        return;
      }
      setFirst(p);
      done(`The curve begins at ${placeText(p)}. Mark where it ends; the same place again takes the edge there.`);
    } else if (isNear(p, first, slack)) {
      if (!takeEdge(p) && edgeThrough(drawn, p) === null)
        tell('Several edges meet at this corner: mark the other end of one of them.');
    } else if (isOnSeam(p, drawn)) {
      const isStraight = edgesBetween(drawn, first, p).some(({ edge }) => edge.arc === null);
      const way = isStraight ? 'bend' : 'rule';
      hold({ from: first, to: p, rise: usualRise(drawn, { from: first, to: p, way }), way });
    } else tell('A curve ends on a seam, or on the edge of the block.');
  };
  const lay = (curve = held): void => {
    if (drawn === null || curve === null) return;
    const laid = laidCurve(drawn, curve);
    if (!laid.ok) {
      setHeld(curve);
      tell(curveFaultWords(laid.fault));
      return;
    }
    const { patches, ruled, out } = laid.value;
    const what = curve.way === 'rule' ? 'Lay a curve' : ruled.arc === null ? 'Straighten an edge' : 'Bend an edge';
    if (!put(what, { patches, seams: { bent: [ruled], out } })) return;
    letGo();
    const said = {
      'Lay a curve': `The curve is laid; there are ${countWords(patches.length, 'patch', 'patches')} now.`,
      'Straighten an edge': 'The edge is straight.',
      'Bend an edge': 'The edge is bent, with the patches on both sides of it.',
    };
    done(`${said[what]} ${ruled.arc === null ? '' : risenWords(curve)}`.trim());
  };
  return {
    marks: held === null ? (first === null ? [] : [first]) : [held.from, held.to],
    held,
    outcome,
    hasEdge,
    square,
    mark,
    takeEdge,
    rise: (rise) => held !== null && hold({ ...held, rise }),
    way: (way) => held !== null && hold({ ...held, way }),
    through: (p, of) => {
      if (held === null) return null;
      const curve = { ...held, rise: riseThrough(held, p, of) };
      if (Math.abs(curve.rise - held.rise) > 1e-9) setHeld(curve);
      return curve;
    },
    step: (arrow, parts) => {
      if (held !== null) hold({ ...held, rise: riseStepped(held, held.rise, { arrow, parts }) });
    },
    lay,
    back: () => {
      if (held === null) letGo();
      else setHeld(null);
    },
    letGo: () => {
      letGo();
      done('Let go of.');
    },
  };
};

/** A quarter round, to the side on which it can be laid; where both will do, that which leaves the less narrow patch. */
const usualRise = (drawn: Drawn, ends: Omit<Curve, 'rise'>): number => {
  const quarter = quarterRise(distance(ends.from, ends.to));
  const sides = [quarter, -quarter].map((rise) => {
    const laid = laidCurve(drawn, { ...ends, rise });
    const least = laid.ok ? Math.min(...laid.value.patches.map(({ points }) => signedArea(points))) : -1;
    return { rise, least };
  });
  return sides.reduce((a, b) => (b.least > a.least + 1e-9 ? b : a)).rise;
};
