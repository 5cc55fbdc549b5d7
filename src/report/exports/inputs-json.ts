import type { Decision } from '../../rules/decision.ts';
import { escapeInQuotes } from '../display-text.ts';

/** By which a paper's inputs are found again: the word behind `json` at the fence. */
export const INPUTS_FENCE = 'fivesides-inputs';

/**
 * What every number of a paper was made from, as JSON with one part or one row of the catalog a line: the answers, the
 * catalog, the units, and the arrangements that are listed. The same bytes for the same decision.
 */
export function inputsJson({ inputs, arrangements }: Decision): string {
  const { answers, catalog, shownIn } = inputs;
  const lines = [
    '{',
    `"shownIn": ${JSON.stringify(shownIn)},`,
    `"listed": ${JSON.stringify(arrangements.map(({ id }) => id))},`,
    `"answers": ${mapLines(answers)},`,
    `"catalog": ${mapLines(catalog)}`,
    '}',
  ];
  return escapeInQuotes(lines.join('\n'));
}

/** A map with one key a line, and lists of maps with one of them a line. */
function mapLines(map: object): string {
  const entries = Object.entries(sorted(map) as object).map(
    ([key, value]) => `${JSON.stringify(key)}: ${valueLines(value)}`,
  );
  return `{\n${entries.join(',\n')}\n}`;
}

/** Keys in one order, however the answers came about: read back they may stand in another one. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, each]) => [key, sorted(each)]));
}

function valueLines(value: unknown): string {
  const isRows =
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((each) => typeof each === 'object' && each !== null);
  if (!isRows) return JSON.stringify(value);
  return `[\n${value.map((each) => JSON.stringify(each)).join(',\n')}\n]`;
}
