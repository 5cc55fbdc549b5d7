import { printable } from './printable.ts';

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

/** One line per problem: `file:line:column: what, instead of what`. Nothing in it can move a cursor. */
export function describeProblem(problem: Problem): string {
  const hint = problem.didYouMean === undefined ? '' : ` (did you mean "${problem.didYouMean}"?)`;
  const { file, line, column, found, expected } = problem;
  return printable(`${file}:${line}:${column}: ${found}, ${expected}${hint}`);
}

/** Problems file by file, in the order of `files` and then as they come, each in the order of its lines. */
export function inOrder(problems: readonly Problem[], files: readonly string[] = []): readonly Problem[] {
  const order = [...new Set([...files, ...problems.map((each) => each.file)])];
  return order.flatMap((file) =>
    problems
      .filter((each) => each.file === file)
      .sort((one, other) => one.line - other.line || one.column - other.column),
  );
}

/** A problem of the file as a whole. */
export const wholeFile = (file: string, found: string, expected: string): Reading<never> => ({
  ok: false,
  problems: [{ file, line: 0, column: 0, found, expected }],
});

/** Problems of a document with those that its schema finds; a value that is named already is not named again. */
export function withSchemaProblems(known: readonly Problem[], found: readonly Problem[]): readonly Problem[] {
  const places = new Set(known.map(({ line, column }) => `${line}:${column}`));
  return [...known, ...found.filter(({ line, column }) => !places.has(`${line}:${column}`))];
}
