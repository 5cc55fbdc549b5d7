import type { Answers, Part } from '../../questions/answers.ts';
import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { Loose } from '../../rules/checks/example.ts';
import type { DrawnKey } from './drawn-answers.ts';
import type { Seeded } from './seeded.ts';

/** On which side of its line a rule stands: yes where a check holds. */
export type Side = 'yes' | 'no';

/** The calm shop that an exercise begins with: how the part is held and worked, and answers that are otherwise. */
export interface Base {
  readonly by?: Part['holding']['by'];
  /** share of what the rotary carries tilted that the fixture weighs; usual: two fifths */
  readonly load?: number;
  /** height of the fixture as a share of the room; usual: about a fifth */
  readonly tall?: number;
  /** added to the length of the longest tool, mm */
  readonly longer?: number;
  readonly part?: Loose<Part>;
  readonly work?: Loose<Answers['work']>;
  readonly tools?: Loose<Answers['tools']>;
  /** further parts of the mix: the first with this changed */
  readonly others?: readonly Loose<Part>[];
}

/** How a rule is brought to decide. */
export interface Recipe {
  readonly bases: readonly Base[];
  /** the answers that are moved, tried in a drawn order; none: the rows of the catalog alone bring it about */
  readonly moves: readonly DrawnKey[];
  /** arrangements that are worth trying; left out: all */
  readonly suits?: (candidate: Candidate, side: Side, level: Level) => boolean;
  /** the longest tool is first made as long as it can be, so that nothing can be raised any more */
  readonly tight?: boolean;
  /**
   * how near the line it gets. `number`: as near as the level says. `rows`: only as near as the rows
   * of the catalog let it come. `yes or no`: there is no near.
   */
  readonly line: 'number' | 'rows' | 'yes or no';
  /** where that is otherwise on the side of no */
  readonly onNo?: 'rows' | 'yes or no';
  /** it never fails: there is always a measure */
  readonly neverNo?: boolean;
  /** what is drawn may stand on either side: it is moved over the line from there too */
  readonly eitherSide?: boolean;
}

/** 1: far from the line. 2: not far. 3: near it. */
export type Level = 1 | 2 | 3;

/** How far from the line, as a share of the larger of need and have. At least a hundredth: predictions are right within that. */
export const BANDS: Readonly<Record<Level, readonly [least: number, most: number]>> = {
  1: [0.25, 0.9],
  2: [0.1, 0.25],
  3: [0.01, 0.05],
};

/** Half of all seeds stand on either side of the line; the other is tried where there is none on that. */
export function sidesDrawn(draw: Seeded): readonly [Side, Side] {
  return draw.whole(0, 1) === 0 ? ['yes', 'no'] : ['no', 'yes'];
}

/** Whether there is a near on that side of the line. */
export const lineOf = ({ line, onNo }: Recipe, side: Side): Recipe['line'] =>
  side === 'no' ? (onNo ?? line) : line;

export const LEVELS = [1, 2, 3] as const satisfies readonly Level[];
