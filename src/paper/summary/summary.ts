// The plan in a screenful of plain text, 80 columns: what the command prints when it has written its files.
import type { FabricPlan, QuiltPlan } from '#craft';
import { type PurchaseChange, strongestOf } from '#craft/shopping';
import { clothSignsFor, signOf } from '#paper/cloth';
import { cutMark, entryTitle, usesText } from '#paper/cutting';
import { checkLength } from '#paper/lengths';
import { boughtText, cutBefore, provenLines, skillOf, topShape, totalLines, workInAll } from '#paper/pages';
import {
  amountText,
  capital,
  changeText,
  counted,
  estimateText,
  lengthText,
  longTimeText,
  noteText,
  sizeText,
  stripsText,
  timeParts,
} from '#paper/words';
import { columns, heading, wrapped } from './lines.ts';

const mostSizes = 6;

/** @param changes what would move the purchases (`purchaseChanges`), where somebody asked */
export const summaryText = (plan: QuiltPlan, changes: readonly PurchaseChange[] = []): string => {
  const { quilt, top, time } = plan;
  const { unit } = quilt;
  const size = `${checked(plan, top.set.width)} × ${checked(plan, top.set.height)}`;
  const skill = skillOf(plan);
  return [
    ...wrapped(quilt.title, ''),
    ...wrapped(
      `${size} finished · ${counted(time.seams, 'seam')} · about ${longTimeText(time.minutes)} · ${skill.level.toLowerCase()}`,
      '',
    ),
    '',
    heading('Cloth to buy'),
    ...cloths(plan),
    ...totalLines(plan, clothSignsFor(plan)).flatMap((line) => wrapped(line, '  ')),
    ...provenLines(plan, clothSignsFor(plan)).flatMap((line) => wrapped(line, '  ')),
    ...changed(plan, changes),
    '',
    heading('Cut'),
    ...cutList(plan),
    '',
    heading('Sew'),
    ...sewing(plan),
    '',
    heading('Finish'),
    ...finish(plan),
    '',
    heading('Time'),
    ...wrapped(`${capital(timeParts(time))}: ${estimateText(quilt)}.`, '  '),
    ...(plan.notes.length === 0
      ? []
      : [
          '',
          heading('Notes'),
          ...plan.notes.flatMap((note) => wrapped(`${note.path}: ${noteText(note, unit)}`, '  ')),
        ]),
    '',
  ].join('\n');
};

const cloths = (plan: QuiltPlan): readonly string[] => {
  if (plan.fabrics.length === 0) return ['  None: nothing of this quilt is cut here.'];
  const signs = clothSignsFor(plan);
  return columns(
    plan.fabrics.map((fabric) => {
      const sign = signOf(signs, fabric.id);
      const bought = boughtText(plan, fabric).replaceAll('\u00a0', ' ');
      if (fabric.parts === null || fabric.parts.length === 0) return [sign.letter, bought, sign.name];
      return [sign.letter, amountText(fabric.buy.amount, fabric.buy.unit), `${sign.name}: ${bought}`];
    }),
  );
};

/** Changes told of each cloth. */
const mostChanges = 2;

const changed = (plan: QuiltPlan, changes: readonly PurchaseChange[]): readonly string[] => {
  const signs = clothSignsFor(plan);
  const rows = plan.fabrics.flatMap(({ id }) => {
    const told = strongestOf(
      changes.filter(({ fabric }) => fabric === id),
      mostChanges,
    );
    const text = told.map((change) => changeText(change, plan.quilt.unit)).join('; ');
    return told.length === 0 ? [] : [[signOf(signs, id).letter, text]];
  });
  return rows.length === 0 ? [] : ['  What would change it:', ...columns(rows)];
};

/** What is done to a piece of cloth once it is cut to size. */
const cutApart: Readonly<Record<FabricPlan['pieces'][number]['shape'], readonly string[]>> = {
  square: [],
  rectangle: [],
  'half-square': ['cut once corner to corner'],
  'quarter-square': ['cut twice corner to corner'],
  angled: ['strips cut at an angle'],
  template: ['by the template'],
};

const mostKept = 2;

