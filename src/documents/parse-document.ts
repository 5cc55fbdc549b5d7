import { Composer, type Document, isMap, isScalar, Lexer, LineCounter, type ParsedNode, Parser } from 'yaml';
import type { LengthUnits } from '../quantities/kinds.ts';
import { offsetOf } from './locate.ts';
import type { Path, Place } from './place.ts';
import { type NodeFault, plainData } from './plain-data.ts';
import { type Problem, type Reading, wholeFile } from './problem.ts';
import { syntaxFault } from './syntax-faults.ts';

/** A YAML or JSON text that was understood: its plain value, and where in the text everything stands. */
export interface ParsedDocument {
  readonly value: unknown;
  /** doubled keys, numbers that are none and the like, which leave the rest readable: whoever goes on adds them */
  readonly problems: readonly Problem[];
  /** which units the numbers are in, as far as the file says: both where it names both */
  readonly units: readonly LengthUnits[];
  /** where the value at a path stands, or the nearest thing around it that is there */
  readonly placeOf: (path: Path) => Place;
  /** where the key at the end of a path stands */
  readonly placeOfKey: (path: Path) => Place;
}

/** Deeper than any of our files, shallow enough for every program that walks them. */
const DEEPEST = 60;
const MOST_PROBLEMS = 100;
/** Words and signs in a file: a catalog of thousands of rows has fewer, and garbage of this size is still quick. */
const MOST_LEXEMES = 1_500_000;

/**
 * Parses one YAML or JSON document. Everything that is wrong with it is a problem with line and column: syntax,
 * doubled keys, `__proto__`, numbers that are none, aliases that unfold without end, nesting without end.
 * Never throws.
 */
export function parseDocument(text: string, file: string): Reading<ParsedDocument> {
  const lines = new LineCounter();
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const placed = (faults: readonly NodeFault[]): readonly Problem[] =>
    inOrderOfText(faults).map(({ offset, found, expected }) => ({ file, ...place(offset), found, expected }));
  const failed = (faults: readonly NodeFault[]): Reading<never> => ({ ok: false, problems: placed(faults) });
  try {
    const composed = compose(text.replace(/^\ufeff/, ''), lines);
    if (!composed.ok) return failed(composed.faults);
    const root = composed.document?.contents ?? null;
    if (root === null) return wholeFile(file, 'the file is empty', 'expected a document');
    const { value, faults } = plainData(root);
    if (faults.some(({ fatal }) => fatal === true)) return failed(faults);
    return {
      ok: true,
      value: {
        value,
        problems: placed(faults),
        units: unitsNamed(root),
        placeOf: (path) => place(offsetOf(root, path, 'value')),
        placeOfKey: (path) => place(offsetOf(root, path, 'key')),
      },
    };
  } catch (error) {
    // a fault of the parser; the file is what triggers it, so that is what we name
    const why = error instanceof Error ? error.message : String(error);
    return wholeFile(file, `the file cannot be parsed (${why})`, 'expected YAML or JSON');
  }
}

/** The units that the file names, millimeters where it names none. A key that stands twice may name both. */
function unitsNamed(root: ParsedNode): readonly LengthUnits[] {
  const named = (isMap(root) ? root.items : []).flatMap(({ key, value }): readonly LengthUnits[] => {
    if (!isScalar(key) || key.value !== 'units') return [];
    return [isScalar(value) && value.value === 'inch' ? 'inch' : 'mm'];
  });
  return named.length === 0 ? ['mm'] : [...new Set(named)];
}

const inOrderOfText = (faults: readonly NodeFault[]): readonly NodeFault[] =>
  faults.toSorted((one, other) => one.offset - other.offset).slice(0, MOST_PROBLEMS);

type Composed =
  | { readonly ok: true; readonly document: Document.Parsed | undefined }
  | { readonly ok: false; readonly faults: readonly NodeFault[] };

function compose(text: string, lines: LineCounter): Composed {
  // Errors are made by the million on garbage, and their stacks are what costs.
  const stackTraceLimit = Error.stackTraceLimit;
  Error.stackTraceLimit = 0;
  try {
    const tokens = tokensOf(text, lines);
    if (!Array.isArray(tokens)) return { ok: false, faults: [tokens] };
    const composer = new Composer({
      uniqueKeys: false,
      prettyErrors: false,
      lineCounter: lines,
    });
    const documents = [...composer.compose(tokens, true, text.length)];
    const [document, second] = documents;
    const faults = documents.slice(0, 1).flatMap(({ errors, warnings }) => {
      return [...errors, ...warnings].slice(0, MOST_PROBLEMS).map(syntaxFault);
    });
    if (second !== undefined && faults.length === 0) {
      const offset = second.range[0];
      faults.push({
        offset,
        found: 'a second document begins here',
        expected: 'expected one document in a file',
      });
    }
    if (faults.length > 0)
      return {
        ok: false,
        faults: faults.sort((one, other) => one.offset - other.offset),
      };
    return { ok: true, document };
  } finally {
    Error.stackTraceLimit = stackTraceLimit;
  }
}

type Token = Parameters<Composer['next']>[0];

/** The tokens of a text, or the place where it nests too deeply or goes on for too long. */
function tokensOf(text: string, lines: LineCounter): Token[] | NodeFault {
  const parser = new Parser(lines.addNewLine);
  const tokens: Token[] = [];
  let offset = 0;
  let count = 0;
  lines.addNewLine(0);
  for (const lexeme of new Lexer().lex(text)) {
    for (const token of parser.next(lexeme)) tokens.push(token);
    if (parser.stack.length > DEEPEST) {
      return {
        offset,
        found: `more than ${DEEPEST} levels stand inside each other here`,
        expected: 'expected fewer',
      };
    }
    offset = parser.offset;
    count += 1;
    if (count > MOST_LEXEMES) {
      return {
        offset,
        found: 'the file is too full to be read up to its end',
        expected: 'expected several files',
      };
    }
  }
  for (const token of parser.end()) tokens.push(token);
  return tokens;
}
