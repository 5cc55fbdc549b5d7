import type { Mounting } from '../../catalog/catalog.ts';

/**
 * Does the rotary's own axis that lies along X or Y of the machine point to the left, or to the front? The frame of
 * a rotary is a thing that can be turned but not mirrored: with u along X, v points to the rear; a quarter turn on,
 * with u to the rear, v points to the left. Turned end for end both point the other way.
 * Example: pointsBack('tilt-along-y', false, 'x') → true.
 */
export const pointsBack = (mounting: Mounting | 'built-in', turned: boolean, axis: 'x' | 'y'): boolean =>
  turned !== (axis === 'x' && mounting.endsWith('along-y'));
