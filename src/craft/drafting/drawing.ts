// A block drawn by its seams: what patches do the lines make, and which tone has each?
import type { DrawingDesign } from '#craft/design';
import { chordTolerance, cornerTolerance, limits } from '#craft/limits';
import { isOnArc } from '#ground/arc';
import { toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { at, distance, innerPoint, isInside, offLine, type Point, type Polygon, signedArea } from '#ground/plane';
import { type ExactArc, type ExactDraft, offGrid } from './exact-draft.ts';
import { areaOfRing, facesOf, outlineOfRing } from './net-faces.ts';
import type { DraftingProblem } from './problems.ts';
import { type NetCorner, type SeamNet, seamNet } from './seam-net.ts';

interface DrawingAt {
  readonly shape: DrawingDesign;
  readonly block: string;
  /** Of the block. */
  readonly path: string;
}

/**
 * Patches by planar subdivision. Corners and crossings are exact rationals; seams that miss each other, or the
 * block's edge, by less than the corner tolerance meet (docs/document.md).
 */
export const drawingDraft = (of: DrawingAt): Outcome<ExactDraft, DraftingProblem> => {
  const { shape, block, path } = of;
  const place = offGrid(shape);
  const slack = cornerTolerance * Math.max(...shape.size.map(toNumber));
  const runs = shape.seams.map((seam, i) => ({
    points: seam.corners.map(place),
    arcs: seam.arcs?.map((arc) => ({ ...arc, centre: place(arc.centre) })),
    path: `${path}/drawing/seams/${i}`,
  }));
  const net = seamNet({ size: shape.size, runs, slack, most: limits.patches });
  const seams = { path: `${path}/drawing/seams`, block };
  if (net === null) return refused([{ code: 'drafting/too-many-patches', ...seams, most: limits.patches }]);
  const { faces, looseEnds, closedIn } = facesOf(net);
  const loose = [
    ...looseEnds.map((corner) => looseEnd(net, corner, block)),
    ...closedIn.map((edge) => closedSeam(net, edge, block)),
  ];
  if (loose.length > 0) return refused(loose);
  const chord = (slack * chordTolerance) / cornerTolerance;
  const patches = faces.map((ring) => ({ ring, outline: outlineOfRing(ring, net.corners, chord) }));
  const area = faces.reduce((all, ring) => all + areaOfRing(ring, net.corners), 0);
  const whole = toNumber(shape.size[0]) * toNumber(shape.size[1]);
  if (Math.abs(area - whole) > 4 * slack * Math.sqrt(whole)) {
    return refused([{ code: 'drafting/seams-too-near', ...seams }]);
  }
  const tones = tonesOf({ ...of, net, outlines: patches.map(({ outline }) => outline), slack });
  if (!tones.ok) return tones;
  return done({
    size: shape.size,
    added: [],
    patches: patches.map(({ ring }, i) => {
      const tone = tones.value[i] as number;
      return {
        tone: (shape.tonesAt[tone] as DrawingDesign['tonesAt'][number]).tone,
        corners: ring.corners.map((index) => (net.corners[index] as NetCorner).exact),
        arcs: ring.bows.map(({ edge, bow }): ExactArc => ({ edge, centre: bow.centre, clockwise: bow.arc.clockwise })),
        path: `${path}/drawing/tonesAt/${tone}`,
      };
    }),
  });
};

const pair = ({ x, y }: Point): readonly [number, number] => [x, y];

const looseEnd = ({ corners, edges }: SeamNet, index: number, block: string): DraftingProblem => {
  const corner = corners[index] as NetCorner;
  const seam = edges.find(({ ends }) => ends.includes(index));
  return {
    code: 'drafting/seam-ends-inside',
    path: corner.path ?? (seam?.path as string),
    block,
    at: pair(corner.p),
  };
};

const closedSeam = ({ corners, edges }: SeamNet, index: number, block: string): DraftingProblem => {
  const edge = edges[index] as SeamNet['edges'][number];
  const corner = corners[edge.ends[0]] as NetCorner;
  return { code: 'drafting/patch-round-patch', path: edge.path as string, block, at: pair(corner.p) };
};

/** For each patch the index of its entry in "tonesAt". */
const tonesOf = (
  of: DrawingAt & { readonly net: SeamNet; readonly outlines: readonly Polygon[]; readonly slack: number },
): Outcome<readonly number[], DraftingProblem> => {
  const { shape, block, path, net, outlines, slack } = of;
  const place = offGrid(shape);
  const problems: DraftingProblem[] = [];
  const tones: (number | undefined)[] = outlines.map(() => undefined);
  shape.tonesAt.forEach((named, i) => {
    const [x, y] = place(named.at).map(toNumber) as [number, number];
    const spot = { path: `${path}/drawing/tonesAt/${i}/at`, block, at: [x, y] as const };
    if (net.edges.some((edge) => isOnEdge(at(x, y), net, edge, slack))) {
      problems.push({ code: 'drafting/tone-on-seam', ...spot });
      return;
    }
    const patch = outlines.findIndex((outline) => isInside(at(x, y), outline));
    const earlier = tones[patch];
    if (earlier === undefined) tones[patch] = i;
    else problems.push({ code: 'drafting/two-tones', ...spot, tones: [earlier, i] });
  });
  outlines.forEach((outline, i) => {
    if (tones[i] !== undefined) return;
    const area = signedArea(outline);
    const spot = { path: `${path}/drawing/tonesAt`, block, at: pair(innerPoint(outline)) };
    problems.push({ code: 'drafting/patch-without-tone', ...spot, area });
  });
  return problems.length > 0 ? refused(problems) : done(tones as readonly number[]);
};

const isOnEdge = (p: Point, net: SeamNet, { ends, bow }: SeamNet['edges'][number], slack: number): boolean =>
  bow === null ? isOn(p, endsOf(net, ends), slack) : isOnArc(p, bow.arc, slack);

const endsOf = ({ corners }: SeamNet, ends: readonly [number, number]): readonly [Point, Point] => [
  (corners[ends[0]] as NetCorner).p,
  (corners[ends[1]] as NetCorner).p,
];

const isOn = (p: Point, [a, b]: readonly [Point, Point], slack: number): boolean => {
  if (distance(p, a) < slack || distance(p, b) < slack) return true;
  const along = (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
  return along > 0 && along < distance(a, b) ** 2 && Math.abs(offLine(a, b, p)) < slack;
};
