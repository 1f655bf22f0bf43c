// The cloths of the example quilts: what they are cut from, beside each kind of piece on strips of its own, the way printed
// patterns do it; and whether the purchase is proven least.

import type { FabricPlan, QuiltPlan } from '#craft';
import { scaledJobFor, shopStepFor } from '#craft/cutting';
import { type IntegerSolver, stepsFor } from '#craft/strips';
import { msText, ofText, printTable, shareText } from '../table.ts';
import { stripCourse } from './engine.ts';
import { median } from './measure.ts';

/** Each kind lies the way that takes less. */
const ownStripsLength = (fabric: FabricPlan): number => {
  const { width } = fabric.laid.layout;
  return fabric.pieces.reduce((sum, piece) => {
    const alone = ([across, along]: readonly [number, number]): number =>
      across > width + 1e-9
        ? Number.POSITIVE_INFINITY
        : Math.ceil(piece.count / Math.floor(width / across + 1e-9)) * along;
    const [across, along] = piece.cut;
    const turned = piece.mayTurn ? alone([along, across]) : Number.POSITIVE_INFINITY;
    return sum + Math.min(alone([across, along]), turned);
  }, 0);
};

export interface ExamplePlan {
  readonly name: string;
  readonly plan: QuiltPlan;
}

/** Milliseconds that one cloth is searched in two stages. */
const flatMs = 2000;

/** Of cloths by the length, with every piece of them: what two stages need at least, within the time. */
const flatCourse = (plan: QuiltPlan, fabric: FabricPlan, solver: IntegerSolver) => {
  const demands = fabric.pieces.map(({ cut, count, mayTurn }) => ({ across: cut[0], along: cut[1], count, mayTurn }));
  const { job, grid, unit } = scaledJobFor({ width: fabric.laid.layout.width, demands, turning: 'as-demanded' });
  const asked = shopStepFor(plan.quilt);
  const perUnit = grid.per / unit;
  const shop = { step: asked.step * perUnit, before: asked.before * perUnit };
  const { last, ms } = stripCourse({ job, cutting: { stages: 2 }, shop, solver, timesMs: [flatMs] });
  return { proven: stepsFor(last.length, shop) === stepsFor(last.bound, shop), ms };
};

export const printExamples = (examples: readonly ExamplePlan[], solver: IntegerSolver): void => {
  const all = examples.map(({ name, plan }) => {
    const cloths = plan.fabrics
      .filter(({ laid }) => !('sheets' in laid))
      .map((fabric) => ({ fabric, name: `${name}: ${fabric.id}`, flat: flatCourse(plan, fabric, solver) }));
    return { name, plan, cloths };
  });
  const rows = all.map(({ name, plan, cloths }) => {
    const used = cloths.reduce((sum, { fabric }) => sum + fabric.laid.layout.length, 0);
    const own = cloths.reduce((sum, { fabric }) => sum + ownStripsLength(fabric), 0);
    const count = (is: (cloth: (typeof cloths)[number]) => boolean): string =>
      ofText(cloths.filter(is).length, cloths.length);
    return [
      name,
      `${own.toFixed(2)} ${plan.quilt.unit}`,
      `${used.toFixed(2)} ${plan.quilt.unit}`,
      shareText(own > 0 ? 100 * (1 - used / own) : 0),
      count(({ fabric: { laid } }) => laid.bound >= laid.layout.length - 1e-9),
      count(({ fabric }) => fabric.buy.proven),
      count(({ flat }) => flat.proven),
    ];
  });
  const proofs = ['purchase proven least', `in two stages, ${flatMs} ms`];
  printTable([['quilt', 'each kind on its own strips', 'laid out', 'saved', 'least proven', ...proofs], ...rows]);
  const cloths = all.flatMap((each) => each.cloths);
  const say = (what: string, open: readonly (typeof cloths)[number][]): void => {
    const names = open.length > 0 ? `; open: ${open.map(({ name }) => name).join(', ')}` : '';
    console.log(`${what}: ${ofText(cloths.length - open.length, cloths.length)} cloths${names}`);
  };
  say(
    'Purchase proven least as planned',
    cloths.filter(({ fabric }) => !fabric.buy.proven),
  );
  say(
    `Purchase proven least in two stages, ${flatMs} ms`,
    cloths.filter(({ flat }) => !flat.proven),
  );
  const times = cloths.map(({ flat }) => flat.ms);
  console.log(`Two stages took ${msText(median(times))} a cloth, ${msText(Math.max(...times))} at most`);
};
