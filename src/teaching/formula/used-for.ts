import type { PrintedFormula } from './printed-formula.ts';
import { tokensOf } from './tokens.ts';

/** Names that lead to some names, themselves among them: symbols, steps and definitions. A name that stands for nothing leads nowhere. */
export function usedFor(
  { steps, definitions }: Pick<PrintedFormula, 'steps' | 'definitions'>,
  names: readonly string[],
): ReadonlySet<string> {
  const lines = new Map(steps.map(({ gives, formula }) => [gives, namesIn(formula)] as const));
  const defined = new Map(definitions.map(({ name, of, formula }) => [name, namesIn(formula, of)] as const));
  const used = new Set<string>();
  const visit = (name: string): void => {
    if (used.has(name)) return;
    used.add(name);
    for (const other of lines.get(name) ?? defined.get(name) ?? []) visit(other);
  };
  for (const name of names) visit(name);
  return used;
}

/** Without the names that a definition is given. */
const namesIn = (formula: string, own: readonly string[] = []): readonly string[] =>
  tokensOf(formula).flatMap(({ kind, text }) => (kind === 'name' && !own.includes(text) ? [text] : []));
