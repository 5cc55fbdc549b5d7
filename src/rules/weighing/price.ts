import type { Stated } from '../../catalog/catalog.ts';
import { anythingFromZero } from '../../quantities/interval.ts';
import type { Candidate } from '../arranging/candidates.ts';
import type { SetUp } from '../arranging/setting-search.ts';
import type { MeasureToTake, PriceItem } from '../decision.ts';
import { featureOf, ORDERED_FEATURES } from '../features/ordered.ts';
import { type Outcome, passes } from '../judging/outcome.ts';
import { bounded, derived, known, stated, type Value } from '../judging/value.ts';
import { fromCents, roundedToCents, toCents } from '../money/cents.ts';
import { supplyItems } from './supply-price.ts';

export interface Priced {
  readonly items: readonly {
    readonly item: PriceItem['item'];
    readonly which: string;
    readonly price: Value;
  }[];
  readonly total: Value;
}

/** What has to be bought for an arrangement whatever it is set up with, item by item; nothing for a machine that is owned. */
const settledItems = (candidate: Candidate, owned: string): Priced['items'] => [
  machineItem(candidate, owned),
  ...(isIncluded(candidate)
    ? [{ item: 'rotary' as const, which: candidate.rotary.key, price: known(0, 'included') }]
    : rotaryItems(candidate)),
  ...drives(candidate),
];

const machineItem = ({ machine: { row } }: Candidate, owned: string): Priced['items'][number] => ({
  item: 'machine',
  which: row.id,
  price: owned === row.id ? known(0, 'owned') : money(row.price, `machines[${row.id}].price`),
});

const isIncluded = ({ machine, rotary }: Candidate): boolean =>
  rotary.row !== null && machine.row.rotaryIncluded === rotary.key;

/** None for a table that is built in. */
const rotaryItems = ({ rotary: { row, key } }: Candidate): Priced['items'] =>
  row === null ? [] : [{ item: 'rotary', which: key, price: money(row.price, `rotaries[${key}].price`) }];

/**
 * The least that an arrangement costs, whatever it is set up with. What a machine and a rotary cost is worked out once for
 * all arrangements that they are in.
 */
export function leastPrices(owned: string): (of: Candidate) => number {
  const [onMachine, ofRotary] = [new Map<string, number>(), new Map<string, number>()];
  const cents = (items: Priced['items']): number =>
    items.reduce((sum, { price }) => sum + toCents(price.low), 0);
  const once = (known: Map<string, number>, key: string, items: () => Priced['items']): number => {
    const made = known.get(key) ?? cents(items());
    known.set(key, made);
    return made;
  };
  return (of) => {
    const { machine, rotary } = of;
    const bare = once(onMachine, rotary.axes === 1 ? machine.key : `${machine.key}/2`, () => [
      machineItem(of, owned),
      ...drives(of),
    ]);
    return fromCents(bare + (isIncluded(of) ? 0 : once(ofRotary, rotary.key, () => rotaryItems(of))));
  };
}

/** What of an arrangement as it is set up enters its price. */
type AsPriced = Pick<SetUp, 'candidate' | 'setting' | 'own' | 'unsettled'>;

/** Everything that has to be bought for an arrangement, item by item. */
export function priceOf(
  setUp: AsPriced,
  covered: readonly Outcome[],
  owned: string,
  platePrice: Value,
): Priced {
  const { machine } = setUp.candidate;
  const root = `machines[${machine.row.id}]`;
  const settled = settledItems(setUp.candidate, owned);
  const isDrives = ({ item }: Priced['items'][number]): boolean => item === 'axis-drives';
  const items = settled.filter((each) => !isDrives(each));
  for (const addition of setUp.setting.additions)
    items.push({
      item: 'clearance',
      which: addition.kind,
      price: money(addition.price, `${root}.clearance.price`),
    });
  items.push(...settled.filter(isDrives));
  if (setUp.setting.plates > 0) items.push({ item: 'plates', which: '', price: platePrice });
  items.push(...ordered(setUp, covered), ...supplyItems(setUp.own));
  const total = totalOf(items.map(({ price }) => price));
  return { items, total: setUp.unsettled ? unsettledTotal(setUp, total, items, platePrice) : total };
}

