// What can be done with a version: the quilt goes back to it, in one step that undo takes back; or it becomes a quilt of its own.
import type { JsonObject } from '#workroom/editing';
import { quiltAddress, useQuilt, useRoom } from '#workroom/room';
import type { Weighed } from './use-weighed.ts';
import { becomeDocument, named } from './versions.ts';

export const VersionKeys = ({ side, name }: { readonly side: Weighed; readonly name: string }) => {
  const { edit, copyOut, keepPoint, document: own } = useQuilt();
  const { say } = useRoom();
  const { version, found } = side;
  const document = found.document as unknown as JsonObject | null;
  if (document === null) return <div />;
  switch (version.kind) {
    case 'now':
      return (
        <div className="row">
          <button type="button" onClick={() => void keepPoint()}>
            Keep a restore point
          </button>
        </div>
      );
    case 'quilt':
      return (
        <div className="row">
          <a className="key-link" href={quiltAddress(version.id, 'set')} aria-label={`Open it: ${name}`}>
            Open it
          </a>
        </div>
      );
    default:
      return (
        <div className="row">
          {version.kind !== 'size' && (
            <button
              type="button"
              aria-label={`Go back to this one: ${name}`}
              onClick={() => {
                edit(`Go back to ${name}`, (draft) => becomeDocument(draft, document));
                say(`The quilt is again as in ${name}. Undo brings back what was.`);
              }}
            >
              Go back to this one
            </button>
          )}
          <button
            type="button"
            aria-label={`A quilt of its own: ${name}`}
            onClick={() => copyOut(named(document, { quilt: own.title, version: name }))}
          >
            A quilt of its own
          </button>
        </div>
      );
  }
};
