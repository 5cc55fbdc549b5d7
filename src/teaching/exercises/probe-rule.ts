import type { Catalog, Class } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { ClassRule } from '../../rules/classes/rule.ts';
import { type Spoken, spokenOf } from '../../rules/classes/turned.ts';
import { standingOf } from '../../rules/standing.ts';
import { classGround } from '../rules/rule-ground.ts';
import { distanceOf } from './distance.ts';
import { type Decides, decidesOn, type RuleRecipe } from './rule-recipe.ts';
import type { Probe } from './walk.ts';

export interface RuleProbe extends Probe {
  readonly class: Class;
  /** what hangs on it there */
  readonly what: Decides;
  readonly spoken: Spoken;
  /** some arrangement of the class passes */
  readonly passes: boolean;
}

/** Where a rule stands about a class. Null: it has nothing to say of it, or something is open. */
export function probedRule(
  rule: ClassRule,
  ofClass: Class,
  { answers, rows }: { readonly answers: Answers; readonly rows: Catalog },
  recipe: RuleRecipe,
): RuleProbe | null {
  if (!rule.about.includes(ofClass)) return null;
  const ground = classGround(ofClass, answers, standingOf(answers, rows));
  const value = rule.number(ground)?.value;
  const limit = rule.limit(ground);
  if (value === undefined || value.low !== value.high || limit.low !== limit.high) return null;
  const spoken = spokenOf(ground);
  const turned = spokenOf(ground, rule.id);
  if ([...spoken.said, ...turned.said].some(({ sure }) => !sure)) return null;
  const speaks = ({ said }: Spoken): boolean => said.some((each) => each.rule === rule.id);
  const side = speaks(spoken) ? 'yes' : 'no';
  const what = decidesOn(recipe, side);
  return {
    class: ofClass,
    what,
    spoken,
    passes: ground.judged.some(({ passes }) => passes === 'yes'),
    side,
    share: distanceOf(value.low, limit.low, rule.unit),
    // where a stronger one speaks it is silent, turned or not
    alone: speaks(spoken) !== speaks(turned) && (what === 'voice' || spoken.finding !== turned.finding),
  };
}
