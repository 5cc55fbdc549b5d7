import type { Part } from '../../questions/answers.ts';
import type { Case } from '../../rules/judging/case.ts';
import type { Comparison } from '../../rules/judging/check.ts';
import type { Side } from '../../rules/judging/side.ts';
import type { Input } from '../../rules/judging/term.ts';
import type { FormulaSource } from '../formula/formula-source.ts';

/** What a formula is written for: a case, the comparison of the check that is meant, and the answers about the part. */
interface FormulaGround {
  readonly of: Case;
  readonly comparison: Comparison;
  readonly family: Part | null;
}

/** How a check is worked out, for a case. */
export type CheckFormula = (ground: FormulaGround) => FormulaSource;

/** An input that a side of a comparison uses, by its name. Throws where it uses none that is called so. */
export function inputOf(side: Side, of: Case, name: string): Input {
  for (const term of side.terms(of))
    for (const { input } of Object.values(term.uses)) if (input.name === name) return input;
  throw new RangeError(`no term uses ${name}`);
}
