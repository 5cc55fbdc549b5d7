import { anythingFromZero } from '../../quantities/interval.ts';
import type { Answers, Lifting } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { answered, derived, openAnswer, type Value } from '../judging/value.ts';

/**
 * The heaviest rotary that hoist or forklift of the shop can take, kg: a hoist's rating includes its rigging.
 * What hands can lift safely is far less, and hangs on reach and height: the check of the lift says it.
 */
export function liftable({ shop }: Answers): Value {
  if (shop.lifting === 'unknown')
    return derived(anythingFromZero, 'shop.lifting', openAnswer('shop.lifting'));
  const all = shop.lifting.map((means, index) => carriedBy(means, `shop.lifting[${index}]`));
  const most = (end: 'low' | 'high'): number => Math.max(0, ...all.map((each) => each[end]));
  return derived({ low: most('low'), high: most('high') }, 'lifting capacity', all);
}

function carriedBy(means: Lifting, path: string): Value {
  if (means.by === 'hand') return derived({ low: 0, high: 0 }, path, []);
  const capacity = answered(
    means.capacity,
    `${path}.capacity`,
    NOT_SURE[`shop.lifting.${means.by}.capacity`],
  );
  if (means.by === 'forklift') return capacity;
  const rigging = answered(means.rigging, `${path}.rigging`, NOT_SURE['shop.lifting.hoist.rigging']);
  const ends = {
    low: Math.max(0, capacity.low - rigging.high),
    high: Math.max(0, capacity.high - rigging.low),
  };
  return derived(ends, path, [capacity, rigging]);
}
