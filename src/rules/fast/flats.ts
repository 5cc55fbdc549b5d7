import type { Family } from '../arranging/family.ts';
import type { ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { type Flat, flatOf } from './flat-judge.ts';

/** What is worked out of a mix for all of its cases at once, and of arrangements themselves. */
export interface Flats {
  readonly ofParts: Flat;
  readonly ofNone: Flat;
  /** by family: where its kinds stand among the cases */
  readonly kindsOf: readonly (readonly number[])[];
}

export function flatsOf(families: readonly Family[], shop: ShopCase): Flats {
  let count = 0;
  const kindsOf = families.map(({ cases }) => cases.map(() => count++));
  return {
    ofParts: flatOf(
      families.flatMap(({ cases }) => cases),
      shop,
    ),
    ofNone: flatOf([null], shop),
    kindsOf,
  };
}

export const casesFor = (check: Check, { ofParts, ofNone }: Flats): Flat =>
  check.about === 'part' ? ofParts : ofNone;
