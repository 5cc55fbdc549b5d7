import { CONSTANTS, FUNCTIONS } from './functions.ts';
import type { Definition } from './printed-formula.ts';
import { type Token, tokensOf } from './tokens.ts';

/** What the names in a formula stand for. */
export interface Scope {
  readonly values: Readonly<Record<string, number>>;
  readonly definitions: readonly Definition[];
}

/**
 * The number that a formula comes to. Throws SyntaxError where it is none, RangeError where a name stands for nothing.
 * Example: evaluate('2*max(r + e, F/2)', { values: { r: 50, e: 0, F: 90 }, definitions: [] }) → 100.
 */
export function evaluate(formula: string, scope: Scope): number {
  const reader = new Reader(tokensOf(formula), formula, scope);
  const value = reader.comparison();
  reader.end();
  return value;
}

const COMPARE: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '<=': (a, b) => a <= b,
  '>=': (a, b) => a >= b,
  '<': (a, b) => a < b,
  '>': (a, b) => a > b,
  '==': (a, b) => a === b,
};

/** Reads from left to right, and works out what it reads. */
class Reader {
  private at = 0;
  private readonly tokens: readonly Token[];
  private readonly formula: string;
  private readonly scope: Scope;

  constructor(tokens: readonly Token[], formula: string, scope: Scope) {
    this.tokens = tokens;
    this.formula = formula;
    this.scope = scope;
  }

  end(): void {
    if (this.at < this.tokens.length) throw this.fault(`${this.tokens[this.at]?.text} stands too much`);
  }

  comparison(): number {
    const left = this.sum();
    const compare = COMPARE[this.sign() ?? ''];
    if (compare === undefined) return left;
    this.at += 1;
    return compare(left, this.sum()) ? 1 : 0;
  }

  private sum(): number {
    let value = this.product();
    for (;;) {
      if (this.takes('+')) value += this.product();
      else if (this.takes('-')) value -= this.product();
      else return value;
    }
  }

  private product(): number {
    let value = this.signed();
    for (;;) {
      if (this.takes('*')) value *= this.signed();
      else if (this.takes('/')) value /= this.signed();
      else return value;
    }
  }

  private signed(): number {
    return this.takes('-') ? -this.signed() : this.power();
  }

  private power(): number {
    const base = this.single();
    return this.takes('^') ? base ** this.signed() : base;
  }

  private single(): number {
    const token = this.tokens[this.at];
    if (token === undefined) throw this.fault('it ends too soon');
    this.at += 1;
    if (token.kind === 'number') return Number(token.text);
    if (token.kind === 'name') return this.takes('(') ? this.call(token.text) : this.valueOf(token.text);
    if (token.text !== '(') throw this.fault(`${token.text} stands where a number should`);
    const value = this.comparison();
    this.expect(')');
    return value;
  }

  private call(name: string): number {
    const values = [this.comparison()];
    while (this.takes(',')) values.push(this.comparison());
    this.expect(')');
    const defined = this.scope.definitions.find((each) => each.name === name);
    if (defined !== undefined) {
      const own = Object.fromEntries(defined.of.map((key, index) => [key, values[index] ?? Number.NaN]));
      return evaluate(defined.formula, { ...this.scope, values: own });
    }
    const known = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
    if (known === undefined) throw new RangeError(`${this.formula}: there is no function ${name}`);
    return known(...values);
  }

  private valueOf(name: string): number {
    const { values } = this.scope;
    const value = Object.hasOwn(values, name)
      ? values[name]
      : Object.hasOwn(CONSTANTS, name)
        ? CONSTANTS[name]
        : undefined;
    if (value === undefined) throw new RangeError(`${this.formula}: nobody says what ${name} is`);
    return value;
  }

  private sign(): string | undefined {
    const token = this.tokens[this.at];
    return token?.kind === 'sign' ? token.text : undefined;
  }

  private takes(sign: string): boolean {
    if (this.sign() !== sign) return false;
    this.at += 1;
    return true;
  }

  private expect(sign: string): void {
    if (!this.takes(sign)) throw this.fault(`${sign} is missing`);
  }

  private fault(words: string): SyntaxError {
    return new SyntaxError(`${this.formula}: ${words}`);
  }
}
