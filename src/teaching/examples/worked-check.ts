import type { Part } from '../../questions/answers.ts';
import type { CheckExample } from '../../rules/checks/example.ts';
import type { Verdict } from '../../rules/decision.ts';
import type { Check } from '../../rules/judging/check.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { CHECK_FORMULAS } from '../checks/index.ts';
import { printedFormula, valuesOf } from '../formula/formula-source.ts';
import type { PrintedFormula } from '../formula/printed-formula.ts';
import { type Worked, workOut } from '../formula/work-out.ts';
import type { Choices } from '../rules/choices.ts';
import { exampleAnswers } from './example-given.ts';
import { judgeExample } from './example-world.ts';

/** A formula with all its numbers: what is given, the way, and what comes out. */
export interface WorkedWay {
  readonly formula: PrintedFormula;
  readonly values: Readonly<Record<string, number>>;
  readonly worked: Worked;
  /** of the check that it is of; null: of a rule, which has no verdict */
  readonly outcome: Outcome | null;
  /** which word is the answer, where it is a word */
  readonly choices?: Choices;
}

/** A check on one case. */
export interface WorkedCheck extends WorkedWay {
  readonly verdict: Verdict;
  readonly outcome: Outcome;
}

/** The comparison that an outcome shows, worked out by its printed formula. Null where nothing is compared, or it is open. */
export function workedOutcome(outcome: Outcome, family: Part | null): WorkedCheck | null {
  const { check, comparison, of, verdict } = outcome;
  if (comparison === null || verdict === 'open') return null;
  // where the tool reaches no side at all there is nothing to be reached
  if (!Number.isFinite(outcome.need.high)) return null;
  const source = CHECK_FORMULAS[check.id]({ of, comparison, family });
  const values = valuesOf(source, of);
  if (values === null) return null;
  const formula = printedFormula(source, of, { sense: check.sense, unit: comparison.unit ?? check.unit });
  return { formula, values, worked: workOut(formula, values), verdict, outcome };
}

/** An example of a check, worked out; null where a number of it is open. */
export function workedExample(
  check: Check,
  example: CheckExample,
): (WorkedCheck & { readonly example: CheckExample }) | null {
  const [part] = exampleAnswers(example.given).parts;
  const found = workedOutcome(judgeExample(check, example.given), part);
  return found === null ? null : { ...found, example };
}
