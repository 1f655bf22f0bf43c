// A place in a document as text: JSON pointer, RFC 6901.

export type Segment = string | number;

export const pointer = (segments: readonly PropertyKey[]): string =>
  segments.map((segment) => `/${escaped(String(segment))}`).join('');

export const under = (path: string, ...segments: readonly Segment[]): string => `${path}${pointer(segments)}`;

const escaped = (segment: string): string => segment.replaceAll('~', '~0').replaceAll('/', '~1');
