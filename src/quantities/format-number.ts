/**
 * A number in plain digits: no exponent, no `-0`, no trailing zeros; three significant digits below 1 (at most six places), and at
 * most `decimals` places after the point where it is 1 or more. `grouped` sets thousands apart by a space.
 * Example: formatNumber(0.01234, 1) → '0.0123'; formatNumber(28500, 0, 'plain') → '28 500'.
 */
export function formatNumber(value: number, decimals: number, grouped?: 'thin' | 'plain'): string {
  if (Number.isNaN(value)) return 'not known';
  if (!Number.isFinite(value)) return value > 0 ? 'no limit' : 'no lower limit';
  const size = Math.abs(value);
  const places = size > 0 && size < 1 ? Math.min(6, 2 - Math.floor(Math.log10(size))) : decimals;
  // toFixed writes an exponent from 1e21 on
  const fixed = size >= 1e21 ? BigInt(size).toString() : size.toFixed(places);
  const digits = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  const sign = value < 0 && /[1-9]/.test(digits) ? '-' : '';
  return sign + (grouped === undefined ? digits : inGroups(digits, grouped === 'thin' ? '\u202f' : ' '));
}

function inGroups(digits: string, space: string): string {
  const [whole = '', fraction] = digits.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, space) : whole;
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
