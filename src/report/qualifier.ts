import type { CheckId } from '../rules/checks/ids.ts';
import type { Decision } from '../rules/decision.ts';
import type { CheckAt } from './checks-at.ts';

/** Heights that are counted from the axis that the work turns on, not from the table. */
const FROM_THE_AXIS: ReadonlySet<CheckId> = new Set([
  'reach-high',
  'reach-low',
  'index-clear',
  'table-clear',
  'housing-clear',
]);

/**
 * What has to be known to read the numbers of a check: where its heights are measured from, how the centers were
 * found. Null where nothing. Example: reach-high on a tilting rotary → 'above the tilt axis'.
 */
export function qualifier(decision: Decision, { result, path }: CheckAt): string | null {
  if (FROM_THE_AXIS.has(result.check)) {
    const [, index] = path;
    const kind = typeof index === 'number' ? decision.arrangements[index]?.class : undefined;
    const levelOnly = kind === 'single-axis' || kind === 'collet-indexer';
    return levelOnly ? 'above the rotary axis' : 'above the tilt axis';
  }
  if (result.check === 'power' && result.unit !== 'kVA')
    return result.unit === 'V' ? 'how far the voltage is off' : 'number of phases';
  if (result.check !== 'index-accuracy') return null;
  if (Object.hasOwn(result.inputs, 'assume.centerErrorProbed')) return 'centers probed';
  return Object.hasOwn(result.inputs, 'assume.centerErrorHand') ? 'centers found by hand' : null;
}
