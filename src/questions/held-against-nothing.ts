import type { Uncertain } from './answers.ts';
import { NOT_SURE } from './ranges.ts';

/**
 * What is held against nothing while nobody names it, and may turn out to be anything once somebody is asked: a number
 * of these ranges. Of the first ones that is all that their questions take, so that a very large one is among them: it
 * says as little as none. A rate is one that *not sure* stands for.
 */
export const HELD_AGAINST_NOTHING = {
  'money.budget': [0, 1e9],
  'shop.floorRating': [1e-6, 1e5],
  'shop.power.kVA': [1e-6, 1e5],
  'shop.air.flow': [0, 1e6],
  'shop.air.bar': [0, 1000],
  'work.visesWanted': [0, 20],
  'money.shopRate': [NOT_SURE['money.shopRate'].low, NOT_SURE['money.shopRate'].high],
} as const satisfies Record<string, Uncertain>;

/** Whether nothing is held against this answer while nobody names it. Example: 'shop.air.flow' → true. */
export const isHeldAgainstNothing = (path: string): boolean => Object.hasOwn(HELD_AGAINST_NOTHING, path);
