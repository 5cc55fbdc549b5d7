import type { Mounting } from '../../catalog/catalog.ts';
import type { Decision } from '../../rules/decision.ts';
import { rotaryAt } from '../catalog-row.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { MOUNTING_WORDS } from '../wording/arrangement.ts';

/** The same rotary on the same machine the other way round, or why there is none to look at. */
export type OtherWay =
  | { readonly at: ArrangementAt }
  | { readonly missing: 'held one way only' | 'not listed'; readonly mounting: Mounting };

const OTHER: Readonly<Record<Mounting, Mounting>> = {
  'tilt-along-x': 'tilt-along-y',
  'tilt-along-y': 'tilt-along-x',
  'axis-along-x': 'axis-along-y',
  'axis-along-y': 'axis-along-x',
};

/** Null where nothing stands on a table. */
export function otherWay(decision: Decision, { arrangement }: ArrangementAt): OtherWay | null {
  const { machine, rotary, mounting } = arrangement;
  if (rotary === null || mounting === 'built-in') return null;
  const wanted = OTHER[mounting];
  const index = decision.arrangements.findIndex(
    (each) => each.machine === machine && each.rotary === rotary && each.mounting === wanted,
  );
  const found = decision.arrangements[index];
  if (found !== undefined) return { at: { arrangement: found, path: ['arrangements', index] } };
  const hold = rotaryAt(decision, rotary)?.row.hold ?? 'unknown';
  const isHeld = hold === 'unknown' || hold[wanted] !== undefined;
  return { missing: isHeld ? 'not listed' : 'held one way only', mounting: wanted };
}

/** Why the other way is not drawn, as a sentence; none where it is. */
export function whyNotBothWays(other: OtherWay | null): readonly string[] {
  if (other === null || 'at' in other) return [];
  const way = MOUNTING_WORDS[other.mounting];
  return [
    other.missing === 'not listed'
      ? `Not drawn is the ${way}: this decision does not list it.`
      : `Not drawn is the ${way}: the catalog names no way to hold the base like that.`,
  ];
}
