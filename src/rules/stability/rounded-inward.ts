/**
 * An end in as few digits as can be read, never farther from the answer than it was found. `whole`: a whole number.
 * Example: roundedInward(213.97, 180, false) → 213; roundedInward(0.0412, 0.05, false) → 0.0412.
 */
export function roundedInward(end: number, at: number, whole: boolean): number {
  if (end === at) return at;
  const unit = whole ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(end) || Math.abs(at))) - 2);
  const inward = end > at ? Math.floor : Math.ceil;
  const rounded = Number((inward(end / unit) * unit).toPrecision(12));
  return (end > at ? rounded > end || rounded < at : rounded < end || rounded > at) ? at : rounded;
}
