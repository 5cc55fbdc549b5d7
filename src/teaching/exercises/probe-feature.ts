import type { FeatureNeed } from '../../rules/decision.ts';
import { shopCase } from '../../rules/facts/shop-facts.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import { judgedAlone } from '../../rules/standing.ts';
import { featureGround, featuresOf } from '../../rules/weighing/features.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import { wayTo } from '../rules/stretch.ts';
import { workedFeature } from '../rules/worked-feature.ts';
import { distanceOf } from './distance.ts';
import type { FeatureRecipe, Shop } from './feature-recipes.ts';
import type { Probe } from './walk.ts';

export interface FeatureProbe extends Probe {
  readonly need: FeatureNeed;
  readonly way: WorkedWay | null;
}

/** How much a feature is needed on an arrangement. Null: there is no such arrangement, or it is not sure. */
export function probedFeature(
  id: FeatureId,
  { answers, rows }: Shop,
  on: string,
  { yes, by, line }: FeatureRecipe,
): FeatureProbe | null {
  const judged = judgedAlone(answers, rows, on);
  if (judged === null) return null;
  const shop = shopCase(answers);
  const need = featuresOf(judged, answers, shop).find(({ feature }) => feature === id);
  if (need?.sure !== true) return null;
  const way = workedFeature(featureGround(judged, answers, shop), need);
  const [number, limit] = by === 'line' ? ['N', 'L'] : ['P', 'W'];
  const at = (name = ''): number => (way === null ? null : wayTo(way, name))?.worked.need ?? Number.NaN;
  return {
    need,
    way,
    side: yes.includes(need.need) ? 'yes' : 'no',
    share: line === 'yes or no' ? null : distanceOf(at(number), at(limit), ''),
    alone: judged.passes === 'yes' && way !== null,
  };
}
