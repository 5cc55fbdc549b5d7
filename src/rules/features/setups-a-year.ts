import type { Part } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { answered, derived, openAnswer, type Value } from '../judging/value.ts';

/**
 * Setups a year of some families on a rotary: lots × holdings. One that tilts takes top and sides in one
 * holding and the bottom in one more; a single axis takes the sides in one and each end that is cut in one more.
 * Source: common practice, no source. Example: 12 lots, five sides and the bottom, tilting → 24.
 */
export function setupsAYear(parts: readonly Part[], axes: 1 | 2): Value {
  const all = parts.map((part) => {
    const lots = answered(part.yearly.lots, `parts[${part.name}].yearly.lots`, NOT_SURE['parts.yearly.lots']);
    const ends = [part.bottom, ...(axes === 1 ? [hasTop(part)] : [])];
    const least = 1 + ends.filter((end) => end === true).length;
    const greatest = 1 + ends.filter((end) => end !== false).length;
    const open = least === greatest ? [] : openAnswer(`parts[${part.name}].bottom`);
    return derived({ low: lots.low * least, high: lots.high * greatest }, 'setups', [lots, ...open]);
  });
  const sum = (end: 'low' | 'high'): number => all.reduce((total, each) => total + each[end], 0);
  return derived({ low: sum('low'), high: sum('high') }, 'setups a year', all);
}

const hasTop = ({ approaches }: Part): boolean | 'unknown' =>
  approaches === 'unknown' ? 'unknown' : approaches.includes('top');
