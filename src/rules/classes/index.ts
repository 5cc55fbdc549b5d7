import type { ClassRule } from './rule.ts';
import type { ClassRuleId } from './rule-ids.ts';
import { catalog } from './rules/catalog.ts';
import { held } from './rules/holding.ts';
import { lifting } from './rules/lifting.ts';
import { mass } from './rules/mass.ts';
import { moves } from './rules/moving.ts';
import { sides } from './rules/sides.ts';
import { spread } from './rules/spread.ts';
import { strength } from './rules/strength.ts';
import { swing } from './rules/swing.ts';
import { threeAxis } from './rules/three-axis.ts';
import { tilt } from './rules/tilt.ts';

/** A rule by its id. */
export function classRule(id: ClassRuleId): ClassRule {
  const found = CLASS_RULES.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no rule ${id}`);
  return found;
}

/** The decision table of the class, in the order of the ids. Nothing else knows a rule by name. */
export const CLASS_RULES: readonly ClassRule[] = [
  ...sides,
  ...tilt,
  ...swing,
  ...mass,
  ...strength,
  ...moves,
  ...held,
  ...spread,
  ...threeAxis,
  ...lifting,
  ...catalog,
];
