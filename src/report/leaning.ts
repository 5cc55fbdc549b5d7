import type { BuiltIn } from '../catalog/catalog.ts';
import type { Arrangement, Decision } from '../rules/decision.ts';

/** Which way the top of the work leans as the table tilts, and so where its faces look. */
const LEANS: Readonly<Record<Exclude<BuiltIn['leans'], 'unknown'>, string>> = {
  'toward-door': 'As it tilts, the top of the work leans toward the door.',
  'toward-column': 'As it tilts, the top of the work leans toward the column.',
  'toward-left': 'As it tilts, the top of the work leans to the left.',
  'toward-right': 'As it tilts, the top of the work leans to the right.',
  downward: 'As it tilts, the end of the work toward the spindle leans down.',
  upward: 'As it tilts, the end of the work toward the spindle leans up.',
};

/** Mounted as it comes it leans toward the door or to the right; turned end for end the other way. */
const BY_MOUNTING = {
  'tilt-along-x': ['toward-door', 'toward-column'],
  'tilt-along-y': ['toward-right', 'toward-left'],
} as const;

const OPPOSITE = {
  'toward-door': 'toward-column',
  'toward-column': 'toward-door',
  'toward-left': 'toward-right',
  'toward-right': 'toward-left',
  downward: 'upward',
  upward: 'downward',
} as const;

/** A sentence on the lean; null where nothing tilts or the catalog does not say. */
export function leaning(arrangement: Arrangement, decision: Decision): string | null {
  const { mounting, turned } = arrangement;
  if (mounting === 'tilt-along-x' || mounting === 'tilt-along-y') {
    return LEANS[BY_MOUNTING[mounting][turned ? 1 : 0]];
  }
  const machine = decision.inputs.catalog.machines.find(({ id }) => id === arrangement.machine);
  const leans = machine?.builtIn?.leans ?? 'unknown';
  if (mounting !== 'built-in' || leans === 'unknown') return null;
  // stated for positive tilt: work is tilted to the side that goes further
  const tilt = machine?.builtIn?.tilt;
  const negativeGoesFurther = typeof tilt === 'object' && tilt !== null && -tilt[0] > tilt[1];
  return LEANS[negativeGoesFurther ? OPPOSITE[leans] : leans];
}
