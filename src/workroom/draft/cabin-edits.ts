// What one does to a log cabin by its measures: its centre, its rounds and logs, and the order of its sides.
import type { QuiltDocument } from '#craft/design';
import {
  type Block,
  type Cabin,
  cabinOf,
  centreBlockOf,
  coloured,
  colourTone,
  firstColouring,
  freeId,
} from './block-edits.ts';

export type Side = NonNullable<Cabin['order']>[number];

export const usualOrder: readonly Side[] = ['left', 'top', 'right', 'bottom'];

/** A centre of 3 in and three rounds of 1 in, lights on two sides; 8 cm and 2.5 cm where one measures so. */
export const firstCabin = (draft: Pick<QuiltDocument, 'unit' | 'fabrics' | 'blocks'>): Block => {
  const [centre, width] = draft.unit === 'in' ? ['3', '1'] : ['8', '2.5'];
  const round = () => ({ width, tones: ['light', 'light', 'dark', 'dark'] });
  return {
    id: freeId('log-cabin', draft.blocks),
    title: 'Log cabin',
    recipe: {
      kind: 'log-cabin',
      centre,
      centreTone: 'accent',
      order: [...usualOrder],
      rounds: [round(), round(), round()],
    },
    colourings: { default: firstColouring(draft.fabrics, ['accent', 'light', 'dark']) },
  };
};

/** More rounds go on as the last whole one; fewer leave from the outside. */
export const setRounds = (cabin: Cabin, count: number): void => {
  const length = (cabin.order ?? usualOrder).length;
  while (cabin.rounds.length > count) cabin.rounds.pop();
  const last = cabin.rounds.at(-1);
  if (last === undefined) return;
  if (cabin.rounds.length < count) last.tones = filled(last.tones, length);
  while (cabin.rounds.length < count) cabin.rounds.push({ width: widthOf(last.width), tones: [...last.tones] });
};

const widthOf = (width: Cabin['rounds'][number]['width']): Cabin['rounds'][number]['width'] =>
  Array.isArray(width) ? [...width] : width;

/** Repeated until it is so long, or cut to it. */
const filled = <T>(list: readonly T[], length: number): T[] =>
  Array.from({ length }, (_, i) => list[i < list.length ? i : i % Math.max(1, list.length)] as T);

export const setWidth = (cabin: Cabin, round: number | 'all', width: string): void => {
  for (const [index, one] of cabin.rounds.entries()) if (round === 'all' || round === index) one.width = width;
};

/** One width for each log of a round; the others keep what they had. */
export const setLogWidth = (cabin: Cabin, at: readonly [round: number, place: number], width: string): void => {
  const round = cabin.rounds[at[0]];
  if (round === undefined) return;
  const was = round.width;
  round.width = round.tones.map((_, place) =>
    place === at[1] ? width : Array.isArray(was) ? (was[place] ?? width) : was,
  );
};

/** All logs of a round as wide as its first. */
export const evenRound = (cabin: Cabin, round: number): void => {
  const own = cabin.rounds[round];
  if (own !== undefined && Array.isArray(own.width)) own.width = own.width[0] ?? '1';
};

export type CentreKind = 'square' | 'oblong' | { readonly block: string };

/** A pieced centre needs no tone; a plain one has the accent again, or the first log's tone where there is none. */
export const setCentre = (block: Block, to: CentreKind, usual: string): void => {
  const cabin = cabinOf(block);
  if (cabin === null) return;
  const { centre } = cabin;
  if (typeof to === 'object') {
    cabin.centre = { block: to.block };
    delete cabin.centreTone;
    return;
  }
  const [across, down] = Array.isArray(centre)
    ? centre
    : typeof centre === 'object'
      ? [usual, usual]
      : [centre, centre];
  cabin.centre = to === 'square' ? across : [across, down];
  if (cabin.centreTone !== undefined) return;
  const isAccent = block.colourings?.default?.accent !== undefined;
  cabin.centreTone = isAccent ? 'accent' : (cabin.rounds[0]?.tones[0] ?? 'accent');
};

