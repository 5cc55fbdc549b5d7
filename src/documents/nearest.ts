import { distance } from 'fastest-levenshtein';

/**
 * The word that was probably meant: at most one letter in three away, upper and lower case aside.
 * Of a word with hyphens its first part counts too.
 * Example: nearest('heigth', ['height', 'width']) → 'height'; nearest('aluminium', ['aluminum-wrought']) →
 * 'aluminum-wrought'; nearest('depth', ['mass']) → undefined.
 */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  if (word.length > 60) return undefined;
  const lower = word.toLowerCase();
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    for (const part of new Set([candidate, candidate.split('-')[0] ?? candidate])) {
      const away = distance(lower, part.toLowerCase());
      const allowed = Math.max(1, Math.floor(Math.max(lower.length, part.length) / 3));
      if (away <= allowed && away < bestDistance) {
        best = candidate;
        bestDistance = away;
      }
    }
  }
  return best;
}
