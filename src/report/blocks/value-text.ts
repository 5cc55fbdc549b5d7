import { formatInterval } from '../../quantities/format-quantity.ts';
import type { Interval } from '../../quantities/interval.ts';
import type { Decision } from '../../rules/decision.ts';
import { displayText } from '../display-text.ts';
import type { NumberAt } from './inline.ts';
import { lookUp } from './path.ts';

/**
 * A number of the decision as text: the one place in the report where numbers are written.
 * Both ends where only those are known, and words where nothing is.
 * Example: a path to [380, null] in mm → 'at least 380 mm'.
 */
export function numberText(token: NumberAt, decision: Decision): string {
  const interval = intervalAt(lookUp(decision, token.path));
  if (interval === null) return token.ifNull;
  const shown = token.magnitude ? magnitude(interval) : interval;
  const isOne = Math.abs(shown.low) === 1 && shown.high === shown.low;
  return formatInterval(shown, isOne ? (ONE_OF[token.unit] ?? token.unit) : token.unit, {
    shownIn: decision.inputs.shownIn,
    beside: true,
    grouped: 'thin',
    currency: currencyOf(decision),
  });
}

/** Units that are counted things: what one of them is called. */
const ONE_OF: Readonly<Record<string, string>> = { axes: 'axis' };

/** Null where there is no number at all. */
function intervalAt(value: unknown): Interval | null {
  if (typeof value === 'number') return Number.isFinite(value) ? { low: value, high: value } : null;
  if (!Array.isArray(value) || value.length !== 2) return null;
  const [low, high]: unknown[] = value;
  const ends = {
    low: typeof low === 'number' ? low : Number.NEGATIVE_INFINITY,
    high: typeof high === 'number' ? high : Number.POSITIVE_INFINITY,
  };
  return Number.isFinite(ends.low) || Number.isFinite(ends.high) ? ends : null;
}

/** Without its sign: −12 to −3 is 3 to 12. What lies on both sides of zero keeps its signs. */
const magnitude = ({ low, high }: Interval): Interval =>
  high < 0 ? { low: -high, high: -low } : { low, high };

/** The currency of the answers, else that of the catalog; empty where neither names one. */
export function currencyOf({ inputs }: Decision): string {
  const named = [inputs.answers.currency, inputs.catalog.currency].find((each) => each !== 'unknown');
  return displayText(named ?? '');
}
