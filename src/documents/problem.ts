/** Something wrong in a file: where, what was found, what is expected instead. */
export interface Problem {
  readonly file: string;
  /** from 1; 0 where the problem is the file as a whole */
  readonly line: number;
  readonly column: number;
  /** what was found, e.g. `parts[0].shape is "cube"` */
  readonly found: string;
  /** what is expected instead, a whole clause, e.g. `expected block or round` */
  readonly expected: string;
  /** the nearest right word, where one is near */
  readonly didYouMean?: string;
}

/** Either a value, or every problem that stands in the way. */
export type Reading<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** One line per problem: `file:line:column: what, instead of what`. */
export function describeProblem(problem: Problem): string {
  const hint = problem.didYouMean === undefined ? '' : ` (did you mean "${problem.didYouMean}"?)`;
  return `${problem.file}:${problem.line}:${problem.column}: ${problem.found}, ${problem.expected}${hint}`;
}
