import { anythingFromZero, type Interval } from '../../quantities/interval.ts';
import type { Answers } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { FeatureNeed, Need } from '../decision-features.ts';
import { corners } from '../facts/corners.ts';
import { FEATURE_RULES } from '../features/index.ts';
import type { FeatureFound, FeatureGround, FeatureRule } from '../features/rule.ts';
import { setupsAYear } from '../features/setups-a-year.ts';
import type { ShopCase } from '../judging/case.ts';
import { answered, bounded, derived, hangingOn, known, stated, type Value } from '../judging/value.ts';
import type { Judged } from './judged.ts';

/** What has to be ordered with an arrangement, what pays for itself, and what is only handy. */
export function featuresOf(judged: Judged, answers: Answers, shop: ShopCase): readonly FeatureNeed[] {
  const ground = featureGround(judged, answers, shop);
  return FEATURE_RULES.map((rule) => needOf(rule, rule.find(ground), judged, answers));
}

/** What the rules of the features read of one arrangement. */
export function featureGround({ setUp, families }: Judged, answers: Answers, shop: ShopCase): FeatureGround {
  const { machine, rotary } = setUp.candidate;
  const covered = families.filter(({ verdict }) => verdict !== 'fails');
  const partOf: FeatureGround['partOf'] = (name) => {
    const part = answers.parts.find((each) => each.name === name);
    if (part === undefined) throw new Error(`no part ${name}`);
    return part;
  };
  return {
    answers,
    shop,
    machine,
    rotary,
    covered,
    partOf,
    outcomesOf: (check) =>
      covered.flatMap(({ family, outcomes }) =>
        outcomes.filter((each) => each.check.id === check).map((outcome) => ({ name: family.name, outcome })),
      ),
    setups: setupsAYear(
      covered.map(({ family }) => partOf(family.name)),
      rotary.axes,
    ),
  };
}

interface Offer {
  readonly there: FeatureNeed['there'];
  readonly price: Value | null;
}

/** What the catalog says of it; what is required stands among the prices already. */
function offerOf({ id, offer }: FeatureRule, { priced, setUp }: Judged): Offer {
  const { machine } = setUp.candidate;
  if (id === 'axisDrives') {
    const drives = priced.items.find(({ item }) => item === 'axis-drives')?.price;
    return drives === undefined
      ? { there: 'standard', price: known(0, 'fitted') }
      : { there: 'offered', price: drives };
  }
  if (offer === null) return { there: 'ask', price: null };
  const asked = machine.row.features[offer];
  if (asked === undefined) return { there: 'not offered', price: null };
  if (asked === 'standard') return { there: 'standard', price: known(0, 'standard') };
  const item = priced.items.find((each) => each.item === 'feature' && each.which === offer);
  const path = `machines[${machine.key}].features.${offer}`;
  return { there: 'offered', price: item?.price ?? stated(asked, path, anythingFromZero, false) };
}

function needOf(rule: FeatureRule, found: FeatureFound, judged: Judged, answers: Answers): FeatureNeed {
  const { there, price } = offerOf(rule, judged);
  const money = found.hours === null ? null : savedMoney(found.hours, answers);
  const settled =
    found.need === 'saves' ? whatPays(found, money, price) : { need: found.need, sure: found.sure };
  const from = [
    found.number,
    found.limit,
    ...(money === null ? [] : [money]),
    ...(price === null ? [] : [price]),
  ];
  return {
    feature: rule.id,
    ...settled,
    why: found.why,
    number: bounded(found.number),
    limit: bounded(found.limit),
    unit: rule.unit,
    parts: found.parts,
    there,
    price: price === null ? null : bounded(price),
    savesHours: found.hours === null ? null : bounded(found.hours),
    savesMoney: money === null ? null : bounded(money),
    source: rule.source,
    openOn: settled.sure ? [] : hangingOn(from).gaps.map(({ path }) => path),
  };
}

/** Hours saved × shop rate × years. A rate that nobody names is worth nothing certain. */
function savedMoney(hours: Value, { money }: Answers): Value {
  const rate = answered(money.shopRate, 'money.shopRate', NOT_SURE['money.shopRate']);
  const years = answered(money.years, 'money.years', NOT_SURE['money.years']);
  const least: Interval = money.shopRate === 'unknown' ? { low: 0, high: rate.high } : rate;
  const ends = corners([hours, least, years], ([h = 0, r = 0, y = 0]) => Math.round(h * r * y * 100) / 100);
  return derived(ends, 'saved', [hours, rate, years]);
}

/** It pays for itself where the money saved is surely the price or more; without a price nobody can say. */
function whatPays(
  found: FeatureFound,
  money: Value | null,
  price: Value | null,
): { need: Need; sure: boolean } {
  if (found.hours === null || found.hours.high <= 0) return { need: 'not needed', sure: true };
  if (money === null || price === null) return { need: 'worth having', sure: true };
  if (money.low >= price.high) return { need: 'pays for itself', sure: true };
  return { need: 'worth having', sure: money.high < price.low };
}
