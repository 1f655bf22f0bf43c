// seamstead ways FILE: the ways to make its units that are worth choosing, and the document that chooses one.
import { basename, dirname } from 'node:path';
import { planQuilt, type QuiltPlan } from '#craft';
import { toDocument } from '#craft/design';
import { type Front, type FrontPoint, methodsFor, searchFront, usualFront } from '#craft/front';
import { recalling } from '#ground/recall';
import { listedPoints, toWaysFile, waysText } from '#paper/ways';
import { calledName, readDocument } from './documents.ts';
import { problemLines } from './problems.ts';
import { exits, print, progressOn, type Terminal, WrongUse } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface WaysWishes {
  readonly file: string;
  /** Number of a choice, as written; null: none. */
  readonly take: string | null;
  readonly out: string | null;
  readonly json: boolean;
}

export const runWays = async (wishes: WaysWishes, terminal: Terminal): Promise<number> => {
  if ((wishes.take === null) !== (wishes.out === null))
    throw new WrongUse('--take and --out go together: which choice, and where its document is written.');
  const text = await readDocument(wishes.file, terminal);
  const planned = planQuilt(text, { budget: { steps: 0 } });
  if (!planned.ok) {
    await print(terminal.stderr, problemLines(calledName(wishes.file), planned.problems, planned.more));
    return exits.problems;
  }
  const plan = planned.value;
  const progress = progressOn(terminal.stderr);
  const front = searched(plan, (tried) => progress.say(`Planning choice ${tried} …`));
  progress.clear();
  const taken = wishes.take === null ? null : pointNamed(wishes.take, front);
  await print(terminal.stdout, wishes.json ? JSON.stringify(toWaysFile(plan, front), null, 2) : waysText(plan, front));
  if (taken !== null && wishes.out !== null) await writeTaken({ plan, front, taken, out: wishes.out }, terminal);
  return exits.done;
};

const searched = (plan: QuiltPlan, say: (tried: number) => void): Front => {
  const search = searchFront({ plan, ...usualFront, memory: recalling(memoryFor) });
  for (let at = search.next(); ; at = search.next()) {
    if (at.done) return at.value;
    say(at.value.tried);
  }
};

/** Blocks and layouts of as many plans as are made. */
const memoryFor = 5_000;

const pointNamed = (written: string, front: Front): FrontPoint => {
  const listed = listedPoints(front);
  const point = /^\d+$/.test(written) ? listed[Number(written) - 1] : undefined;
  if (point !== undefined) return point;
  throw new WrongUse(
    listed.length === 0
      ? `--take ${written}: there is nothing to choose.`
      : `--take ${written}: choices are numbered from 1 to ${listed.length}.`,
  );
};

const writeTaken = async (
  of: { readonly plan: QuiltPlan; readonly front: Front; readonly taken: FrontPoint; readonly out: string },
  terminal: Terminal,
): Promise<void> => {
  const { quilt } = of.plan;
  const chosen = {
    ...quilt,
    methods: methodsFor(of.front.groups, of.taken.choice),
    blocks: quilt.blocks.map(({ methods: _, ...block }) => block),
  };
  const document = `${JSON.stringify(toDocument(chosen), null, 2)}\n`;
  await writeAll(dirname(of.out), new Map([[basename(of.out), document]]));
  await print(terminal.stderr, `Its document is written to ${of.out}.`);
};
