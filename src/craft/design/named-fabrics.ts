// The fabrics that a document names: for asking whether there is one, and for saying which there are.

export interface NamedFabrics {
  readonly ids: readonly string[];
  readonly has: ReadonlySet<string>;
}
