import type { RotaryClass } from './catalog.ts';

const TILTING: readonly string[] = ['single-support', 'trunnion'] satisfies readonly RotaryClass[];

/** Whether a rotary of this class has a tilt axis. Example: isTilting('trunnion') → true. */
export const isTilting = (rotaryClass: unknown): boolean =>
  typeof rotaryClass === 'string' && TILTING.includes(rotaryClass);
