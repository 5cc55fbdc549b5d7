import type { Part } from '../answers.ts';
import { needsTilt } from '../parts/needs-tilt.ts';

/** Whether the axes of the rotary move while it cuts, or may. */
export const mayMove = (part: Part): boolean =>
  needsTilt(part) && (part.motion === 'simultaneous' || part.motion === 'unknown');

/** Whether curved surfaces are milled, with axes moving or not. */
export const mayContour = (part: Part): boolean => needsTilt(part) && part.motion !== 'positional';
