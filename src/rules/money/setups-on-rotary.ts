import type { Part } from '../../questions/answers.ts';
import { derived, type Hanging, known, openAnswer, type Value } from '../judging/value.ts';

/**
 * Holdings that each part takes once it is on a rotary. One that tilts: one for top and sides, one more for
 * the bottom where it is cut. A single axis: the sides in one, and each end that is cut one more.
 * Source: common practice, no source.
 * Example: top and sides, bottom cut → 2 on one that tilts, 3 on a single axis.
 */
export function setupsOnRotary({ name, approaches, bottom }: Part, axes: 1 | 2): Value {
  const path = `setupsThen[${name}]`;
  const open: Hanging[] = [];
  let [low, high] = [1, 1];
  if (bottom === 'unknown') open.push(...openAnswer(`parts[${name}].bottom`));
  if (bottom !== false) high += 1;
  if (bottom === true) low += 1;
  if (axes === 1 && approaches === 'unknown') open.push(...openAnswer(`parts[${name}].approaches`));
  const top = approaches === 'unknown' ? 'unknown' : approaches.includes('top');
  if (axes === 1 && top !== false) high += 1;
  if (axes === 1 && top === true) low += 1;
  return low === high ? known(low, path) : derived({ low, high }, path, open);
}
