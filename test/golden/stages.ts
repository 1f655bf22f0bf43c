// What an example gives at every stage of the road, as text that a person can read and compare.

import type { BlockPlan, FabricPlan, QuiltPlan } from '#craft';
import { toDocument } from '#craft/design';
import { type Arc, edgesOf } from '#ground/arc';
import type { Point } from '#ground/plane';
import {
  clothSignsFor,
  cuttingCsv,
  drawQuilt,
  type PatternPages,
  patternPages,
  planFileText,
  summaryText,
} from '#paper';
import { patternSources } from '#paper/typst';

/** Text by file name, in the order of the road. */
export const stagesOf = (plan: QuiltPlan): Readonly<Record<string, string>> => ({
  'design.json': jsonText(toDocument(plan.quilt)),
  'patches.txt': plan.blocks.map(patchesText).join('\n'),
  'cuts.txt': [...plan.blocks.map(cutsText), topCutsText(plan), ...plan.fabrics.map(clothText)].join('\n'),
  'steps.txt': [...plan.blocks.map(stepsText), topStepsText(plan)].join('\n'),
  'layout.txt': plan.fabrics.map(layoutText).join('\n'),
  'plan.json': planFileText(plan),
  'cutting.csv': cuttingCsv(plan),
  'summary.txt': summaryText(plan),
  'quilt.svg': quiltSvg(plan, 'colour'),
  'quilt-hatched.svg': quiltSvg(plan, 'hatched'),
  'pattern.json': jsonText(patternPages(plan).facts),
  'pictures.txt': picturesText(patternPages(plan)),
});

/** What the pages for the left hand have otherwise: lines of what they read, and pictures. */
export const leftHandText = (plan: QuiltPlan): string => {
  const [right, left] = [patternPages(plan), patternPages(plan, { hand: 'left' })];
  const usual = new Set(jsonText(right.facts).split('\n'));
  const lines = jsonText(left.facts)
    .split('\n')
    .filter((line) => !usual.has(line));
  const pictures = new Map([...left.pictures].filter(([name, svg]) => right.pictures.get(name) !== svg));
  return `${linesText(lines)}${picturesText({ ...left, pictures })}`;
};

const jsonText = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

const linesText = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

const entryTitle = ({ id, colouring, mirror, count }: BlockPlan): string =>
  `${id} / ${colouring}${mirror ? ' / mirrored' : ''}, ${count} of them`;

/** Ten digits: rounding in the last place of a double is no change of an example. */
const figure = (value: number): string => String(Number(value.toPrecision(10)));

const pair = (size: readonly [number, number]): string => size.map(figure).join(' x ');

const placeText = ({ x, y }: Point): string => `${figure(x)},${figure(y)}`;

const arcText = ({ centre, clockwise }: Arc): string =>
  ` ${clockwise ? 'clockwise' : 'counterclockwise'} round ${placeText(centre)} to`;

const patchesText = (block: BlockPlan): string =>
  linesText([
    `${entryTitle(block)}: ${pair(block.finished)}`,
    ...block.patches.map(
      ({ piece, fabric, points, arcs = [] }) =>
        `  ${piece} ${fabric}: ${edgesOf({ points, arcs })
          .map(({ from, arc }) => placeText(from) + (arc === null ? '' : arcText(arc)))
          .join(' ')}`,
    ),
  ]);

const cutsText = (block: BlockPlan): string =>
  linesText([
    entryTitle(block),
    ...block.pieces.map(
      ({ label, fabric, tone, perBlock, cut }) =>
        `  ${label} ${fabric} (${tone}) ${perBlock} a block: ${cut.shape} ${pair(cut.size)}, exactly ${pair(cut.exact)}, finishes ${pair(cut.finished)}`,
    ),
  ]);

const topCutsText = ({ top }: QuiltPlan): string =>
  linesText([
    `top: ${pair([top.set.width, top.set.height])}`,
    ...top.pieces.map(
      ({ label, role, fabric, count, cut, joinedFrom }) =>
        `  ${label} ${fabric} ${role}, ${count}: ${pair(cut.size)} from ${joinedFrom.map(pair).join(' + ')}`,
    ),
  ]);

const clothText = ({ id, pieces }: FabricPlan): string =>
  linesText([
    `cloth ${id}`,
    ...pieces.map(
      ({ cut, shape, count, gives, for: uses }) =>
        `  ${count} of ${pair(cut)} ${shape}, each gives ${gives}: ${uses.map((use) => `${use.count} ${use.block ?? use.role} ${use.label}`).join(', ')}`,
    ),
  ]);

const stepsText = (block: BlockPlan): string =>
  linesText([
    `${entryTitle(block)}: ${block.joining}, ${block.leastUnits}`,
    ...block.steps.map(
      (step) =>
        `  ${step.makes} = ${step.join.join(' + ')} ${step.side}, ${step.kind}, turn ${step.machineTurn}, seam ${figure(step.seam)}, ` +
        `press ${step.press} (${step.pressTo}), measures ${pair(step.unfinished)}, ${step.perBlock} a block, ${step.total} in all`,
    ),
  ]);

const topStepsText = ({ top }: QuiltPlan): string =>
  linesText([
    'top',
    ...top.steps.map(
      (step) =>
        `  ${step.stage} ${step.of}: ${step.makes} = ${step.join.join(' + ')} ${step.side}, turn ${step.machineTurn}, seam ${figure(step.seam)}, ` +
        `press ${step.press} (${step.pressTo}), measures ${pair(step.unfinished)}, ${step.total} in all`,
    ),
  ]);

const layoutText = ({ id, laid, buy }: FabricPlan): string =>
  linesText([
    `cloth ${id}: ${figure(laid.layout.length)} of ${figure(laid.layout.width)}, at least ${figure(laid.bound)} (${laid.boundKind}), buy ${figure(buy.amount)} ${buy.unit}`,
    ...laid.layout.strips.map(
      (strip) =>
        `  at ${figure(strip.at)}, ${figure(strip.height)} high: ${strip.parts
          .map((part) => part.pieces.map(({ cut, turned }) => `${pair(cut)}${turned ? ' turned' : ''}`).join(' over '))
          .join(' | ')}`,
    ),
  ]);

const quiltSvg = (plan: QuiltPlan, fill: 'colour' | 'hatched'): string =>
  drawQuilt({ plan, signs: clothSignsFor(plan), fitPt: [480, 480], fill, alt: plan.quilt.title }).svg.replaceAll(
    '><',
    '>\n<',
  );

/** The Typst sources that read the facts of every example, one after another. */
export const sourcesText = (): string =>
  Object.entries(patternSources)
    .map(([path, text]) => `// ---- ${path}\n${text}\n`)
    .join('');

/** The pictures that the pages place, by name. */
const picturesText = ({ pictures }: PatternPages): string =>
  [...pictures].map(([name, svg]) => `---- ${name}\n${svg.replaceAll('><', '>\n<')}\n`).join('');
