/**
 * Several numbers in one line, apart: `90 x 60 x 55`, `90; 60; 55`, `90, 60, 55`, `90 60 55`, `90 by 60 by 55`. A unit that
 * stands at the end only counts for all of them. `count`: how many there should be; null: any number.
 * Example: splitNumbers('3 x 2 1/2 x 1 in', 3) → ['3 in', '2 1/2 in', '1 in'].
 */
export function splitNumbers(text: string, count: number | null): readonly string[] {
  const pieces = apart(text.trim(), count).map((piece) => piece.trim());
  const unit = /(?:^|[\d\s])([a-zµ°"']+\.?)$/iu.exec(pieces.at(-1) ?? '')?.[1];
  if (unit === undefined || !/\d/.test(pieces.at(-1) ?? '')) return pieces;
  const bare = (piece: string) => /\d$/.test(piece);
  return pieces.slice(0, -1).every((piece) => bare(piece) || !/\d/.test(piece))
    ? pieces.map((piece) => (bare(piece) ? `${piece} ${unit}` : piece))
    : pieces;
}

const SEPARATORS = [/\s*[x×*]\s*(?=[\d.,]|not|un)|\s+by\s+/i, /\s*;\s*/, /\s*,\s+|\s+and\s+/i];

function apart(text: string, count: number | null): readonly string[] {
  for (const separator of SEPARATORS) {
    const pieces = text.split(separator);
    if (pieces.length > 1) return pieces;
  }
  // only where it leaves no doubt: `1 500` may be one number
  const words = text.split(/\s+/);
  const areNumbers = words.every((word) => /^\d+(?:[.,]\d+)?$/.test(word));
  return areNumbers && words.length === count ? words : [text];
}
