// The questions that the workroom puts to a document, answered by the same road that the command line and the pages take. Pure: it
// runs in a worker and in a test alike.
import {
  type FabricPlan,
  type Note,
  type Problem,
  planQuilt,
  planQuiltBySteps,
  type QuiltPlan,
  valuesNear,
} from '#craft';
import { rulerSizes } from '#craft/accuracy';
import { hasForm, parseQuilt, scanText } from '#craft/design';
import { draftBlock } from '#craft/drafting';
import { foundationsOf } from '#craft/foundation';
import { limits } from '#craft/limits';
import { length } from '#craft/measure';
import type { IntegerSolver } from '#craft/strips';
import { toNumber } from '#ground/exact';
import type { Outcome } from '#ground/outcome';
import { noRecall, type Recall } from '#ground/recall';
import { makersNames, noteText } from '#paper/words';
import type { JsonObject } from '#workroom/editing';
import { alone } from './alone.ts';
import type { BlockAnswer, Care, FoundAnswer, QuiltAnswer, Reply, TextReply, WorkroomNote } from './answer.ts';
import { blockPicture, clothsOf, figuresOf, pictureOf } from './pictured.ts';
import { refusedIn } from './refused.ts';

/** The first good layouts, without a search. @param memory of plans of the document as it was before its last edits */
export const planFirst = (document: JsonObject, memory: Recall = noRecall): Outcome<QuiltPlan, Problem> =>
  planQuilt(document, { budget: { steps: 0 }, fold: 'where-asked', memory });

/**
 * As the command line searches, step by step.
 *
 * @param watch hears of better layouts on the way
 * @param memory of plans of the document as it was before its last edits
 */
export const planBest = (
  document: JsonObject,
  of: {
    readonly solver: IntegerSolver;
    readonly watch: (cloth: FabricPlan) => void;
    readonly memory: Recall;
  },
): Generator<void, Outcome<QuiltPlan, Problem>, void> => planQuiltBySteps(document, of);

/** What every view shows of a plan; what one alone shows is asked by `lookAt`. */
export const answerFor = (
  planned: Outcome<QuiltPlan, Problem>,
  of: { readonly document: JsonObject; readonly care: Care },
): Reply<QuiltAnswer> => {
  const { document, care } = of;
  if (!planned.ok) return refusedIn(planned, document);
  const plan = planned.value;
  return {
    ok: true,
    value: {
      care,
      unit: plan.quilt.unit,
      figures: figuresOf(plan),
      picture: pictureOf(plan),
      cloths: boughtOf(plan),
      values: valuesNear(plan),
      notes: notesOf(plan, document),
    },
  };
};

/** What a search has come to; the picture is that of the first layouts. */
export const foundIn = (plan: QuiltPlan, of: { readonly document: JsonObject; readonly care: Care }): FoundAnswer => ({
  care: of.care,
  figures: figuresOf(plan),
  cloths: boughtOf(plan),
  notes: notesOf(plan, of.document),
});

const boughtOf = ({ fabrics }: QuiltPlan): QuiltAnswer['cloths'] =>
  fabrics.map(({ id, buy: { amount, unit } }) => ({ id, buy: { amount, unit } }));

/** The first good layouts of a document. */
export const askQuilt = (document: JsonObject): Reply<QuiltAnswer> =>
  answerFor(planFirst(document), { document, care: 'first' });

/** One block by itself, with the blocks that lie in its centre. */
export const askBlock = (document: JsonObject, id: string): Reply<BlockAnswer> => {
  const planned = planQuilt(alone(document, id), { budget: { steps: 0 } });
  if (!planned.ok) return refusedIn(planned, document);
  const plan = planned.value;
  const [block] = plan.blocks;
  if (block === undefined) throw new Error(`the plan of the block ${id} is empty`);
  return {
    ok: true,
    value: {
      unit: plan.quilt.unit,
      picture: blockPicture(block),
      cloths: clothsOf(plan.quilt),
      unfinished: block.unfinished,
      joining: block.joining,
      advice: adviceIn(plan),
      foundations: foundationsOf(block)?.sections.length ?? null,
      pieces: block.pieces.reduce((all, { perBlock }) => all + perBlock, 0),
      steps: block.steps.reduce((all, { perBlock }) => all + perBlock, 0),
      notes: notesOf(plan, document),
      friendly: friendlySizes(plan, id),
    },
  };
};

const adviceIn = ({ notes }: QuiltPlan): BlockAnswer['advice'] => {
  for (const note of notes) {
    if (note.code !== 'piecing/lines-to-add') continue;
    const { lines, more, corners, partial, joins } = note;
    const seams = lines.flatMap((line) => line.seams.map(([a, b]) => [a.x, a.y, b.x, b.y] as const));
    return { seams, lines: lines.length, more, corners, partial, joins };
  }
  return null;
};

/** A text as a document to open: with what is still to mend in it, or why it is none. */
export const askText = (text: string): TextReply => {
  const read = parseQuilt(text);
  if (read.ok) return { ok: true, value: documentIn(text), ...unsewableIn(documentIn(text)) };
  const document = isJson(text) ? documentIn(text) : null;
  const { problems, more } = refusedIn(read, document);
  // photographs are left out of what is asked here: a wrong one would never be told again
  const isTold = read.problems.every(({ code }) => code !== 'design/not-a-picture');
  return document !== null && isTold && hasForm(document)
    ? { ok: true, value: document, problems, more }
    : { ok: false, problems, more };
};

/** What a document that is well written has still against being sewn. */
const unsewableIn = (document: JsonObject): Pick<TextReply, 'problems' | 'more'> => {
  const planned = planFirst(document);
  if (planned.ok) return { problems: [], more: 0 };
  const { problems, more } = refusedIn(planned, document);
  return { problems, more };
};

const documentIn = (text: string): JsonObject => JSON.parse(text.replace(/^\uFEFF/, '')) as JsonObject;

/** By the reader's own limits: what it refuses as text is not read. */
const isJson = (text: string): boolean =>
  text.length <= limits.characters && scanText(text.replace(/^\uFEFF/, ''), limits).length === 0;

/** A slip of one who writes tones by hand. In the page a tone that leaves a drawing keeps its cloth, for when it comes back. */
const isOfHandwriting = ({ code }: Note): boolean => code === 'design/unused-tone';

const notesOf = ({ notes, quilt }: QuiltPlan, document: JsonObject): readonly WorkroomNote[] => {
  const named = makersNames(document);
  const own = notes.filter((note) => !isOfHandwriting(note));
  return own.map((note) => ({
    code: note.code,
    level: note.level,
    path: note.path,
    text: noteText(named(note), quilt.unit),
  }));
};

/** Sizes on either side of its own. */
const each = 2;

const friendlySizes = ({ quilt }: QuiltPlan, id: string): BlockAnswer['friendly'] => {
  const design = quilt.blocks.find((block) => block.id === id);
  if (design === undefined) return [];
  // the size that is given is the one within the frame
  const { shape } = design;
  const drafted = draftBlock(shape.kind === 'framed' ? { ...design, shape: shape.inner } : design);
  if (!drafted.ok || drafted.value.patches.length === 0) return [];
  const rule = { seam: length(toNumber(quilt.seam)), ruler: quilt.ruler };
  return rulerSizes({ block: drafted.value, near: drafted.value.size[0], rule, each }).sizes;
};
