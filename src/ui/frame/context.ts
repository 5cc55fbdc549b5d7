import type { World } from '../../session/world.ts';
import type { Situation } from '../keys/situation.ts';

/** What a screen is drawn with, besides what it shows. */
export interface Context {
  readonly world: World;
  readonly here: Situation;
  readonly width: number;
  /** rows of the frame: one less than the window has */
  readonly height: number;
  readonly ascii: boolean;
  readonly color: boolean;
  readonly sessionFile: string;
  /** why the answers are not saved; null: they are */
  readonly unsaved: string | null;
}

/** The least window in which everything that is needed finds room. */
export const LEAST_COLUMNS = 60;
export const LEAST_ROWS = 20;
/** From so many rows on, what an answer does is shown in several lines. */
export const ROOMY_ROWS = 23;
