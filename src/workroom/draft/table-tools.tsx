// Beside the drafting table: what the tool in hand needs, the chosen patches, and the grid.
import type { Block } from './block-edits.ts';
import { ChosenPatches } from './chosen-patches.tsx';
import { CurveFields } from './curve-fields.tsx';
import { GridFields } from './grid-fields.tsx';
import { ToolFields } from './tool-fields.tsx';
import type { TableState } from './use-table.ts';

export const TableTools = ({ block, table }: { readonly block: Block; readonly table: TableState }) => {
  if (table.drawn === null) return null;
  return (
    <>
      {table.tool === 'choose' || table.tool === 'move' ? (
        <ChosenPatches block={block} table={table} />
      ) : table.tool === 'curve' ? (
        <CurveFields table={table} />
      ) : (
        <ToolFields table={table} />
      )}
      <GridFields table={table} />
    </>
  );
};
