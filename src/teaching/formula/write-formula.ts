import { FUNCTION_WORDS, isAboutAngles } from './functions.ts';
import { type Token, tokensOf } from './tokens.ts';

/** Between these a space makes a formula easier to read. */
const SPACED: ReadonlySet<string> = new Set(['+', '-', '<=', '>=', '<', '>', '==']);
const WRITTEN: Readonly<Record<string, string>> = { '*': '·', '-': '−', '<=': '≤', '>=': '≥', '==': '=' };

/**
 * A formula as it is printed; with values, the numbers stand in place of the names. In plain ASCII it is again the formula
 * that can be worked out. Example: writeFormula('2*(r + e)', { r: 50, e: 0 }) → '2·(50 + 0)'.
 */
export function writeFormula(formula: string, values: Readonly<Record<string, number>> = {}): string {
  const tokens = tokensOf(formula);
  return tokens
    .map((token, index) => {
      const before = tokens[index - 1];
      if (token.kind === 'name') return nameOrValue(token, tokens[index + 1], before, values);
      if (token.kind === 'number') return token.text;
      return writeSign(token, before);
    })
    .join('')
    .replace(/\^2(?![\d.])/g, '²')
    .replaceAll('sqrt(', '√(');
}

function nameOrValue(
  { text }: Token,
  after: Token | undefined,
  before: Token | undefined,
  values: Readonly<Record<string, number>>,
): string {
  const value = after?.text === '(' || !Object.hasOwn(values, text) ? undefined : values[text];
  if (value === undefined) return text === 'pi' ? 'π' : text;
  const number = writeNumber(value);
  const opens = before === undefined || before.text === '(' || before.text === ',';
  return value < 0 && (!opens || after?.text === '^') ? `(${number})` : number;
}

function writeSign({ text }: Token, before: Token | undefined): string {
  const written = WRITTEN[text] ?? text;
  if (text === ',') return ', ';
  if (!SPACED.has(text)) return written;
  const isSign = text === '-' && (before === undefined || (before.kind === 'sign' && before.text !== ')'));
  return isSign ? written : ` ${written} `;
}

const DIGITS = 6;

/** A number in a formula: six significant digits, as it is typed into a calculator. Example: writeNumber(-0.5) → '−0.5'. */
export const writeNumber = (value: number): string =>
  expanded(Number(value.toPrecision(DIGITS))).replace('-', '−');

/** Without an exponent, which a calculator of the shop may not take. */
const expanded = (value: number): string =>
  Math.abs(value) >= 1e21 || (value !== 0 && Math.abs(value) < 1e-6)
    ? value.toFixed(12).replace(/\.?0+$/, '')
    : String(value);

/** Whether angles occur in a formula. */
export const hasAngles = (formula: string): boolean =>
  tokensOf(formula).some(({ kind, text }) => kind === 'name' && isAboutAngles(text));

/** The functions that occur in some formulas, with what each does. Example: usedFunctions(['max(a, b)']) → one, `max(…)`. */
export function usedFunctions(
  formulas: readonly string[],
): readonly { readonly formula: string; readonly words: string }[] {
  const names = new Set(
    formulas.flatMap(tokensOf).flatMap(({ kind, text }) => (kind === 'name' ? [text] : [])),
  );
  return Object.entries(FUNCTION_WORDS).flatMap(([name, words]) =>
    names.has(name) ? [{ formula: `${name}(…)`, words }] : [],
  );
}
