import { sideInput } from '../inputs/input.ts';
import { greatest } from '../judging/side.ts';
import { turningRadii, wholeDistances, workDistances } from './profile.ts';

/** Greatest distance of part and fixture from the tilt axis. */
export const tiltedRadius = greatest(['part', 'rotary'], () => workDistances());

/** The same with the faceplate. */
const wholeRadius = greatest(['part', 'rotary'], wholeDistances);

/** What turns about a level axis. */
const turnedRadius = greatest(['part', 'rotary'], turningRadii);

export const tiltedRadiusInput = sideInput(
  'distance from the tilt axis',
  'mm',
  [10, 900],
  'tilted radius',
  () => tiltedRadius,
);

/** With the faceplate; on a level axis the radius that turns. */
export const wholeRadiusInput = sideInput('swept radius', 'mm', [10, 900], 'swept radius', (of) =>
  of.rotary.axes === 1 ? turnedRadius : wholeRadius,
);
