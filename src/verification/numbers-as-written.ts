/** Marks a number among strings: no text of an export begins with it, since none holds control characters. */
const MARK = '\u0000';

const TOKENS = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;

/**
 * JSON read with its numbers as they are written: two decimals that differ in their last digit may be the same number
 * to a computer, and are still not the same. Throws SyntaxError where the text is no JSON.
 * Example: '[1.50]' → ['\u00001.50'].
 */
export const readAsWritten = (text: string): unknown =>
  JSON.parse(text.replace(TOKENS, (token) => (token.startsWith('"') ? token : `"\\u0000${token}"`)));

/** The digits of a number that was read so; undefined for anything else. */
export const writtenNumber = (value: unknown): string | undefined =>
  typeof value === 'string' && value.startsWith(MARK) ? value.slice(MARK.length) : undefined;

/** Whether two decimals are the same, however they are written. Example: ('1.50', '15e-1') → true. */
export const sameDecimal = (one: string, other: string): boolean =>
  one === other || canonical(one) === canonical(other);

const DECIMAL = /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([+-]?\d+))?$/;

function canonical(decimal: string): string {
  const match = DECIMAL.exec(decimal);
  if (match === null) return decimal;
  const [, sign = '', whole = '', fraction = '', exponent = '0'] = match;
  const digits = `${whole}${fraction}`.replace(/^0+/, '');
  const shorter = digits.replace(/0+$/, '');
  if (shorter === '') return '0';
  return `${sign}${shorter}e${Number(exponent) - fraction.length + digits.length - shorter.length}`;
}
