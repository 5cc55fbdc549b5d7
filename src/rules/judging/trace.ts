import type { Interval } from '../../quantities/interval.ts';
import type { Bounded, CheckResult, Easing } from '../decision.ts';
import { gapsOf, type Outcome } from './outcome.ts';
import { bindingTerms, evaluateSide } from './side.ts';
import { bounded } from './value.ts';

/** The outcome with its reasons: binding terms, inputs by name, formula and source. Made when shown. */
export function traced(outcome: Outcome, part: string | null): CheckResult {
  const { check, comparison, of } = outcome;
  const needs = comparison === null ? [] : bindingTerms(comparison.need, of);
  const haves = comparison === null ? [] : bindingTerms(comparison.have, of);
  const inputs: Record<string, Bounded> = {};
  const inputUnits: Record<string, string> = {};
  for (const { term, values } of [...needs, ...haves])
    for (const [key, value] of Object.entries(values)) {
      inputs[value.path] = bounded(value);
      inputUnits[value.path] = term.uses[key]?.input.unit ?? '';
    }
  return {
    check: check.id,
    stage: check.stage,
    part,
    verdict: outcome.verdict,
    advisory: outcome.advisory,
    need: bounded(outcome.need),
    have: bounded(outcome.have),
    unit: comparison?.unit ?? check.unit,
    margin: bounded(outcome.margin),
    relativeMargin: bounded(outcome.relativeMargin),
    binding: needs.map((each) => each.term.name).join(', ') || (comparison?.what ?? ''),
    inputs,
    inputUnits,
    formula: check.formula,
    source: check.source,
    easing: easingOf(outcome),
    remedies: outcome.verdict === 'fails' ? check.remedies : [],
    gaps: gapsOf(outcome),
    categorical: check.categorical === true,
  };
}

function easingOf({ easing, easingRule, check, of }: Outcome): Easing | null {
  if (easing === null || easingRule === null) return null;
  const amount: Interval | null =
    easingRule.amount === undefined ? null : evaluateSide(easingRule.amount, of);
  return {
    measure: easing,
    amount: amount === null ? null : bounded(amount),
    unit: easingRule.unit ?? check.unit,
  };
}
