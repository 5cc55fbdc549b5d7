/** A letter of a formula: what it stands for, and which input of the decision it is. */
interface FormulaSymbol {
  readonly symbol: string;
  readonly words: string;
  readonly unit: string;
  /** path of the answer, catalog value or derived number: `parts[Example].eccentricity` */
  readonly input: string;
}

/** A given number, by the letter that stands for it. */
export interface GivenNumber extends FormulaSymbol {
  readonly value: number;
}

/** A function that several steps use, written out. */
export interface Definition {
  readonly name: string;
  /** the names of what it is given, in order */
  readonly of: readonly string[];
  readonly formula: string;
  readonly words: string;
}

/** One line of the way: what it gives, and how. */
export interface FormulaStep {
  readonly gives: string;
  readonly words: string;
  readonly unit: string;
  readonly formula: string;
}

/**
 * How one comparison of a check is worked out, as data: explanations, worksheets and exercises print it, and a reader (or a
 * program) comes with the given numbers to the same need and have as the check. Formulas are written as in a spreadsheet,
 * angles in degrees.
 */
export interface PrintedFormula {
  readonly symbols: readonly FormulaSymbol[];
  readonly definitions: readonly Definition[];
  /** in order: each uses symbols and what earlier steps give */
  readonly steps: readonly FormulaStep[];
  /** names of what is compared */
  readonly need: string;
  readonly have: string;
  /** at-most: the need may not exceed the have; at-least: it may not fall below it */
  readonly sense: 'at-most' | 'at-least';
  readonly unit: string;
}
