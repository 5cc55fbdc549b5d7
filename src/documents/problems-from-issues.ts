import type * as z from 'zod';
import type { LengthUnits } from '../quantities/kinds.ts';
import { type FieldFault, faultIn } from './fields/fault.ts';
import { entries } from './fields/read-quantity.ts';
import { nearest } from './nearest.ts';
import type { ParsedDocument } from './parse-document.ts';
import { pathText, valueAt } from './path-text.ts';
import type { Path } from './place.ts';
import { quoted } from './printable.ts';
import type { Problem } from './problem.ts';

/** A fault at a path of the document. */
export interface FaultAt extends FieldFault {
  readonly path: Path;
}

/** What zod found, as problems with file, line and column. */
const problemsFromIssues = (
  issues: readonly z.core.$ZodIssue[],
  document: ParsedDocument,
  file: string,
): readonly Problem[] =>
  issues.flatMap((issue) => faultsOf(issue, document).map((fault) => problemAt(fault, document, file)));

/**
 * What a schema finds that is made for the units of the file. Where the file names both, only what is wrong in either.
 */
export function schemaProblems(
  schema: (units: LengthUnits) => z.ZodType,
  document: ParsedDocument,
  file: string,
): readonly Problem[] {
  const found = document.units.map((units) => {
    const result = schema(units).safeParse(document.value);
    return result.success ? [] : problemsFromIssues(result.error.issues, document, file);
  });
  const [first = [], ...others] = found;
  const stands = ({ line, column }: Problem, all: readonly Problem[]): boolean =>
    all.some((each) => each.line === line && each.column === column);
  return first.filter((problem) => others.every((all) => stands(problem, all)));
}

/** A fault as a problem: its path becomes a name in words, and a place in the text. */
export function problemAt(fault: FaultAt, document: ParsedDocument, file: string): Problem {
  const { path, found, expected, didYouMean, atKey } = fault;
  const place = atKey === true ? document.placeOfKey(path) : document.placeOf(path);
  const name = pathText(document.value, path);
  const what = name === '' ? found : `${name} ${found}`;
  return { file, ...place, found: what, expected, ...(didYouMean === undefined ? {} : { didYouMean }) };
}

function faultsOf(issue: z.core.$ZodIssue, document: ParsedDocument): readonly FaultAt[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  const fault = faultIn(issue);
  if (fault !== undefined) return [{ ...fault, path }];
  if (issue.code === 'unrecognized_keys') return unknownKeys(issue, path);
  const value = valueAt(document.value, path);
  const is = value === undefined ? 'is missing' : `is ${quoted(value)}`;
  const found = path.length === 0 ? `the file ${is}` : is;
  if (issue.code === 'invalid_type') return [{ path, found, expected: expectedType(issue.expected) }];
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    const limit = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
    const count = Array.isArray(value) ? value.length : 0;
    return [{ path, found: `has ${entries(count)}`, expected: `expected ${limit}` }];
  }
  return [{ path, found, expected: `expected something else (${issue.message})` }];
}

function expectedType(expected: string): string {
  if (expected === 'object') return 'expected a map: keys with values';
  if (expected === 'array') return 'expected a list';
  return expected === 'nonoptional' ? 'expected it to be given' : `expected ${expected}`;
}

/** The message of such an issue is the list of the keys that there are: fields/strict-map.ts. */
function unknownKeys(issue: z.core.$ZodIssueUnrecognizedKeys, path: Path): readonly FaultAt[] {
  const keys = issue.message.split(', ');
  return issue.keys.map((key) => {
    const didYouMean = nearest(key, keys);
    // a long list tells nothing to whoever is shown the right word
    const few = keys.length <= 12 || didYouMean === undefined;
    const expected = few ? `expected one of ${keys.join(', ')}` : 'expected a key that this map has';
    return { path: [...path, key], atKey: true, found: 'is no key here', expected, didYouMean };
  });
}
