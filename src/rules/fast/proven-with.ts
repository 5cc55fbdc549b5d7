import type { Ranking } from '../weighing/rank.ts';

/** Nobody wins while one that was not judged may be better: whoever would have is the one who may. */
export const provenWith = (unseen: number, ranking: Ranking): Ranking =>
  unseen === 0 ? ranking : { ...ranking, winner: null };
