import type { Interval } from '../../quantities/interval.ts';
import { corners } from '../facts/corners.ts';
import type { ShopCase } from '../judging/case.ts';
import { derived, known, type Value } from '../judging/value.ts';

const NONE = known(0, 'swaps');

/**
 * Lifts of the rotary a year, each one on or off.
 * Formula: switches a week × weeks where fewer vises stand beside the rotary than are wanted, else 0.
 * A built-in table stays where it is. Example: 3 a week, 48 weeks, 1 station of 2 wanted → 144.
 */
export function swapsOf(shop: ShopCase, builtIn: boolean, stations: Interval): Value {
  const { visesAsked: wanted, switchesPerWeek: switches } = shop;
  if (builtIn || stations.low >= wanted.high) return NONE;
  const surely = stations.high < wanted.low;
  const { weeks } = shop.assume;
  const year = { low: surely ? switches.low * weeks : 0, high: switches.high * weeks };
  return derived(year, 'swaps', surely ? [switches] : [switches, wanted]);
}

/** Hours a year that those lifts take. Example: 144 lifts of 60 min → 144 h. */
export function swapHoursOf(shop: ShopCase, swaps: Value): Interval {
  if (swaps.high === 0) return { low: 0, high: 0 };
  return corners([swaps, shop.swapMinutes], ([lifts = 0, minutes = 0]) => (lifts * minutes) / 60);
}
