/** A file that cannot be read as a table: what was found, and what to do about it. */
export class UnreadableSheet extends Error {
  readonly found: string;
  readonly expected: string;
  /** from 1; 0: the file as a whole */
  readonly line: number;

  constructor(found: string, expected: string, line = 0) {
    super(found);
    this.name = 'UnreadableSheet';
    this.found = found;
    this.expected = expected;
    this.line = line;
  }
}

/** More rows than any list of what can be bought. */
export const MOST_ROWS = 50_000;

export const tooManyRows = (): UnreadableSheet =>
  new UnreadableSheet(
    `the table has more than ${MOST_ROWS} rows`,
    'expected fewer: divide it into several files',
  );
