// Logs in sewing order out of plans of log cabins.

import assert from 'node:assert/strict';
import type { BlockPlan } from '#craft';
import { only, planned, quilt, setOf } from '../../documents/documents.ts';
import { agrees, type Checks, checkOf } from './case.ts';

interface Cabin {
  readonly centre: number;
  readonly rounds: number;
  readonly width: number | readonly number[];
  readonly order: readonly string[];
}

const cabin = ({ centre, rounds, width, order }: Cabin): BlockPlan => {
  const tones = order.map((_, i) => (i < order.length / 2 ? 'light' : 'dark'));
  const block = {
    id: 'cabin',
    recipe: {
      kind: 'log-cabin',
      centre,
      centreTone: 'medium',
      order,
      rounds: Array.from({ length: rounds }, () => ({ width, tones })),
    },
  };
  return only(planned(quilt({ blocks: [block], top: setOf('cabin') })).blocks);
};

const cutsOf = (block: BlockPlan) =>
  block.steps.map((step) => {
    const piece = block.pieces.find(({ label }) => label === step.join[1]);
    assert.ok(piece, `step ${step.number} adds no log`);
    return { step, cut: piece.cut };
  });

/** Finished width and length of each log: the side that is sewn is its length. */
const logsOf = (block: BlockPlan): readonly (readonly [number, number])[] =>
  cutsOf(block).map(({ step, cut }) => {
    const [a, b] = cut.finished;
    assert.ok(a === step.seam || b === step.seam);
    return a === step.seam ? [b, a] : [a, b];
  });

const found = (block: BlockPlan) => {
  const logs = logsOf(block);
  return { logs, lengths: logs.map(([, long]) => long), block: block.finished[0] };
};

const round = ['left', 'top', 'right', 'bottom'];

interface Even {
  readonly centre: number;
  readonly log: number;
  readonly rounds: number;
}

const laid = (order: readonly string[]) =>
  checkOf<Even, object>((of) => {
    const { centre, log, rounds } = of.inputs;
    agrees(found(cabin({ centre, rounds, width: log, order })), of);
  });

export const logCabins: Checks = {
  log_lengths: laid(round),
  courthouse_lengths: laid(['top', 'bottom', 'left', 'right']),
  quarter_log_lengths: laid(['right', 'bottom']),

  log_cut: checkOf<Even, object>((of) => {
    const { centre, log, rounds } = of.inputs;
    const sizes = cutsOf(cabin({ centre, rounds, width: log, order: round })).map(({ cut }) => cut.size);
    const widths = new Set(sizes.map((size) => Math.min(...size)));
    const lengths = sizes.map((size) => Math.max(...size));
    agrees({ strip: only([...widths]), cut_lengths: lengths, total: lengths.reduce((a, b) => a + b) }, of);
  }),

  thick_thin_lengths: checkOf<{ centre: number; thin: number; thick: number; rounds: number }, object>((of) => {
    const { centre, thin, thick, rounds } = of.inputs;
    agrees(found(cabin({ centre, rounds, width: [thin, thin, thick, thick], order: round })), of);
  }),
};
