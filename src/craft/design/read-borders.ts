// The borders of a top, from the inside outward: plain strips with their corners, or blocks side by side.
import type { WrittenTop } from './document.ts';
import type { BorderDesign } from './quilt.ts';
import { fabricAt, namedColouring, type TopReading } from './read-cells.ts';

type WrittenBorder = NonNullable<WrittenTop['borders']>[number];
type WrittenStrip = Exclude<WrittenBorder, { readonly pieced: unknown }>;
type WrittenPieced = Extract<WrittenBorder, { readonly pieced: unknown }>['pieced'];

export const readBorders = (written: readonly WrittenBorder[], at: TopReading): readonly BorderDesign[] =>
  written.flatMap((border, i): readonly BorderDesign[] => {
    const path = `/top/borders/${i}`;
    return 'pieced' in border
      ? [readPieced(border.pieced, { ...at, path: `${path}/pieced` })]
      : readStrip(border, { ...at, path });
  });

const readStrip = (border: WrittenStrip, at: TopReading & { readonly path: string }): readonly BorderDesign[] => {
  const { path, reading } = at;
  const { corners = 'butted', cornerFabric = null, grain = 'least' } = border;
  const width = reading.length({ written: border.width, path: `${path}/width` });
  const fabric = fabricAt(border.fabric, { ...at, path: `${path}/fabric` });
  if (cornerFabric !== null) {
    const place = `${path}/cornerFabric`;
    fabricAt(cornerFabric, { ...at, path: place });
    if (corners !== 'squares') reading.report({ code: 'design/corner-fabric-unused', path: place, corners });
  }
  return width === null ? [] : [{ kind: 'strip', width, fabric, corners, cornerFabric, grain }];
};

const readPieced = ({ block, spacer }: WrittenPieced, at: TopReading & { readonly path: string }): BorderDesign => {
  namedColouring({ block }, at);
  if (spacer !== undefined) fabricAt(spacer, { ...at, path: `${at.path}/spacer` });
  return { kind: 'pieced', block, spacer: spacer ?? null };
};
