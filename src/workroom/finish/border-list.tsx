// The borders as they stand: they are made in Set.
import { parseLength } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { borderWords, quiltAddress, useBlockName, useQuilt } from '#workroom/room';

export const BorderList = () => {
  const { id, document, words } = useQuilt();
  const nameOf = useBlockName();
  const { fabrics, unit } = document;
  const borders = document.top.borders ?? [];
  const clothOf = (fabric: string): string => fabrics.find((one) => one.id === fabric)?.name || fabric;
  const wide = (width: string | number): string => {
    const read = parseLength(width, { unit, sign: 'any' });
    return read.ok ? words.length(toNumber(read.value)) : String(width);
  };
  return (
    <>
      <ol className="border-list">
        {borders.map((border, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a border is known by its place
          <li key={index}>
            <strong>{borderWords(index + 1, borders.length)}</strong>{' '}
            {'pieced' in border
              ? `pieced of ${nameOf(border.pieced.block)}`
              : `${wide(border.width)} of ${clothOf(border.fabric)}, corners ${cornerWords[border.corners ?? 'butted']}`}
          </li>
        ))}
      </ol>
      <a href={quiltAddress(id, 'set')}>{borders.length === 0 ? 'Add borders in Set' : 'Change the borders in Set'}</a>
    </>
  );
};

const cornerWords = { butted: 'butted', squares: 'with squares', mitred: 'mitred' } as const;
