import type { ExampleGiven } from '../../rules/checks/example.ts';
import { CHECKS } from '../../rules/checks/index.ts';
import { CLASS_RULES } from '../../rules/classes/index.ts';
import type { Decision } from '../../rules/decision.ts';
import { FEATURE_RULES } from '../../rules/features/index.ts';
import { decisionOfRule } from '../examples/example-decision.ts';
import { judgeExample } from '../examples/example-world.ts';
import { MEASURE_UNITS } from '../measure-units.ts';
import type { AssumptionKey, ShownBy } from '../words/assumptions.ts';
import { assumptionAt, othersOf, overridden } from './assumption-value.ts';
import { featureNeedIn } from './feature-need.ts';

/** What moves where an assumption is moved: a number with the value that is assumed, and with another. */
export interface Effect {
  readonly other: number;
  readonly before: number;
  readonly after: number;
  readonly unit: string;
  readonly about: 'need' | 'have' | 'limit' | 'hours' | 'measure';
}

type Found = Omit<Effect, 'other'>;
type Shown = Exclude<ShownBy, { none: string }>;

/** The first number of what shows it that moves with the assumption. Null where nothing of it does. */
export function effectOf(key: AssumptionKey, shownBy: Shown): Effect | null {
  const assumption = assumptionAt(key);
  if (assumption === null) return null;
  for (const other of othersOf(assumption)) {
    const found = moved(key, other, shownBy);
    if (found !== null) return { ...found, other };
  }
  return null;
}

function moved(key: AssumptionKey, other: number, shownBy: Shown): Found | null {
  if ('check' in shownBy) return movedCheck(key, other, shownBy.check);
  if ('rule' in shownBy) {
    const rule = CLASS_RULES.find(({ id }) => id === shownBy.rule);
    return firstOf(rule?.examples ?? [], ({ given }) => {
      const [before, after] = both(
        given,
        key,
        other,
        (decision) => argumentOf(decision, shownBy.rule)?.limit,
      );
      return pair(before, after, rule?.unit ?? '', 'limit');
    });
  }
  if ('feature' in shownBy) {
    const rule = FEATURE_RULES.find(({ id }) => id === shownBy.feature);
    return firstOf(rule?.examples ?? [], ({ given }) => {
      const [before, after] = both(given, key, other, (of) => featureNeedIn(of, shownBy.feature));
      return (
        pair(before?.savesHours, after?.savesHours, 'h', 'hours') ??
        pair(before?.limit, after?.limit, rule?.unit ?? '', 'limit')
      );
    });
  }
  const { measure } = shownBy;
  return firstOf(MEASURED, (given) => {
    const [before, after] = both(given, key, other, (of) => of.arrangements[0]?.measures[measure]);
    return pair(before, after, MEASURE_UNITS[measure], 'measure');
  });
}

function movedCheck(key: AssumptionKey, other: number, id: string): Found | null {
  const check = CHECKS.find((each) => each.id === id);
  if (check === undefined) return null;
  return firstOf(
    check.examples.flatMap(({ given }) => [given, withProbe(given)]),
    (given) => {
      const before = judgeExample(check, given);
      const after = judgeExample(check, given, overridden(key, other));
      const unit = before.comparison?.unit ?? check.unit;
      return (
        pair(known(before.need), known(after.need), unit, 'need') ??
        pair(known(before.have), known(after.have), unit, 'have')
      );
    },
  );
}

const LONG_TABLE = [{ table: { size: [1275, 460] }, travel: [1115, 510, 510] }] as const;
const WORK = { visesWanted: 6, switchesPerWeek: 3 } as const;

/** The same with a probe in the spindle, which an assumption is about. */
const withProbe = (given: ExampleGiven): ExampleGiven => ({
  ...given,
  machine: { ...given.machine, features: { ...given.machine?.features, spindleProbe: 'standard' } },
});

/** Shops in which a measure can move: swaps of each kind, and vises on a long table. */
const MEASURED = [
  { work: { ...WORK, swap: 'keyed' } },
  { work: { ...WORK, swap: 'zero-point' } },
  { work: { ...WORK, swap: 'trammed' } },
  { parts: [{ tolerance: 0.5 }], work: WORK, machines: LONG_TABLE },
  {
    parts: [{ tolerance: 0.5 }],
    work: { ...WORK, vise: { width: 'unknown', length: 'unknown' } },
    machines: LONG_TABLE,
  },
] as const;

type Given = Parameters<typeof decisionOfRule>[0];

function both<T>(
  given: Given,
  key: AssumptionKey,
  other: number,
  read: (of: Decision) => T,
): readonly [T, T] {
  const changed = { ...given, assume: { ...given.assume, ...overridden(key, other) } };
  return [read(decisionOfRule(given)), read(decisionOfRule(changed))];
}

const argumentOf = ({ classes }: Decision, rule: string) =>
  classes.flatMap((each) => [...each.for, ...each.against]).find((each) => each.rule === rule);

const known = ({ low, high }: { readonly low: number; readonly high: number }): number | null =>
  low === high && Number.isFinite(low) ? low : null;

function pair(before: unknown, after: unknown, unit: string, about: Effect['about']): Found | null {
  return typeof before === 'number' && typeof after === 'number' && before !== after
    ? { before, after, unit, about }
    : null;
}

function firstOf<T>(all: readonly T[], read: (each: T) => Found | null): Found | null {
  for (const each of all) {
    const found = read(each);
    if (found !== null) return found;
  }
  return null;
}
