// The hand of the pages shown piece by piece: type and colours, lines and arrows, hatches, a step, a cloth, a gauge. Each
// sheet is one page of Typst over the pages' own sources, so that it cannot drift from what is printed.

import type { QuiltPlan } from '#craft';
import { clothSignsFor, drawBlock, type PatternPages, patternPages, signsAs } from '#paper';
import { drawSwatch } from '#paper/drawing';
import { hatchFor } from '../../src/paper/cloth/hatch.ts';
import { arrow, dimension } from '../../src/paper/drawing/arrow.ts';
import { ink, patchEdgePt, softInk, thread } from '../../src/paper/drawing/ink.ts';
import { element, picture } from '../../src/paper/drawing/svg.ts';

interface Drawn {
  readonly svg: string;
  readonly widthPt: number;
  readonly alt: string;
}

const head = `
#import "/hand.typ": *
#set document(title: "The hand of the pages", date: none)
#set page(width: 500pt, height: auto, margin: 10pt)
#set text(font: sans, size: 10pt, fill: ink, lang: "en", fallback: false, number-type: "lining")
#let facts = json("/facts.json")
#let shown = facts.pictures
#let said(words) = text(size: 8.5pt, fill: soft, words)
`;

const sheetOf = (
  of: PatternPages,
  sheet: { readonly body: string; readonly drawings: Readonly<Record<string, Drawn>> },
): PatternPages => ({
  sources: { ...of.sources, '/main.typ': `${head}${sheet.body}` },
  pictures: new Map(Object.entries(sheet.drawings).map(([name, { svg }]) => [name, svg])),
  facts: {
    ...of.facts,
    pictures: Object.fromEntries(
      Object.entries(sheet.drawings).map(([name, { widthPt, alt }]) => [name, { name, widthPt, alt }]),
    ),
  } as PatternPages['facts'],
});

export const designSheets = (of: {
  readonly star: QuiltPlan;
  readonly cloth: QuiltPlan;
}): ReadonlyMap<string, PatternPages> => {
  const star = patternPages(of.star, { chapters: ['blocks', 'boards'] });
  const cloth = patternPages(of.cloth, { chapters: ['cutting'] });
  return new Map([
    ['design-type.png', sheetOf(star, { body: typeSheet, drawings: {} })],
    ['design-lines.png', sheetOf(star, { body: linesSheet, drawings: forms() })],
    ['design-hatches.png', sheetOf(star, { body: hatchesSheet, drawings: hatches() })],
    ['design-looks.png', sheetOf(star, { body: looksSheet, drawings: looks(of.star) })],
    ['design-step.png', sheetOf(star, { body: stepSheet, drawings: stepOf(star) })],
    ['design-cloth.png', sheetOf(cloth, { body: aloneSheet, drawings: { one: layoutOf(cloth) } })],
    ['design-gauge.png', sheetOf(star, { body: aloneSheet, drawings: { one: gaugeOf(star) } })],
  ]);
};

const typeSheet = `
#grid(columns: (auto, 1fr), column-gutter: 18pt, row-gutter: 11pt, align: horizon,
  said[cover 28], text(font: serif, weight: 600, size: 28pt)[Lantern Lane],
  said[chapter 24], text(font: serif, weight: 600, size: 24pt)[The top],
  said[section 14], text(font: serif, weight: 600, size: 14pt)[Joining the rows],
  said[step 10.5], text(font: serif, weight: 600, size: 10.5pt)[#text(size: 12pt, fill: thread)[4] #h(4pt) C goes to the right of unit 3],
  said[words 10], [Pin where seams meet; where their allowances lie in opposite directions, they lock.],
  said[tables 9.5], text(size: 9.5pt)[quarter of a square 5¼ in #h(14pt) 12 of 40 in × 2½ in],
  said[heads 8.5], said[Piece #h(14pt) Cloth #h(14pt) Pieces #h(14pt) Cut],
  said[fractions], text(size: 14pt)[2½ #h(12pt) 4⅞ #h(12pt) 3 ⁵⁄₁₆ #h(12pt) 10 ¹¹⁄₃₂],
  said[colours], grid(columns: 5 * (1fr,), row-gutter: 4pt,
    ..(ink, soft, line, hush, thread).map(c => rect(width: 60pt, height: 20pt, fill: c, stroke: 0.3pt + ink)),
    ..("ink", "soft ink", "line", "hush", "thread").map(said)))
`;

const linesSheet = `
#grid(columns: 4 * (1fr,), row-gutter: 8pt, column-gutter: 12pt, align: bottom,
  ..shown.values().map(p => stack(spacing: 6pt, picture(p), said(p.alt))))
`;

const hatchesSheet = `
#grid(columns: 6 * (1fr,), row-gutter: 10pt, align: center,
  ..shown.values().map(p => stack(spacing: 5pt, picture(p), said(p.alt))))
`;

const looksSheet = `
#grid(columns: 3 * (1fr,), row-gutter: 6pt, align: center,
  ..shown.values().map(picture), ..shown.values().map(p => said(p.alt)))
`;

