// A page that could not be made: always a fault of ours, never of the maker's document.

export interface PressFault {
  readonly message: string;
  readonly file: string;
  /** 1-based; null when the compiler names no place. */
  readonly line: number | null;
  readonly column: number | null;
}

export class PressFailure extends Error {
  readonly faults: readonly PressFault[];

  constructor(faults: readonly PressFault[]) {
    super(
      faults.map(({ file, line, message }) => `${file}${line === null ? '' : `:${line}`}: ${message}`).join('\n') ||
        'the compiler gave no reason',
    );
    this.name = 'PressFailure';
    this.faults = faults;
  }
}
