import type { PrintedFormula } from '../formula/printed-formula.ts';
import { usedFor } from '../formula/used-for.ts';

/** Longer hints are cut to their last lines. */
const LONGEST_HINT = 900;

/** The lines that lead to a name: first in words what is worked out one after the other, then the formulas. */
export function wayHints(formula: PrintedFormula, name: string): readonly string[] {
  const used = usedFor(formula, [name]);
  const steps = formula.steps.filter(({ gives }) => used.has(gives));
  if (steps.length === 0) return [];
  const [inWords, asFormulas] = [
    steps.map(({ words }) => words),
    steps.map(({ gives, formula: how }) => `${gives} = ${how}`),
  ].map((lines) => lastThatFit(lines));
  return [`Work out, one after the other: ${inWords?.join('; ')}.`, `${asFormulas?.join('; ')}.`];
}

function lastThatFit(lines: readonly string[]): readonly string[] {
  let kept = lines;
  while (kept.length > 1 && kept.join('; ').length > LONGEST_HINT) kept = kept.slice(1);
  return kept.map((line) => line.slice(0, LONGEST_HINT));
}