const stepSheet = `
#import "/chapters.typ": card
#let steps = facts.blocks.at(0).steps
// a card has a heading of the third level, and a tagged page wants those above it
#show heading.where(level: 1): it => block(below: 4pt, text(font: serif, weight: 600, size: 14pt, it.body))
#show heading.where(level: 2): it => block(below: 8pt, said(it.body))
#show heading.where(level: 3): it => text(font: serif, weight: 600, size: 10.5pt, it.body)
= Sawtooth star
== Two of its steps, as a block's pages show them
#grid(columns: (1fr, 1fr), column-gutter: gutter, card(steps.at(0)), card(steps.at(2)))
`;

const aloneSheet = `#picture(shown.one)`;

const formPt = [104, 26] as const;

/** Lines and arrows as the drawings use them; the caption is the alternative text. */
const forms = (): Readonly<Record<string, Drawn>> => {
  const from = { x: 4, y: 12 };
  const to = { x: 100, y: 12 };
  const stroke = (weight: number, more: Readonly<Record<string, string>> = {}): string =>
    element('path', { d: 'M4 12H100', stroke: ink, 'stroke-width': weight, fill: 'none', ...more });
  const drawings: readonly (readonly [caption: string, part: string])[] = [
    ['edge of a patch 0.5', stroke(patchEdgePt)],
    ['cut edge 0.75', stroke(0.75)],
    ['line to colour between 0.8', stroke(0.8)],
    ['seam line, dashed 0.9', stroke(0.9, { 'stroke-dasharray': '3 1.5' })],
    ['where sheets join', stroke(0.5, { 'stroke-dasharray': '1 2', stroke: thread })],
    ['check size', dimension({ from: { x: 4, y: 8 }, to: { x: 100, y: 8 }, text: '4⅞ in' })],
    ['press toward', arrow({ from: { x: 40, y: 12 }, to: { x: 64, y: 12 }, heads: 'one' })],
    ['press open', arrow({ from: { x: 38, y: 12 }, to: { x: 66, y: 12 }, heads: 'both' })],
    ['straight grain', arrow({ from, to, heads: 'both', colour: softInk })],
  ];
  return Object.fromEntries(
    drawings.map(([alt, part], i) => {
      const { svg, widthPt } = picture({ widthPt: formPt[0], heightPt: formPt[1], alt, parts: [part] });
      return [`form-${i}`, { svg, widthPt, alt }];
    }),
  );
};

/** Twelve, as the first twelve cloths of a plan get them; light and dark in turn. */
const hatches = (): Readonly<Record<string, Drawn>> =>
  Object.fromEntries(
    Array.from({ length: 12 }, (_, i) => {
      const hatch = hatchFor(i);
      const letter = String.fromCharCode(65 + i);
      const alt = `${hatch.stroke}${hatch.stroke === 'dots' || hatch.stroke === 'cross' ? '' : ` ${hatch.turn}°`}`;
      const colour = ['#efe6d0', '#5d7148', '#d6b873', '#3f4a66'][i % 4] as string;
      const { svg } = drawSwatch({ sign: { fabric: letter, letter, name: alt, colour, hatch }, fitPt: [66, 40], alt });
      return [`hatch-${letter}`, { svg, widthPt: 66, alt }];
    }),
  );

const looks = (plan: QuiltPlan): Readonly<Record<string, Drawn>> => {
  const [block] = plan.blocks;
  if (block === undefined) throw new Error('a quilt without a block');
  const signs = clothSignsFor(plan);
  return Object.fromEntries(
    (['colour', 'grey', 'line'] as const).map((look) => {
      const alt = look === 'line' ? 'in line, to colour in' : `in ${look}`;
      const drawn = drawBlock({
        block,
        signs: signsAs(signs, look),
        fitPt: [140, 140],
        alt,
        ...(look === 'line' ? { edgePt: 0.8 } : {}),
      });
      return [`look-${look}`, { svg: drawn.svg, widthPt: drawn.widthPt, alt }];
    }),
  );
};

/** The pictures of the block's steps, under the names that their cards use. */
const stepOf = ({ facts, pictures }: PatternPages): Readonly<Record<string, Drawn>> =>
  Object.fromEntries(
    (facts.blocks[0]?.steps ?? []).flatMap(({ board, machineView }) =>
      [board, machineView].map(({ name, widthPt, alt }) => [name, { svg: pictures.get(name) ?? '', widthPt, alt }]),
    ),
  );

const layoutOf = ({ facts, pictures }: PatternPages): Drawn => {
  const layout = facts.cutting[2]?.layouts[0];
  if (layout === undefined) throw new Error('a third cloth without a layout');
  return { ...layout, svg: pictures.get(layout.name) ?? '' };
};

const gaugeOf = ({ facts, pictures }: PatternPages): Drawn => {
  const sheet = facts.boards?.sheets[0];
  if (sheet === undefined) throw new Error('a pattern without a gauge');
  return { ...sheet.picture, svg: pictures.get(sheet.picture.name) ?? '' };
};