/** Blocks that may lie in this one's centre: none that has this one in its own. */
export const centresFor = (blocks: readonly Block[], id: string): readonly Block[] => {
  const holds = (block: Block | undefined, left: number): boolean => {
    if (block === undefined || left === 0 || block.id === id) return block?.id === id;
    const centre = centreBlockOf(block);
    const inside = blocks.find((one) => one.id === centre);
    return holds(inside, left - 1);
  };
  return blocks.filter((block) => block.made === undefined && !holds(block, blocks.length));
};

/** Each log keeps the tone that its side had; a side that is new takes its neighbour's. */
export const setOrder = (cabin: Cabin, order: readonly Side[]): void => {
  const was = cabin.order ?? usualOrder;
  const last = cabin.rounds.length - 1;
  for (const [index, round] of cabin.rounds.entries()) {
    const isWhole = round.tones.length >= was.length || index < last;
    const toneAt = (side: Side): string => round.tones[was.indexOf(side)] ?? round.tones[0] ?? '';
    const count = isWhole ? order.length : Math.min(round.tones.length, order.length);
    round.tones = order.slice(0, count).map(toneAt);
    if (Array.isArray(round.width)) round.width = filled(round.width, count);
  }
  cabin.order = [...order];
};

/** The last round may stop part-way. */
export const setLastLogs = (cabin: Cabin, count: number): void => {
  const last = cabin.rounds.at(-1);
  if (last === undefined) return;
  last.tones = filled(last.tones, count);
  if (Array.isArray(last.width)) last.width = filled(last.width, count);
};

/** The round and place of a log by its number in order of sewing, from 0. */
const logAt = (cabin: Cabin, number: number): readonly [round: number, place: number] | null => {
  let left = number;
  for (const [round, { tones }] of cabin.rounds.entries()) {
    if (left < tones.length) return [round, left];
    left -= tones.length;
  }
  return null;
};

/** The log that a patch of the block is; null for its centre, however pieced, and for its frame. */
export const logOfPatch = (
  block: Block,
  { patch, patches }: { readonly patch: number; readonly patches: number },
): readonly [round: number, place: number] | null => {
  const cabin = cabinOf(block);
  if (cabin === null) return null;
  const logs = cabin.rounds.reduce((all, { tones }) => all + tones.length, 0);
  const first = patches - 4 * (block.frame?.length ?? 0) - logs;
  return patch < first ? null : logAt(cabin, patch - first);
};

/** Every tone of a log cabin, from the centre out. */
export const tonesOfCabin = (cabin: Cabin): readonly string[] => [
  ...new Set([
    ...(cabin.centreTone === undefined ? [] : [cabin.centreTone]),
    ...cabin.rounds.flatMap(({ tones }) => tones),
  ]),
];

/** The cloth of one log alone: it gets a tone of its own, so that others of its tone stay as they are. */
export const colourLog = (
  block: Block,
  of: { readonly at: readonly [number, number]; readonly cloth: string },
): void => {
  const cabin = cabinOf(block);
  const round = cabin?.rounds[of.at[0]];
  const tone = round?.tones[of.at[1]];
  if (cabin === null || round === undefined || tone === undefined) return;
  const uses = [cabin.centreTone, ...cabin.rounds.flatMap(({ tones }) => tones)].filter((one) => one === tone).length;
  const own = uses === 1 ? tone : freeTone(`log ${of.at[0] + 1}.${of.at[1] + 1}`, cabin);
  for (const colouring of Object.values(coloured(block))) colouring[own] ??= colouring[tone] ?? tone;
  round.tones[of.at[1]] = own;
  colourTone(block, own, of.cloth);
};

const freeTone = (wanted: string, cabin: Cabin): string => {
  const tones = tonesOfCabin(cabin);
  let tone = wanted;
  for (let n = 2; tones.includes(tone); n++) tone = `${wanted} ${n}`;
  return tone;
};
