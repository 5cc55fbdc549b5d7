import type { Part } from '../answers.ts';

/**
 * Whether a part asks for more than three axes, or may: cut from the top alone it is three-axis work, and
 * is judged on no rotary. Example: approaches ['top'] → false, 'unknown' → true.
 */
export function needsTilt(part: Part): boolean {
  return part.approaches === 'unknown' || part.approaches.some((approach) => approach !== 'top');
}

/** Whether it is cut, or may be, in one of these plain directions. */
export function mayBeCutFrom(part: Part, directions: readonly ('top' | 'sides' | 'around')[]): boolean {
  return (
    part.approaches === 'unknown' ||
    part.approaches.some((approach) => directions.some((direction) => direction === approach))
  );
}
