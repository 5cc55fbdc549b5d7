import type { Stated } from '../../catalog/catalog.ts';
import { anythingFromZero } from '../../quantities/interval.ts';
import type { SetUp } from '../arranging/setting-search.ts';
import type { Bounded, MeasureToTake, PriceItem } from '../decision.ts';
import { type Outcome, passes } from '../judging/outcome.ts';
import { bounded, derived, known, stated, type Value } from '../judging/value.ts';

/** Features that a check may ask to be ordered, by the measure that names them. */
export const FEATURE_OF = {
  'spindle-probe': 'spindleProbe',
  'tool-center-point': 'toolCenterPoint',
  'rotating-work-offset': 'rotatingWorkOffset',
  'tilted-work-plane': 'tiltedWorkPlane',
  'look-ahead': 'lookAhead',
} as const satisfies Partial<Record<MeasureToTake, string>>;

type OrderedMeasure = keyof typeof FEATURE_OF;
const isOrdered = (measure: MeasureToTake): measure is OrderedMeasure => measure in FEATURE_OF;

export interface Priced {
  readonly items: readonly {
    readonly item: PriceItem['item'];
    readonly which: string;
    readonly price: Value;
  }[];
  readonly total: Value;
}

/** Everything that has to be bought for an arrangement, item by item; nothing for a machine that is owned. */
export function priceOf(setUp: SetUp, covered: readonly Outcome[], owned: string, platePrice: Value): Priced {
  const { machine, rotary } = setUp.candidate;
  const { row } = machine;
  const root = `machines[${row.id}]`;
  const money = (price: Stated, path: string): Value => stated(price, path, anythingFromZero, false);
  const items: { item: PriceItem['item']; which: string; price: Value }[] = [
    {
      item: 'machine',
      which: row.id,
      price: owned === row.id ? known(0, 'owned') : money(row.price, `${root}.price`),
    },
  ];
  if (rotary.row !== null) {
    const included = row.rotaryIncluded === rotary.key;
    const price = included ? known(0, 'included') : money(rotary.row.price, `rotaries[${rotary.key}].price`);
    items.push({ item: 'rotary', which: rotary.key, price });
  }
  for (const addition of setUp.setting.additions)
    items.push({
      item: 'clearance',
      which: addition.kind,
      price: money(addition.price, `${root}.clearance.price`),
    });
  if (!machine.builtIn) items.push(...drives(setUp, money));
  if (setUp.setting.plates > 0) items.push({ item: 'plates', which: '', price: platePrice });
  items.push(...ordered(setUp, covered, money));
  const total = totalOf(items.map(({ price }) => price));
  return { items, total: setUp.unsettled ? unsettledTotal(setUp, total, items, platePrice, money) : total };
}

/**
 * While something is open, another setting may turn out to be the best: at the least without additions,
 * plates and features, at the most with all that is on offer.
 */
function unsettledTotal(
  { candidate: { machine, rotary } }: SetUp,
  total: Value,
  items: Priced['items'],
  platePrice: Value,
  money: Money,
): Value {
  const least = items.filter(({ item }) => item === 'machine' || item === 'rotary' || item === 'axis-drives');
  const { row } = machine;
  const offered = [
    ...row.clearance.map(({ price }) => money(price, `machines[${row.id}].clearance.price`)),
    ...Object.values(FEATURE_OF).flatMap((feature) => {
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
    [total],
  );
}

type Money = (price: Stated, path: string) => Value;

function drives({ candidate: { machine, rotary } }: SetUp, money: Money) {
  const missing = Math.max(0, rotary.axes - machine.drivesFitted.low);
  if (missing === 0 || !Number.isFinite(missing)) return [];
  const each = money(machine.row.axisDrives.priceEach, `machines[${machine.key}].axisDrives.priceEach`);
  const price = derived({ low: each.low * missing, high: each.high * missing }, `${missing} × ${each.path}`, [
    each,
  ]);
  return [{ item: 'axis-drives' as const, which: String(missing), price }];
}

/** Features and a tailstock, where a family that is covered holds only with them. */
function ordered({ candidate: { machine, rotary } }: SetUp, covered: readonly Outcome[], money: Money) {
  const measures = new Set(
    covered.flatMap(({ verdict, easing }) => (passes(verdict) && easing !== null ? [easing] : [])),
  );
  const items: { item: PriceItem['item']; which: string; price: Value }[] = [];
  for (const measure of measures) {
    if (measure === 'tailstock' && rotary.row?.tailstock != null)
      items.push({
        item: 'tailstock',
        which: rotary.key,
        price: money(rotary.row.tailstock.price, `rotaries[${rotary.key}].tailstock.price`),
      });
    if (!isOrdered(measure)) continue;
    const feature = FEATURE_OF[measure];
    const price = machine.row.features[feature];
    if (price !== undefined && price !== 'standard')
      items.push({
        item: 'feature',
        which: feature,
        price: money(price, `machines[${machine.key}].features.${feature}`),
      });
  }
  return items;
}

/** Sum to the cent. */
function totalOf(prices: readonly Value[]): Value {
  const sum = (end: 'low' | 'high'): number =>
    prices.reduce((cents, price) => cents + Math.round(price[end] * 100), 0) / 100;
  return derived({ low: sum('low'), high: sum('high') }, 'price', prices);
}

export const shownItems = ({ items }: Priced): readonly PriceItem[] =>
  items.map(({ item, which, price }) => ({ item, which, price: bounded(price) as Bounded }));
