// How parts and places are named in the directions: "unit 4", "to the left of", "toward the A on the right".
import type { PlannedStep } from '#craft';
import type { Side } from '#craft/design';
import { isSpun } from '#craft/pressing';
import { never } from '#ground/outcome';
import { isAnyEdge } from '#paper/drawing';
import { capital } from '#paper/words';

/** A piece's label as it is; "#4" is unit 4. */
export const partName = (name: string): string => (name.startsWith('#') ? `unit ${name.slice(1)}` : name);

const placeWords: Record<Side, string> = {
  left: 'to the left of',
  right: 'to the right of',
  top: 'above',
  bottom: 'below',
};

const besideWords: Record<Side, string> = {
  left: 'on the left',
  right: 'on the right',
  top: 'at the top',
  bottom: 'at the bottom',
};

const opposite: Record<Side, Side> = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' };

interface Joining {
  /** A straight seam unless it says otherwise. */
  readonly kind?: PlannedStep['kind'];
  readonly join: readonly [string, string];
  readonly side: Side;
  readonly pressTo: PlannedStep['pressTo'];
}

/**
 * "F goes to the left of unit 4"
 *
 * @param partner the step that began a seam closed here; null where there is none
 */
export const stepHeading = ({ join, side, kind }: Joining, partner: number | null = null): string => {
  const [first, second] = [partName(join[0]), partName(join[1])];
  if (kind === 'partial-close') return `Close the seam of ${partner === null ? second : `step ${partner}`}`;
  if (kind === 'set-in') return `${capital(second)} is set in ${placeWords[side]} ${first}`;
  const begun = kind === 'partial-begin' ? ', half sewn' : '';
  return `${join[0] === join[1] ? `Another ${second}` : capital(second)} goes ${placeWords[side]} ${first}${begun}`;
};

/** "Press toward F." */
export const pressText = ({ join, side, pressTo }: Joining): string => {
  if (pressTo === 'open') return 'Press the seam open.';
  if (isSpun(pressTo)) {
    const [front, back] =
      pressTo === 'clockwise' ? ['clockwise', 'counterclockwise'] : ['counterclockwise', 'clockwise'];
    return `Spin the seam: where the others cross it, open a few stitches inside the allowance, and from there press one half to each side, so that all run round one way: ${front} as seen on the board, ${back} from the back.`;
  }
  const name = partName(join[pressTo]);
  if (join[0] !== join[1]) return `Press toward ${name}.`;
  return `Press toward the ${name} ${besideWords[pressTo === 1 ? side : opposite[side]]}.`;
};

// more than half a turn clockwise is what hands do as less the other way
const turnWords: ReadonlyMap<number, string> = new Map([
  [45, 'an eighth of a turn clockwise'],
  [90, 'a quarter turn clockwise'],
  [135, 'three eighths of a turn clockwise'],
  [180, 'half a turn'],
  [225, 'three eighths of a turn counterclockwise'],
  [270, 'a quarter turn counterclockwise'],
  [315, 'an eighth of a turn counterclockwise'],
]);

/** Where the part sewn last, which came off the machine at the right, lies after a turn. */
const turnedTo: ReadonlyMap<number, string> = new Map([
  [0, 'at the right'],
  [45, 'at the lower right'],
  [90, 'at the bottom'],
  [135, 'at the lower left'],
  [180, 'at the left'],
  [225, 'at the upper left'],
  [270, 'at the top'],
  [315, 'at the upper right'],
]);

/**
 * What to do at the machine before sewing.
 *
 * @param newest what the unit was last given, as its own step calls it; null for a single piece, and for a unit of two alike
 * @param called what the two parts are called, where there are better names than those of the plan
 */
export const machineText = (
  of: MachineStep,
  newest: string | null,
  called: readonly [string, string] = [partName(of.join[0]), partName(of.join[1])],
): string => {
  const second = called[0] === called[1] ? `the other ${called[1]}` : called[1];
  const lay = of.kind === 'partial-close' ? `fold the ${second} that hangs there back over` : `lay ${second} on`;
  const even = of.kind === 'curved' ? 'the middles of the two curved edges on each other' : 'right edges even';
  return `${turnText(of, newest, called)}; ${lay} it, right sides together, ${even}.`;
};

type MachineStep = Omit<Joining, 'pressTo'> & { readonly machineTurn: number };

const turnText = (of: MachineStep, newest: string | null, [first, second]: readonly [string, string]): string => {
  if (isAnyEdge(of)) return `${first} is square: take any edge`;
  const place = turnedTo.get(of.machineTurn);
  const lies = newest === null || place === undefined ? '' : `, ${newest} ${place}`;
  if (of.machineTurn === 0) return `Leave ${first} as it ${of.join[0].startsWith('#') ? 'was sewn' : 'lies'}${lies}`;
  const turn = turnWords.get(of.machineTurn);
  return turn === undefined
    ? `Turn ${first} until its edge for ${second} is at your right`
    : `Turn ${first} ${turn}${lies}`;
};

/**
 * How a seam is sewn that does not run from edge to edge; empty for a straight one.
 *
 * @param partner the step that closes a begun seam, or that began a closed one
 */
export const kindText = (
  { kind, corners, stopsAt }: Pick<PlannedStep, 'kind' | 'corners' | 'stopsAt'>,
  partner: number | null,
): string => {
  switch (kind) {
    case 'straight':
    case 'foundation':
      return stopsAt.length === 0
        ? ''
        : ` Stop on the mark, an allowance from the edge, at the ${stopsAt.length === 1 ? 'end' : 'ends'} of the seam where an inside corner opens: a piece is set in there later.`;
    case 'curved':
      return ' Match the other marks and the ends too; pin, and count the pins. Sew slowly along the curve, easing the hollow edge on top to the one below, and take out each pin before the needle comes to it. Where the hollow allowance pulls, clip it half-way to the seam.';
    case 'partial-begin':
      return ` Sew only the half of the seam that ends where both have a corner, up to the ring; leave the other half open: ${partner === null ? 'a later step' : `step ${partner}`} closes it.`;
    case 'partial-close':
      return ` Sew the half that ${partner === null ? 'was' : `step ${partner}`} left open, from edge to stitches.`;
    case 'set-in':
      return ` Sew from mark to mark. At ${corners === 1 ? 'the inside corner' : 'each inside corner'} stop on the mark with the needle down, turn the work until the next edges are even, and sew on.`;
    default:
      return never(kind);
  }
};