/** "A: 8 strips 2½ in; 2 ruler settings, 48 strokes; keep R1, 29½ × 3½ in": the way of it, in short; what is cut before the rest first. */
const howCut = (plan: QuiltPlan, fabric: FabricPlan, letter: string): string => {
  const { unit } = plan.quilt;
  const { directions } = fabric;
  const length = (value: number): string => lengthText(value, unit);
  const { settings, strokes } = workInAll(fabric);
  const before = cutBefore(fabric).map(
    (one) =>
      `${one.of === 'fold' ? 'on the fold' : 'from ends at hand'} ${stripsText(one.directions.parts, { length })}`,
  );
  const own =
    directions.parts.length === 0
      ? []
      : [`${fabric.fold?.chosen ? 'opened ' : ''}${stripsText(directions.parts, { length })}`];
  const kept = [...directions.remnants, ...cutBefore(fabric).flatMap((one) => one.directions.remnants)]
    .slice(0, mostKept)
    .map(({ name, size, count }) => `${name}, ${count === 1 ? '' : `${count} of `}${sizeText(size, unit)}`);
  return [
    `${letter}: ${[...before, ...own].join('; ')}`,
    `${counted(settings, 'ruler setting')}, ${counted(strokes, 'stroke')}`,
    ...(kept.length === 0 ? [] : [`keep ${kept.join('; ')}`]),
  ].join('; ');
};

const cutList = (plan: QuiltPlan): readonly string[] => {
  const signs = clothSignsFor(plan);
  const { unit } = plan.quilt;
  return plan.fabrics.flatMap((fabric) => {
    const { letter } = signOf(signs, fabric.id);
    const rows = fabric.pieces
      .slice(0, mostSizes)
      .map((piece, index) => [
        cutMark(letter, index),
        `${piece.count} of ${piece.cut.map((side) => lengthText(side, unit)).join(' × ')}`,
        [usesText(plan, piece.for), ...cutApart[piece.shape]].join(', '),
      ]);
    const more = fabric.pieces.length - rows.length;
    return [
      ...columns(rows),
      ...wrapped(howCut(plan, fabric, letter), '      '),
      ...(more > 0 ? [`  and ${counted(more, 'more size')} of cloth ${letter}`] : []),
    ];
  });
};

const joiningWords = {
  straight: '',
  curved: ', some seams curved',
  partial: ', seams closed later',
  'set-in': ', seams set in',
} as const;

const sewing = (plan: QuiltPlan): readonly string[] => [
  ...plan.blocks.flatMap((block) => {
    const title = entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
    const made = `${counted(block.steps.length, 'step')}${joiningWords[block.joining]}`;
    const steps = block.patches.length === 0 ? 'made elsewhere' : made;
    return wrapped(`${block.count} × ${title}: ${steps}`, '  ');
  }),
  ...wrapped(`The top: ${[...shapeText(plan), counted(plan.top.steps.length, 'step')].join(', ')}`, '  '),
];

const shapeText = (plan: QuiltPlan): readonly string[] => {
  const { rows, sashRows, sections, borders } = topShape(plan);
  return [
    sections > 0 ? counted(sections, 'section') : counted(rows, 'row'),
    ...(sashRows === 0 ? [] : [`${counted(sashRows, 'row')} of sashes`]),
    counted(borders, 'border'),
  ];
};

const finish = (plan: QuiltPlan): readonly string[] => {
  const { binding, backing, batting, sleeve, label } = plan.finish;
  const size = (width: number, height: number): string => `${checked(plan, width)} × ${checked(plan, height)}`;
  return [
    backing === null
      ? '  No backing planned'
      : `  Backing ${size(backing.width, backing.height)}, ${counted(backing.panels, 'panel')}`,
    batting === null ? '  No batting planned' : `  Batting ${size(batting.width, batting.height)}`,
    binding === null ? '  No binding planned' : bindingLine(plan, binding),
    ...(sleeve === null ? [] : [`  Hanging sleeve cut ${size(...sleeve.cut)}`]),
    ...(label === null ? [] : [`  Label cut ${size(...label.cut)}`]),
  ];
};

const bindingLine = (plan: QuiltPlan, of: NonNullable<QuiltPlan['finish']['binding']>): string => {
  const { unit } = plan.quilt;
  const needed = `${checked(plan, of.length)} needed`;
  if (of.bias === null) return `  Binding ${counted(of.strips, 'strip')} of ${lengthText(of.cut, unit)}, ${needed}`;
  const { squares, side } = of.bias;
  return `  Binding ${lengthText(of.cut, unit)} wide on the bias from ${counted(squares, 'square')} of ${lengthText(side, unit)}, ${needed}`;
};

/** "6½ in", "about 36½ in" where no ruler has the length. */
const checked = (plan: QuiltPlan, value: number): string => checkLength(value, plan.quilt).replaceAll('\u00a0', ' ');
