import { T_SLOTS } from '../../mechanics/building/t-slots.ts';

const INCH = 25.4;
/** How far a stated width may be off its nominal size, mm: rounding, and the play of keys. */
const OFF = 0.15;

/** Why a width is that of a slot. */
export const SLOT_WIDTH = {
  reason: 'slots and their keys are made to standard widths',
  source: 'ISO 299 widths; sixteenths of an inch are common practice, no source',
  expected: `one of ${T_SLOTS.map(({ width }) => width).join(', ')} mm, or sixteenths of an inch`,
} as const;

/**
 * Whether this is a width of T-slots, in mm: one of ISO 299, or whole sixteenths of an inch.
 * Example: isSlotWidth(18) → true, isSlotWidth(15.875) → true, isSlotWidth(17) → false.
 */
export function isSlotWidth(width: number): boolean {
  if (T_SLOTS.some((size) => Math.abs(size.width - width) <= OFF)) return true;
  const sixteenths = Math.round((width / INCH) * 16);
  return sixteenths >= 3 && sixteenths <= 34 && Math.abs((sixteenths / 16) * INCH - width) <= OFF;
}
