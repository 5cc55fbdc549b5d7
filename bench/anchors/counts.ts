import type { World } from './world.ts';

/** What every way of judging has to come to. */
export interface Counts {
  /** verdicts that hold, over all checks, arrangements and parts */
  readonly held: number;
  /** parts on arrangements for which all twelve hold */
  readonly passed: number;
}

/** One way of judging a world: what is made once before, and what is measured. */
export type Anchor = (world: World) => () => Counts | Promise<Counts>;
