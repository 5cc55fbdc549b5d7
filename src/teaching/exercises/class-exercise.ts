import type { Catalog, Class } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { CLASS_WORDS } from '../../report/wording/arrangement.ts';
import { classRule } from '../../rules/classes/index.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import { decide } from '../../rules/decide.ts';
import { standingOf } from '../../rules/standing.ts';
import { ruleGround } from '../rules/rule-ground.ts';
import { workedRule } from '../rules/worked-rule.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import type { Drawn } from './check-exercise.ts';
import { CLASS_RECIPES } from './class-recipes.ts';
import { type MadeExercise, noneFound } from './exercise.ts';
import { exerciseOn } from './exercise-of.ts';
import { type CaseAcross, findAcross } from './find-across.ts';
import { probedRule, type RuleProbe } from './probe-rule.ts';
import { type Side, sidesDrawn } from './recipe.ts';
import { ruleSteps } from './rule-steps.ts';
import { type Seeded, seededBy } from './seeded.ts';

/** An exercise in which a rule of the class decides what is found of a kind of rotary, or what is said of it. */
export function classExercise(id: ClassRuleId, { seed, level, catalog }: Drawn): MadeExercise {
  const draw = seededBy(seed, id, `level ${level}`);
  const rule = classRule(id);
  const { title } = CLASS_RULE_LESSONS[id];
  for (const side of sidesDrawn(draw)) {
    const found = foundRule(id, { side, level, catalog, draw });
    if (found === null) continue;
    const { probe, answers, catalog: rows, across } = found;
    const decision = decide(answers, rows, { all: true, traces: false });
    const way = workedRule(rule, ruleGround(probe.class, answers, standingOf(answers, rows), decision));
    const exercise = exerciseOn(found, {
      seed,
      level,
      about: id,
      title: `One rule about a kind of rotary`,
      task: `Is the kind (${CLASS_WORDS[probe.class].title}: ${CLASS_WORDS[probe.class].means}) right for this work? One rule is asked: ${title.toLowerCase()}.`,
      steps: ruleSteps({ rule: id, class: probe.class, way, spoken: probe.spoken, passes: probe.passes }),
      decides: { rule: 'class rule', id, class: probe.class, what: probe.what },
      way,
      across,
    });
    return { ok: true, exercise };
  }
  return noneFound(`with which the rule ${id} (${title}) decides`, level);
}

/** A case in which a rule decides; where only what it says hangs on it, with answers on which it says the opposite. */
function foundRule(
  id: ClassRuleId,
  {
    side,
    level,
    catalog,
    draw,
  }: Pick<Drawn, 'level' | 'catalog'> & { readonly side: Side; readonly draw: Seeded },
): CaseAcross<RuleProbe> | null {
  const rule = classRule(id);
  const recipe = CLASS_RECIPES[id];
  const probe = (answers: Answers, rows: Catalog): RuleProbe | null => {
    const drawn: Class = rows.rotaries[0]?.class ?? 'built-in';
    const about = recipe.ofClass?.(drawn, side) ?? drawn;
    return probedRule(rule, about, { answers, rows }, recipe);
  };
  return findAcross(catalog, { recipe, side, level, probe }, draw, ({ what }) => what === 'finding');
}
