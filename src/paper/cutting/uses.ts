// What is a cut size for? "Log cabin B, D · sashing": the blocks with their labels, then the parts of the
// top and the finish.
import type { PieceUse, QuiltPlan } from '#craft';

/** A block's entry as people name it: its title, its colouring unless it is the usual one, and whether it is mirrored. */
export const entryTitle = (
  plan: QuiltPlan,
  of: { readonly block: string; readonly colouring: string; readonly mirror: boolean },
): string => {
  const same = plan.blocks.filter(({ id }) => id === of.block);
  const title = same[0]?.title || of.block;
  const inColours = of.colouring === 'default' ? '' : `, ${of.colouring}`;
  return `${title}${inColours}${of.mirror ? ', mirrored' : ''}`;
};

export const usesText = (plan: QuiltPlan, uses: readonly PieceUse[]): string => {
  const labels = new Map<string, string[]>();
  for (const use of uses) {
    const name =
      use.block === null
        ? roleNames[use.role]
        : entryTitle(plan, { block: use.block, colouring: use.colouring ?? 'default', mirror: use.mirror });
    const list = labels.get(name) ?? [];
    // the pieces of the finish carry no label that stands on a drawing
    const isLabelled = !['binding', 'backing', 'sleeve', 'label'].includes(use.role);
    const label = use.turn === null || use.turn === 0 ? use.label : `${use.label} turned ${use.turn}°`;
    if (isLabelled && !list.includes(label)) list.push(label);
    labels.set(name, list);
  }
  return [...labels].map(([name, list]) => (list.length === 0 ? name : `${name} ${list.join(', ')}`)).join('; ');
};

const roleNames: Record<PieceUse['role'], string> = {
  block: 'Blocks',
  sash: 'Sashing',
  cornerstone: 'Cornerstones',
  plain: 'Plain squares',
  strip: 'Strips between blocks',
  fill: 'Plain pieces between blocks',
  'side-triangle': 'Side triangles',
  'corner-triangle': 'Corner triangles',
  border: 'Borders',
  spacer: 'Spacer strips',
  'border-corner': 'Border corners',
  binding: 'Binding',
  backing: 'Backing',
  sleeve: 'Hanging sleeve',
  label: 'Label',
};

/** "Blocks, borders, binding": what a cloth is bought for. */
export const rolesText = (uses: readonly PieceUse[]): string => {
  const roles = Object.keys(roleNames) as PieceUse['role'][];
  const names = roles.filter((role) => uses.some((use) => use.role === role)).map((role) => roleNames[role]);
  return names.map((name, i) => (i === 0 ? name : name.toLowerCase())).join(', ');
};
