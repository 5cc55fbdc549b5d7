import type { Case, ShopCase } from '../judging/case.ts';
import type { Side } from '../judging/side.ts';
import { flatOf } from './flat-judge.ts';
import { ANY_PART } from './flat-sides.ts';

/** Puts what each have comes to on a ground into a row of numbers: low and high by turns, of unlooked ones any number. */
export type HavesOn = (ground: Case, into: Float64Array, from: number) => void;

/** `isLookedUp`: the haves that are; no part may be read. */
export function havesOn(
  sides: readonly Side[],
  shop: ShopCase,
  isLookedUp: (side: Side) => boolean = () => true,
): HavesOn {
  const flat = flatOf([ANY_PART], shop).sides;
  const looked = sides.map(isLookedUp);
  return (ground, into, from) => {
    sides.forEach((side, at) => {
      const ends = looked[at] === true ? flat(side, ground) : null;
      into[from + at * 2] = ends?.low[0] ?? Number.NEGATIVE_INFINITY;
      into[from + at * 2 + 1] = ends?.high[0] ?? Number.POSITIVE_INFINITY;
    });
  };
}