const money = (price: Stated, path: string): Value => stated(price, path, anythingFromZero, false);

/**
 * While something is open, another setting may turn out to be the best: at the least without additions,
 * plates and features, at the most with all that is on offer.
 */
function unsettledTotal(
  { candidate: { machine, rotary } }: AsPriced,
  total: Value,
  items: Priced['items'],
  platePrice: Value,
): Value {
  const least = items.filter(({ item }) => SETTLED.has(item));
  const { row } = machine;
  const offered = [
    ...row.clearance.map(({ price }) => money(price, `machines[${row.id}].clearance.price`)),
    ...ORDERED_FEATURES.flatMap((feature) => {
      const price = row.features[feature];
      return price === undefined || price === 'standard'
        ? []
        : [money(price, `machines[${row.id}].features.${feature}`)];
    }),
    ...(rotary.row?.tailstock == null
      ? []
      : [money(rotary.row.tailstock.price, `rotaries[${rotary.key}].tailstock.price`)]),
    ...(machine.builtIn ? [] : [platePrice]),
  ];
  const most = totalOf([...least.map(({ price }) => price), ...offered]);
  return derived(
    { low: totalOf(least.map(({ price }) => price)).low, high: Math.max(most.high, total.high) },
    'price',
    [total, ...offered, ...least.map(({ price }) => price)],
  );
}

/** What no setting changes. */
const SETTLED: ReadonlySet<PriceItem['item']> = new Set(['machine', 'rotary', 'axis-drives', 'power']);

function drives({ machine, rotary }: Candidate): Priced['items'] {
  const { drivesFitted: fitted, row } = machine;
  if (machine.builtIn) return [];
  const most = Math.max(0, rotary.axes - fitted.low);
  const least = Math.max(0, rotary.axes - fitted.high);
  if (most === 0) return [];
  const each = money(row.axisDrives.priceEach, `machines[${machine.key}].axisDrives.priceEach`);
  const price = derived({ low: each.low * least, high: each.high * most }, `drives × ${each.path}`, [
    each,
    fitted,
  ]);
  return [{ item: 'axis-drives', which: String(most), price }];
}

/** Features and a tailstock, where a family that is covered holds only with them. */
function ordered({ candidate: { machine, rotary } }: AsPriced, covered: readonly Outcome[]) {
  const wanting = new Map<MeasureToTake, Outcome[]>();
  for (const outcome of covered) {
    const { verdict, easing } = outcome;
    if (!passes(verdict) || easing === null) continue;
    wanting.set(easing, [...(wanting.get(easing) ?? []), outcome]);
  }
  const items: { item: PriceItem['item']; which: string; price: Value }[] = [];
  for (const [measure, outcomes] of wanting) {
    if (measure === 'tailstock' && rotary.row?.tailstock != null) {
      const price = money(rotary.row.tailstock.price, `rotaries[${rotary.key}].tailstock.price`);
      items.push({ item: 'tailstock', which: rotary.key, price: perhaps(price, outcomes) });
    }
    const feature = featureOf(measure);
    if (feature === undefined) continue;
    const asked = machine.row.features[feature];
    if (asked === undefined || asked === 'standard') continue;
    const price = money(asked, `machines[${machine.key}].features.${feature}`);
    items.push({ item: 'feature', which: feature, price: perhaps(price, outcomes) });
  }
  return items;
}

/** A measure that every outcome perhaps does without costs its price or nothing. */
function perhaps(price: Value, outcomes: readonly Outcome[]): Value {
  if (!outcomes.every(({ mayHoldPlainly }) => mayHoldPlainly)) return price;
  return derived({ low: 0, high: price.high }, price.path, [
    price,
    ...outcomes.flatMap(({ hangsOn }) => hangsOn),
  ]);
}

/** Sum to the cent. */
function totalOf(prices: readonly Value[]): Value {
  const sum = (end: 'low' | 'high'): number =>
    fromCents(prices.reduce((cents, price) => cents + toCents(price[end]), 0));
  return derived({ low: sum('low'), high: sum('high') }, 'price', prices);
}

/** Each to the cent, so that they add up to the total. */
export const shownItems = ({ items }: Priced): readonly PriceItem[] =>
  items.map(({ item, which, price }) => ({ item, which, price: bounded(roundedToCents(price)) }));
