import type { FeatureNeed } from '../../rules/decision.ts';
import type { FeatureGround } from '../../rules/features/rule.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import type { PrintedFormula } from '../formula/printed-formula.ts';
import { featureChoices } from './choices.ts';
import { FEATURE_WAYS } from './feature-ways.ts';
import { isWorkable, namesIn, workedStretch } from './stretch.ts';

const LINE = { need: 'N', have: 'L', sense: 'at-least' } as const satisfies Partial<PrintedFormula>;
const PRICE = { need: 'P', have: 'W', sense: 'at-most' } as const satisfies Partial<PrintedFormula>;

/**
 * How much a feature is needed, worked out: its number against its line, and what it saves against its price. What is compared
 * is what decides. Null: there is no way on paper, or a number is not known.
 */
export function workedFeature(of: FeatureGround, need: FeatureNeed): WorkedWay | null {
  const stretch = FEATURE_WAYS[need.feature](of, need);
  if (stretch === null) return null;
  const [line, price] = [LINE, PRICE].map(({ need: a, have: b }) => isWorkable(stretch, [a, b]));
  if (line !== true && price !== true) return null;
  const saves = price === true && (line !== true || need.need !== 'required');
  const about = saves ? PRICE : LINE;
  const also = [...(line === true ? ['N', 'L'] : []), ...(price === true ? ['P', 'W'] : [])];
  const worked = workedStretch(stretch, { ...about, unit: saves ? 'money' : need.unit }, also);
  return worked === null
    ? null
    : { ...worked, choices: featureChoices(need.feature, of, new Set(namesIn(worked.formula))) };
}
