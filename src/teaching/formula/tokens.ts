/** A piece of a formula. */
export interface Token {
  readonly kind: 'number' | 'name' | 'sign';
  readonly text: string;
}

const TOKEN = /\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?)|([A-Za-z]\w*)|(<=|>=|==|[-+*/^(),<>]))/y;

/**
 * A formula taken apart. It is written as in a spreadsheet: names, numbers, + - * / ^, brackets, functions, comparisons.
 * Throws SyntaxError where it is not. Example: tokensOf('2*r') → 2, *, r.
 */
export function tokensOf(formula: string): readonly Token[] {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  const end = formula.trimEnd().length;
  while (TOKEN.lastIndex < end) {
    const at = TOKEN.lastIndex;
    const found = TOKEN.exec(formula);
    if (found === null)
      throw new SyntaxError(`${formula}: nothing is known that begins like ${formula.slice(at)}`);
    const [, number, name, sign] = found;
    if (number !== undefined) tokens.push({ kind: 'number', text: number });
    else if (name !== undefined) tokens.push({ kind: 'name', text: name });
    else tokens.push({ kind: 'sign', text: sign ?? '' });
  }
  return tokens;
}
