/** A number as people write it, and what follows it. */
export type NumberReading =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly code: 'not-a-number' | 'not-finite' | 'division-by-zero' }
  | {
      readonly ok: false;
      readonly code: 'ambiguous';
      readonly readings: readonly [string, string];
      readonly rest: string;
    };

const NOT_A_NUMBER = { ok: false, code: 'not-a-number' } as const;
// Nothing that people write as a number is longer; a bound keeps the patterns below quick on anything.
const LONGEST = 80;

/** One kind of space, one minus, fractions as `1/2`, foot and inch marks as ' and ". */
export function plainCharacters(text: string): string {
  return text
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000\t]/g, ' ')
    .replace(/[\u2212\u2013\u2012]/g, '-')
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/\u2044/g, '/')
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .trim();
}

/**
 * Reads the number at the beginning of a text: `12.5`, `12,5`, `1 500`, `1'500`, `1.500,25`, `1,500.25`, `1e3`,
 * `1/2`, `3 1/2`, `3-1/2`, `3½`. A single comma before three digits (`1,500`) can be read in two ways: refused,
 * with both. Example: parseNumber('3 1/2 in') → { ok: true, value: 3.5, rest: 'in' }.
 */
export function parseNumber(text: string): NumberReading {
  // `80 1/min` is no mixed fraction
  const plain = plainCharacters(text).replace(/(\d) +1 *\/ *(?=[a-z])/i, '$1 /');
  if (plain.length > LONGEST) return NOT_A_NUMBER;
  return parseFraction(plain) ?? parseDecimal(plain);
}

const FRACTION = /^([+-]?) *(?:(\d[\d ']*?)(?: +| *- *))?(\d+) *\/ *(\d+)(?![\d/.,]) *(.*)$/;

function parseFraction(text: string): NumberReading | null {
  const match = FRACTION.exec(text);
  if (match === null) return null;
  const [, sign, whole, top, bottom, rest] = match;
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (denominator === 0) return { ok: false, code: 'division-by-zero' };
  let value = numerator / denominator;
  if (whole !== undefined) {
    const before = withoutGroups(whole);
    if (before === null || numerator >= denominator) return NOT_A_NUMBER;
    value += Number(before);
  }
  return finished(sign === '-' ? -value : value, rest ?? '');
}

const DECIMAL = /^([+-]?) *((?:\d|[.,](?=\d))(?:[\d.,' ]*\d)?\.?)(e[+-]?\d+)?(?!\d) *(.*)$/i;

function parseDecimal(text: string): NumberReading {
  const match = DECIMAL.exec(text);
  if (match === null) return NOT_A_NUMBER;
  const [, sign = '', digits = '', exponent = '', rest = ''] = match;
  const mark = decimalMark(digits);
  if (mark === 'either') {
    const readings = [
      `${sign}${digits.replace(',', '')}${exponent}`,
      `${sign}${String(Number(digits.replace(',', '.')))}${exponent}`,
    ] as const;
    return { ok: false, code: 'ambiguous', readings, rest };
  }
  const [whole = '', fraction = ''] = mark === '' ? [digits] : splitAtLast(digits, mark);
  const plain = withoutGroups(whole);
  if (plain === null || !/^\d*$/.test(fraction)) return NOT_A_NUMBER;
  return finished(
    Number(`${sign}${plain === '' ? '0' : plain}.${fraction === '' ? '0' : fraction}${exponent}`),
    rest,
  );
}

/** Which sign separates the decimals: none, a dot, a comma, or it cannot be told. */
function decimalMark(digits: string): '' | '.' | ',' | 'either' {
  const dots = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (dots > 0 && commas > 0) return digits.lastIndexOf('.') > digits.lastIndexOf(',') ? '.' : ',';
  if (dots === 1) return '.';
  if (commas === 1) return /^[1-9]\d{0,2},\d{3}$/.test(digits) ? 'either' : ',';
  return '';
}

function splitAtLast(text: string, mark: string): [string, string] {
  const at = text.lastIndexOf(mark);
  return [text.slice(0, at), text.slice(at + 1)];
}

/** `1 500 000` → `1500000`; null where the groups are not of three digits, or of mixed signs. */
function withoutGroups(text: string): string | null {
  if (/^\d*$/.test(text)) return text;
  if (!/^\d{1,3}([ ',.])\d{3}(?:\1\d{3})*$/.test(text)) return null;
  return text.replace(/[ ',.]/g, '');
}

function finished(value: number, rest: string): NumberReading {
  return Number.isFinite(value) ? { ok: true, value, rest: rest.trim() } : { ok: false, code: 'not-finite' };
}
