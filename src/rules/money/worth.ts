import { hull, type Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { Verdict } from '../decision.ts';
import { corners } from '../facts/corners.ts';
import type { ShopCase } from '../judging/case.ts';
import { passes } from '../judging/outcome.ts';
import { derived, known, type Value } from '../judging/value.ts';
import { fromCents, toCents } from './cents.ts';
import { gainOf, type YearlyChange } from './gain.ts';
import type { MoneyCase } from './money-case.ts';
import { paybackAtCorners, paybackOf, type SavedAtEnds } from './payback-at-corners.ts';
import { presentWorth, type Terms } from './present-worth.ts';

/** One family on an arrangement: what it takes then, and what that saves. */
interface FamilyWorth {
  readonly name: string;
  readonly hoursNow: Value;
  readonly hoursThen: Value;
  readonly setupsNow: Value;
  readonly setupsThen: Value;
  readonly hoursSaved: (quantityTimes: number) => Value;
  readonly savedAtEnds: SavedAtEnds;
  /** hours saved at the shop's rate, to the cent */
  readonly gain: Value;
}

/** What an arrangement is worth in money. */
export interface Worth {
  readonly families: readonly FamilyWorth[];
  readonly change: YearlyChange;
  readonly terms: Terms;
  readonly capital: Value;
  readonly residual: Value;
  readonly gain: Value;
  /** years; Infinity: never */
  readonly payback: Value;
  readonly netPresentValue: Value;
  /** at each corner of what is the same for every arrangement and not known; null: all known, or no help */
  readonly paybackAt: readonly Interval[] | null;
}

export interface Considered {
  readonly axes: 1 | 2;
  readonly families: readonly { readonly family: Family; readonly verdict: Verdict }[];
  readonly price: Value;
  /** lifts of the rotary a year, and the hours that they take */
  readonly swaps: Value;
  readonly swapHours: Interval;
}

/** Only families that the arrangement holds save hours; the others stay as they are, open ones may do either. */
export function worthOf(
  { axes, families, price, swaps, swapHours }: Considered,
  { money, swapMinutes }: ShopCase,
): Worth {
  const made = families.map((each) => familyWorth(each, axes, money.shopRate));
  const saved = made.map((each) => each.hoursSaved(1));
  const change: YearlyChange = {
    saved,
    swapHours,
    rate: money.shopRate,
    running: money.yearlyCosts,
  };
  const capital = capitalOf(price, money);
  const residual = residualOf(price, money);
  const terms: Terms = { capital, residual, interest: money.interest, years: money.years };
  const gain = derived(gainOf(change), 'gain', [
    ...[...saved, money.shopRate, money.yearlyCosts],
    ...(swapHours.low === swapHours.high ? [] : [swaps, swapMinutes]),
  ]);
  const worth = derived(presentWorth(gain, terms), 'netPresentValue', [
    ...[capital, gain, residual],
    ...[money.interest, money.years],
  ]);
  return {
    families: made,
    change,
    terms,
    capital,
    residual,
    gain,
    payback: derived(paybackOf(capital, gain), 'payback', [capital, gain]),
    netPresentValue: worth,
    paybackAt: paybackAtCorners(
      change,
      price,
      money,
      made.map((each) => each.savedAtEnds),
    ),
  };
}

function familyWorth(
  { family, verdict }: Considered['families'][number],
  axes: 1 | 2,
  rate: Value,
): FamilyWorth {
  const { name, hours: hoursNow, onRotary } = family;
  const on = onRotary.byAxes[axes];
  const setupsNow = onRotary.setupsNow;
  const none = known(0, `hoursSaved[${name}]`);
  const perhaps = (value: Value, otherwise: Value): Value =>
    passes(verdict) ? value : verdict === 'fails' ? otherwise : either(value, otherwise);
  const saved = (times: number): Value => perhaps(on.saved(times), none);
  const now = saved(1);
  const atEnd = (hours: number): Value => (on.isInStep ? perhaps(known(hours, now.path), none) : now);
  const gain = corners([now, rate], ([hours = 0, each = 0]) => fromCents(toCents(hours * each)));
  return {
    name,
    hoursNow,
    hoursThen: perhaps(on.hours, hoursNow),
    setupsNow,
    setupsThen: perhaps(on.setups, setupsNow),
    hoursSaved: saved,
    savedAtEnds: onRotary.isKnown ? null : [atEnd(on.saved(1).low), atEnd(on.saved(1).high)],
    gain: derived(gain, `gain[${name}]`, [now, rate]),
  };
}

/** Whether the family is held is open: what decides that stands in its checks. */
const either = (a: Value, b: Value): Value => derived(hull([a, b]), a.path, [a, b]);

/** Everything that is paid before the first part: what is bought, bringing it in, learning it. */
export function capitalOf(price: Value, { rigging, training }: MoneyCase): Value {
  const sum = (end: 'low' | 'high'): number =>
    fromCents(toCents(price[end]) + toCents(rigging[end]) + toCents(training[end]));
  return derived({ low: sum('low'), high: sum('high') }, 'capital', [price, rigging, training]);
}

/** Nothing is worth more at the end than was paid for it. */
function residualOf(price: Value, { residual }: MoneyCase): Value {
  const ends = { low: Math.min(residual.low, price.low), high: Math.min(residual.high, price.high) };
  return derived(ends, 'residual', [residual, price]);
}
