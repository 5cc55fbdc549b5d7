import { yearlyHours } from '../../mechanics/money/yearly-hours.ts';
import type { Part } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { answered, derived, type Value } from '../judging/value.ts';
import { corners } from './corners.ts';

/** What a family takes in a year, as it was answered. */
export type YearlyFacts = Readonly<Record<keyof Part['yearly'], Value>>;

export function yearlyFacts({ name, yearly }: Part): YearlyFacts {
  const read = (key: keyof typeof yearly): Value =>
    answered(yearly[key], `parts[${name}].yearly.${key}`, NOT_SURE[`parts.yearly.${key}`]);
  return {
    quantity: read('quantity'),
    lots: read('lots'),
    setups: read('setups'),
    setupMinutes: read('setupMinutes'),
    cycleMinutes: read('cycleMinutes'),
    handlingMinutes: read('handlingMinutes'),
  };
}

/**
 * Hours a year that a family takes now.
 * Formula: (lots × setups × setup minutes + quantity × (cycle + setups × handling)) / 60.
 * Example: 400 parts in 12 lots, 4 setups of 35 min, cycle 18 min, handling 3 min → 228 h.
 */
export function hoursNow(part: Part): Value {
  const { quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes } = yearlyFacts(part);
  const from = [quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes];
  const hours = corners(from, ([parts = 0, batches = 0, holdings = 0, setup = 0, cycle = 0, handling = 0]) =>
    yearlyHours({
      quantity: parts,
      lots: batches,
      setups: holdings,
      setupMinutes: setup,
      cycleMinutes: cycle,
      handlingMinutes: handling,
    }),
  );
  return derived(hours, `hours[${part.name}]`, from);
}
