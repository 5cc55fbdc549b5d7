import type { Feature } from '../../catalog/catalog.ts';
import type { MeasureToTake } from '../decision.ts';

/** Features that a check may ask to be ordered, by the measure that names them; where there is one, by its own check. */
const ORDERED = {
  'spindle-probe': 'spindleProbe',
  'tool-center-point': 'toolCenterPoint',
  'rotating-work-offset': 'rotatingWorkOffset',
  'tilted-work-plane': 'tiltedWorkPlane',
  'look-ahead': 'lookAhead',
} as const satisfies Partial<Record<MeasureToTake, Feature>>;

const BY_NAME: ReadonlyMap<string, Feature> = new Map(Object.entries(ORDERED));

/** The feature that a measure, or a check, asks for; undefined where it asks for none. Example: 'look-ahead' → 'lookAhead'. */
export const featureOf = (name: string): Feature | undefined => BY_NAME.get(name);

/** All features that a check may ask to be ordered. */
export const ORDERED_FEATURES: readonly Feature[] = Object.values(ORDERED);
