import type { Uncertain } from './answers.ts';

/** Whether one number is less than another whatever the unknown ones are. Example: surelyLess([1, 2], 3) → true. */
export function surelyLess(a: Uncertain, b: Uncertain): boolean {
  if (a === 'unknown' || b === 'unknown') return false;
  return (typeof a === 'number' ? a : a[1]) < (typeof b === 'number' ? b : b[0]);
}
