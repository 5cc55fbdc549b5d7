import type { Class } from '../../catalog/catalog.ts';
import type { ClassFinding } from '../decision-classes.ts';
import { type BestOf, tallyOf } from './best-of.ts';
import type { ClassGround } from './ground.ts';
import { CLASS_RULES } from './index.ts';
import { EVERY_CLASS } from './rule.ts';
import { argumentsOf, findingOf } from './speak.ts';

/** Every class with its finding, and what speaks for and against it. */
export function classFindings(groundOf: (of: Class) => ClassGround, bestOf: BestOf): readonly ClassFinding[] {
  return EVERY_CLASS.map((each): ClassFinding => {
    const ground = groundOf(each);
    const said = argumentsOf(CLASS_RULES, each, ground);
    const passes = ground.judged.some((judged) => judged.passes === 'yes');
    return {
      class: each,
      finding: findingOf(CLASS_RULES, said, passes),
      for: said.filter(({ side }) => side === 'for'),
      against: [
        ...said.filter(({ side }) => side === 'rules out'),
        ...said.filter(({ side }) => side === 'against'),
      ],
      ...tallyOf(ground.judged, bestOf),
    };
  });
}
