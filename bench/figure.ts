/** One line of the table: a figure as it was measured, and what was promised. */
export interface Figure {
  /** the requirement on the terminal that it is measured for; null: it is about the engine */
  readonly requirement: number | null;
  readonly what: string;
  /** null: it cannot be measured here */
  readonly value: number | null;
  readonly unit: '×' | 'ms' | 'MB' | 'KB' | 'bytes' | 'packages' | 'exponent' | 'checks/s';
  /** what it may be at most; null: for information */
  readonly atMost: number | null;
  /** what it has to be at least; left out: nothing */
  readonly atLeast?: number;
  /** the times behind a ratio, and whatever else helps to read it */
  readonly beside: string;
}

interface Around {
  /** measured runs of each thing, after one that does not count */
  readonly rounds: number;
  /** the bundled program */
  readonly program: string;
  /** a folder of the bench's own, removed when it is over */
  readonly folder: string;
}

/** What is measured together: its name on the command line, and how. */
export interface Bench {
  readonly name: string;
  readonly run: (around: Around) => Promise<readonly Figure[]>;
}
