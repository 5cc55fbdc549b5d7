import type { Interval } from '../../quantities/interval.ts';
import type { Part } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { answered, derived, type Value } from '../judging/value.ts';
import { corners } from './corners.ts';

/**
 * Hours a year that a family takes now.
 * Formula: (lots × setups × setup minutes + quantity × (cycle + setups × handling)) / 60.
 * Example: 400 parts in 12 lots, 4 setups of 35 min, cycle 18 min, handling 3 min → 228 h.
 */
export function hoursNow(part: Part): Value {
  const { yearly } = part;
  const read = (key: keyof typeof yearly): Value =>
    answered(yearly[key], `parts[${part.name}].yearly.${key}`, NOT_SURE[`parts.yearly.${key}`]);
  const from = [
    read('quantity'),
    read('lots'),
    read('setups'),
    read('setupMinutes'),
    read('cycleMinutes'),
    read('handlingMinutes'),
  ];
  const hours: Interval = corners(
    from,
    ([quantity = 0, lots = 0, setups = 0, setup = 0, cycle = 0, handling = 0]) =>
      (lots * setups * setup + quantity * (cycle + setups * handling)) / 60,
  );
  return derived(hours, `hours[${part.name}]`, from);
}
