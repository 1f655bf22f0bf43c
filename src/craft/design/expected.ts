// The shapes of value that a document can hold, for saying which one was expected.

export type Expected =
  | 'object'
  | 'list'
  | 'text'
  | 'number'
  | 'whole-number'
  | 'true-or-false'
  | 'length'
  | 'size'
  | 'place'
  | 'corner'
  | 'centre'
  | 'widths'
  | 'tone'
  | 'cell'
  | 'border'
  | 'sash-widths'
  | 'bought'
  | 'bought-length'
  | 'sheet-size'
  | 'section';
