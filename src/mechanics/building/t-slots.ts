/** A size of T-slot, mm. */
export interface TSlot {
  /** width of the slot where keys and the necks of T-bolts stand */
  readonly width: number;
  /** thread of the bolt that goes with it */
  readonly bolt: string;
  /** pitches of slots that go with it */
  readonly pitches: readonly number[];
  /** pitches that are listed but to be avoided */
  readonly avoided: readonly number[];
}

const slot = (
  width: number,
  bolt: string,
  pitches: readonly number[],
  avoided: readonly number[] = [],
): TSlot => ({
  width,
  bolt,
  pitches,
  avoided,
});

/**
 * The sizes of T-slots, with the bolt and the pitches that go with each.
 *
 * Formula: table
 * Symbols: width of the slot, pitches, pitches to be avoided, mm
 * Valid: the sizes listed
 * Source: ISO 299:1987 (the same as BS 2485), as printed in "T-Slot Profile Design per BS 2485", engineersedge.com
 * Example: T_SLOTS.map((size) => size.width) → [5, 6, 8, 10, 12, 14, 18, 22, 28, 36, 42, 48, 54]
 */
export const T_SLOTS: readonly TSlot[] = [
  slot(5, 'M4', [20, 25, 32]),
  slot(6, 'M5', [25, 32, 40]),
  slot(8, 'M6', [32, 40, 50]),
  slot(10, 'M8', [40, 50, 63]),
  slot(12, 'M10', [50, 63, 80], [40]),
  slot(14, 'M12', [63, 80, 100], [50]),
  slot(18, 'M16', [80, 100, 125], [63]),
  slot(22, 'M20', [100, 125, 160], [80]),
  slot(28, 'M24', [100, 125, 160, 200]),
  slot(36, 'M30', [125, 160, 200, 250]),
  slot(42, 'M36', [160, 200, 250, 320]),
  slot(48, 'M42', [200, 250, 320, 400]),
  slot(54, 'M48', [250, 320, 400, 500]),
];

/**
 * The row of the standard for a slot of this width; undefined where the standard has none.
 *
 * Formula: table of sizes
 * Symbols: width of the slot, mm
 * Valid: any width
 * Source: ISO 299:1987 sizes as printed in "T-Slot Profile Design per BS 2485", engineersedge.com
 * Example: tSlotOfWidth(14)?.bolt → 'M12'
 */
export function tSlotOfWidth(width: number): TSlot | undefined {
  return T_SLOTS.find((size) => size.width === width);
}
