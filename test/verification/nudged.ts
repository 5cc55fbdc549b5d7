/** Numbers of a JSON text, and its strings, which may hold digits. */
export const NUMBER = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;

/** The text with the last digit of the number that stands there one higher (9: one lower). */
export function nudged(text: string, at: number, token: string): string {
  const mantissa = token.split(/e/i)[0] ?? token;
  const last = at + mantissa.length - 1;
  const digit = Number(text[last]);
  return text.slice(0, last) + (digit === 9 ? 8 : digit + 1) + text.slice(last + 1);
}
