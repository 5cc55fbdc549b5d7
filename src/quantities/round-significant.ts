/**
 * A number rounded to 12 significant digits, so that what was written in inches and what was written in
 * millimeters become the same number. Example: roundSignificant(3.5 * 25.4) → 88.9 (not 88.89999999999999).
 */
export const roundSignificant = (value: number): number => {
  const rounded = Number(value.toPrecision(12));
  return rounded === 0 ? 0 : rounded;
};
