import type { Decision } from '../../rules/decision.ts';
import { escapeInQuotes } from '../display-text.ts';

/** The order in which the keys of the larger objects stand; what is not named here comes after, by name. */
const ORDER = {
  decision: [
    'format',
    'inputs',
    'outcome',
    'recommended',
    'contenders',
    'count',
    'arrangements',
    'stages',
    'byRotary',
    'classes',
    'route',
    'bigger',
    'otherWay',
    'features',
    'stability',
    'unknowns',
    'cautions',
    'envelope',
    'hours',
    'threeAxis',
    'ranking',
    'runnersUp',
    'nearestMisses',
    'singleLimits',
  ],
  arrangement: [
    'id',
    'machine',
    'rotary',
    'class',
    'mounting',
    'place',
    'space',
    'turned',
    'clearance',
    'plates',
    'verdict',
    'passes',
    'parts',
    'measures',
    'checks',
    'undominated',
    'dropped',
    'flips',
    'prices',
    'features',
    'later',
    'lifting',
    'money',
    'tried',
  ],
  check: [
    'check',
    'stage',
    'part',
    'verdict',
    'advisory',
    'need',
    'have',
    'unit',
    'margin',
    'relativeMargin',
    'binding',
    'inputs',
    'inputUnits',
    'formula',
    'source',
    'easing',
    'remedies',
    'gaps',
    'categorical',
  ],
} as const;

/**
 * The whole decision as JSON: every field, always in the same order, the same bytes for the same decision.
 * A number that nothing bounds is null. Characters that could steer a terminal are written as escapes, which
 * read back as what they were. Ends with one line break.
 */
export function jsonReport(decision: Decision): string {
  const arrangements = decision.arrangements.map((arrangement) =>
    ordered(
      {
        ...arrangement,
        checks: arrangement.checks.map((check) => ordered(check, ORDER.check)),
      },
      ORDER.arrangement,
    ),
  );
  const whole = ordered({ ...decision, arrangements }, ORDER.decision);
  return `${escapeInQuotes(JSON.stringify(whole, finite, 2))}\n`;
}

function ordered(value: object, order: readonly string[]): object {
  const place = (key: string): number => (order.includes(key) ? order.indexOf(key) : order.length);
  const entries = Object.entries(value).sort(
    ([a], [b]) => place(a) - place(b) || (a < b ? -1 : a > b ? 1 : 0),
  );
  return Object.fromEntries(entries);
}

const finite = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? null : value;
