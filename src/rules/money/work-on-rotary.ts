import { yearlyHours } from '../../mechanics/money/yearly-hours.ts';
import type { Part } from '../../questions/answers.ts';
import { corners } from '../facts/corners.ts';
import { type YearlyFacts, yearlyFacts } from '../facts/hours.ts';
import { derived, type Value } from '../judging/value.ts';
import { setupsOnRotary } from './setups-on-rotary.ts';

/** One family as it would be made on a rotary that holds it. */
interface OnRotary {
  /** holdings of each part: never more than the shop takes now, for it may go on as it does */
  readonly setups: Value;
  readonly hours: Value;
  /**
   * of the yearly work and the holdings only one is not known, and hours saved go up and down with it in a straight line
   */
  readonly isInStep: boolean;
  /** hours saved a year, with so many times the parts in as many lots */
  readonly saved: (quantityTimes: number) => Value;
}

export interface WorkOnRotary {
  readonly setupsNow: Value;
  /** how many holdings there are now, and what each takes in a year, is known; it is the same whatever is bought */
  readonly isKnown: boolean;
  readonly byAxes: Readonly<Record<1 | 2, OnRotary>>;
}

/** What a family would take on a rotary with one axis and with two. */
export function workOnRotary(part: Part): WorkOnRotary {
  const yearly = yearlyFacts(part);
  const on = (axes: 1 | 2): OnRotary => onRotary(part.name, yearly, setupsOnRotary(part, axes));
  const known = isWorkKnown(yearly) && isKnown(yearly.setups);
  return { setupsNow: yearly.setups, isKnown: known, byAxes: { 1: on(1), 2: on(2) } };
}

function onRotary(name: string, yearly: YearlyFacts, rule: Value): OnRotary {
  const holdings = corners([yearly.setups, rule], ([now = 0, then = 0]) => Math.min(now, then));
  const savedNow = hoursSaved(name, yearly, rule, 1);
  return {
    setups: derived(holdings, rule.path, [yearly.setups, rule]),
    hours: hoursThen(name, yearly, rule),
    isInStep:
      isKnown(rule) && (isKnown(yearly.setups) || (isWorkKnown(yearly) && yearly.setups.low >= rule.high)),
    // every arrangement asks for these
    saved: (quantityTimes) =>
      quantityTimes === 1 ? savedNow : hoursSaved(name, yearly, rule, quantityTimes),
  };
}

/** The hours of now, with fewer holdings. */
function hoursThen(name: string, yearly: YearlyFacts, rule: Value): Value {
  const { quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes } = yearly;
  const from = [quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes, rule];
  const hours = corners(
    from,
    ([parts = 0, batches = 0, now = 0, setup = 0, cycle = 0, handling = 0, then = 0]) =>
      yearlyHours({
        quantity: parts,
        lots: batches,
        setups: Math.min(now, then),
        setupMinutes: setup,
        cycleMinutes: cycle,
        handlingMinutes: handling,
      }),
  );
  return derived(hours, `hoursThen[${name}]`, from);
}

/**
 * Now less then, in one formula, so that what stands in both is not taken twice: the cutting is the same.
 * Formula: (setups now − then) × (lots × setup minutes + quantity × handling) / 60.
 * Example: 12 lots of 400 parts in all, 4 setups of 35 min become 1, handling 3 min → 81 h.
 */
function hoursSaved(name: string, yearly: YearlyFacts, rule: Value, quantityTimes: number): Value {
  const { quantity, lots, setups, setupMinutes, handlingMinutes } = yearly;
  const from = [quantity, lots, setups, setupMinutes, handlingMinutes, rule];
  const hours = corners(from, ([parts = 0, batches = 0, now = 0, setup = 0, handling = 0, then = 0]) =>
    yearlyHours({
      quantity: parts * quantityTimes,
      lots: batches,
      setups: Math.max(0, now - then),
      setupMinutes: setup,
      cycleMinutes: 0,
      handlingMinutes: handling,
    }),
  );
  return derived(hours, `hoursSaved[${name}]`, from);
}

/** What a holding takes in a year. */
const isWorkKnown = ({ lots, setupMinutes, quantity, handlingMinutes }: YearlyFacts): boolean =>
  [lots, setupMinutes, quantity, handlingMinutes].every(isKnown);

const isKnown = ({ low, high }: Value): boolean => low === high;
