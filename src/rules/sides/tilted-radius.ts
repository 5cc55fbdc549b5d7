import { caseInput } from '../inputs/input.ts';
import { evaluateSide, greatest } from '../judging/side.ts';
import { derived } from '../judging/value.ts';
import { turningRadii, wholeDistances, workDistances } from './profile.ts';

/** Greatest distance of part and fixture from the tilt axis. */
export const tiltedRadius = greatest(['part', 'rotary'], () => workDistances());

/** The same with the faceplate. */
const wholeRadius = greatest(['part', 'rotary'], wholeDistances);

/** What turns about a level axis. */
const turnedRadius = greatest(['part', 'rotary'], turningRadii);

/** As an input of other terms: its unknowns are taken as independent of theirs. */
export const tiltedRadiusInput = caseInput('distance from the tilt axis', 'mm', [10, 900], (of) => {
  const value = evaluateSide(tiltedRadius, of);
  return derived(value, 'tilted radius', [value]);
});

/** With the faceplate, as an input; on a level axis the radius that turns. */
export const wholeRadiusInput = caseInput('swept radius', 'mm', [10, 900], (of) => {
  const value = evaluateSide(of.rotary.axes === 1 ? turnedRadius : wholeRadius, of);
  return derived(value, 'swept radius', [value]);
});
