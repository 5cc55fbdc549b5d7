import type { CheckId } from './checks/ids.ts';
import type { StageId } from './stages/index.ts';

/** Of a large catalog: what fails whatever is added is dropped by tables; these are the others. */
export interface MarketCount {
  /** judged one by one */
  readonly looked: number;
  /** may pass, but are surely behind one that was judged */
  readonly behind: number;
  /** were too many to be judged; one of them may be better */
  readonly unseen: number;
}

export interface StageCount {
  readonly stage: StageId;
  readonly before: number;
  readonly after: number;
  readonly dropped: Readonly<Partial<Record<CheckId, number>>>;
}

export interface RotaryCount {
  /** id of a rotary; `yew/built-in` for a machine's own table */
  readonly rotary: string;
  readonly count: number;
  readonly left: number;
  readonly dropped: Readonly<Partial<Record<CheckId, number>>>;
}
