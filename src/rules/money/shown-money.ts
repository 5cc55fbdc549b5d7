import type { Interval } from '../../quantities/interval.ts';
import type { CapitalItem, FamilyMoney, Money, SensitivityRow } from '../decision-money.ts';
import { corners } from '../facts/corners.ts';
import { bounded } from '../judging/value.ts';
import type { Judged } from '../weighing/judged.ts';
import { shownItems } from '../weighing/price.ts';
import { hoursToBreakEven, hoursTogether, rateToBreakEven } from './break-even.ts';
import { fromCents, roundedToCents, toCents } from './cents.ts';
import { gainOf, type YearlyChange } from './gain.ts';
import type { MoneyCase } from './money-case.ts';
import { paybackOf } from './payback-at-corners.ts';
import { presentWorth } from './present-worth.ts';
import type { Worth } from './worth.ts';

/** A quarter and a tenth to either side. */
const TIMES = [0.75, 0.9, 1, 1.1, 1.25];

/** The money of an arrangement as the decision shows it. */
export function shownMoney({ worth, priced, setUp }: Judged, money: MoneyCase): Money {
  const { change } = worth;
  const cents = (of: readonly Interval[]): Interval => ({
    low: fromCents(of.reduce((sum, { low }) => sum + toCents(low), 0)),
    high: fromCents(of.reduce((sum, { high }) => sum + toCents(high), 0)),
  });
  const running = bounded(roundedToCents(change.running));
  const capital: readonly CapitalItem[] = [
    ...shownItems(priced),
    ...stillOpen(worth, [...priced.items.map(({ price }) => price), money.rigging, money.training]),
    { item: 'rigging', which: '', price: bounded(roundedToCents(money.rigging)) },
    { item: 'training', which: '', price: bounded(roundedToCents(money.training)) },
  ];
  return {
    families: worth.families.map(shownFamily),
    hoursSaved: bounded(hoursTogether(change.saved)),
    savings: bounded(cents(worth.families.map(({ gain }) => gain))),
    swapHours: bounded(change.swapHours),
    swapCost: bounded(
      corners([change.swapHours, change.rate], ([hours = 0, rate = 0]) => fromCents(toCents(hours * rate))),
    ),
    running: { items: [{ item: 'yearly-costs', price: running }], total: running },
    gain: bounded(worth.gain),
    capital: {
      items: capital,
      total: bounded(worth.capital),
      camPost: camPost(setUp.candidate.rotary.axes, money),
    },
    payback: bounded(worth.payback),
    netPresentValue: bounded(worth.netPresentValue),
    residual: bounded(roundedToCents(worth.residual)),
    terms: {
      shopRate: bounded(money.shopRate),
      years: bounded(money.years),
      interest: bounded(money.interest),
      ranked: money.hasRate,
    },
    sensitivity: sensitivity(worth),
    breakEven: {
      shopRate: bounded(rateToBreakEven(worth)),
      hours: bounded(hoursToBreakEven(worth)),
    },
  };
}

const shownFamily = ({
  name,
  hoursNow,
  hoursThen,
  setupsNow,
  setupsThen,
  hoursSaved,
  gain,
}: Worth['families'][number]): FamilyMoney => ({
  part: name,
  setupsNow: bounded(setupsNow),
  setupsThen: bounded(setupsThen),
  hoursNow: bounded(hoursNow),
  hoursThen: bounded(hoursThen),
  hoursSaved: bounded(hoursSaved(1)),
  gain: bounded(gain),
});

/** While something is open, what is paid may still change: what the items lack to the total, at either end. */
function stillOpen({ capital }: Worth, items: readonly Interval[]): readonly CapitalItem[] {
  const lacks = (end: 'low' | 'high'): number => {
    const sum = items.reduce((cents, price) => cents + toCents(price[end]), 0);
    return sum === Number.POSITIVE_INFINITY ? 0 : fromCents(toCents(capital[end]) - sum);
  };
  const open = { low: lacks('low'), high: lacks('high') };
  return open.low === 0 && open.high === 0 ? [] : [{ item: 'still-open', which: '', price: bounded(open) }];
}

/** A single axis needs no more than the CAM that is there; whatever tilts needs a post with simulation. */
function camPost(axes: 1 | 2, { cam }: MoneyCase): Money['capital']['camPost'] {
  if (axes === 1) return 'not-needed';
  if (cam === 'unknown') return 'unknown';
  return cam === 'fiveAxis' ? 'owned' : 'in-training';
}

function sensitivity({ families, change, terms, capital }: Worth): Money['sensitivity'] {
  const row = (times: number, changed: Partial<YearlyChange>): SensitivityRow => {
    const gain = gainOf({ ...change, ...changed });
    return {
      times,
      gain: bounded(gain),
      payback: bounded(paybackOf(capital, gain)),
      netPresentValue: bounded(presentWorth(gain, terms)),
    };
  };
  const { low, high } = change.rate;
  return {
    shopRate: TIMES.map((times) => row(times, { rate: { low: low * times, high: high * times } })),
    quantity: TIMES.map((times) =>
      row(times, { saved: families.map(({ hoursSaved }) => hoursSaved(times)) }),
    ),
  };
}
