import { part } from '../../rules/inputs/part.ts';
import { called, given } from './piece.ts';

/** The tilt that the sides of a part ask for: gives tilt. */
export const TILT = given({
  tilt: called(
    'tilt that the cuts ask for: none from the top, a right angle for the sides and around, its own angle for a slant or an undercut',
    part.tilt,
  ),
});
