import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { Stability } from '../decision-stability.ts';
import type { Standing } from '../standing.ts';

/** How far each numeric answer may move while the recommendation stays; empty where nothing is recommended. */
export const stabilityOf = (
  _standing: Standing,
  _from: { readonly answers: Answers; readonly catalog: Catalog },
): readonly Stability[] => [];
