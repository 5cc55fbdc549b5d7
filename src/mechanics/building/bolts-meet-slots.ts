/**
 * Whether bolts at one pitch stand in slots at another: they do at its whole multiples.
 *
 * Formula: |b − k·s| ≤ tolerance for k = round(b/s) ≥ 1
 * Symbols: b pitch of the bolts, mm; s pitch of the slots, mm; tolerance ± mm, what play and slotted lugs take up
 * Valid: b > 0, s > 0, tolerance ≥ 0
 * Source: counting slots
 * Example: boltsMeetSlots(160, 80, 0.5) → true
 */
export function boltsMeetSlots(boltPitch: number, slotPitch: number, tolerance: number): boolean {
  if (boltPitch <= 0 || slotPitch <= 0 || tolerance < 0) {
    throw new RangeError(
      `Pitches are above 0 and tolerances not below: ${boltPitch}, ${slotPitch}, ±${tolerance} mm.`,
    );
  }
  const slots = Math.max(1, Math.round(boltPitch / slotPitch));
  return Math.abs(boltPitch - slots * slotPitch) <= tolerance;
}
