import type { Part } from '../../questions/answers.ts';
import { yearlyFacts } from '../facts/hours.ts';
import { derived, type Value } from '../judging/value.ts';
import { setupsOnRotary } from '../money/setups-on-rotary.ts';

/**
 * Setups a year of some families on a rotary: lots × holdings.
 * Example: 12 lots, five sides and the bottom, tilting → 24.
 */
export function setupsAYear(parts: readonly Part[], axes: 1 | 2): Value {
  const all = parts.map((part) => {
    const [{ lots }, setups] = [yearlyFacts(part), setupsOnRotary(part, axes)];
    return derived({ low: lots.low * setups.low, high: lots.high * setups.high }, 'setups', [lots, setups]);
  });
  const sum = (end: 'low' | 'high'): number => all.reduce((total, each) => total + each[end], 0);
  return derived({ low: sum('low'), high: sum('high') }, 'setups a year', all);
}
