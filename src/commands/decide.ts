import type { Catalog } from '../catalog/catalog.ts';
import { readCatalog } from '../catalog/read.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem, type Reading } from '../documents/problem.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { readAnswers } from '../questions/read-answers.ts';
import { answerReport, jsonReport, markdownReport, type TextLook, textReport } from '../report/index.ts';
import { decide } from '../rules/decide.ts';
import type { Decision } from '../rules/decision.ts';
import { demoCatalog } from './demo-catalog.ts';
import { type Format, formatOf } from './format-of.ts';
import { OUTCOME_CODES, UNUSABLE } from './outcome-codes.ts';
import { ownInput } from './own-input.ts';
import { writeReport } from './write-report.ts';

export interface DecideCommandOptions {
  /** folders; none: the demo catalog */
  readonly catalog?: readonly string[];
  /** default: as the name of the file asks for */
  readonly format?: Format;
  /** a file instead of standard output */
  readonly out?: string;
  /** list every arrangement */
  readonly all?: boolean;
  readonly ascii?: boolean;
  /** default: the units of the answers file */
  readonly units?: LengthUnits;
}

/** Where results and everything else go, so that tests can stand in for it. */
export interface Output {
  readonly result: (text: string) => void;
  readonly remark: (line: string) => void;
  /** columns of the terminal; undefined where there is none */
  readonly columns: number | undefined;
}

/** What reads and judges. */
export interface Deciding {
  readonly readAnswers: typeof readAnswers;
  readonly readCatalog: (folders: readonly string[]) => Reading<Catalog>;
  readonly decide: typeof decide;
}

const PROCESS: Output = {
  result: (text) => void process.stdout.write(text),
  remark: (line) => void process.stderr.write(`${line}\n`),
  columns: process.stdout.columns,
};

const REAL: Deciding = { readAnswers, readCatalog, decide };

/** Lines in a file, and where nobody says how wide the terminal is. */
const USUAL_WIDTH = 80;
const LEAST_WIDTH = 40;
const MOST_WIDTH = 120;

/**
 * `fivesides decide`: the decision on an answers file (`-`: standard input), printed or written. Gives the exit
 * code: 0 recommended, 3 none passes, 4 open, 2 input that cannot be used, with one line per problem.
 */
export async function decideCommand(
  file: string,
  options: DecideCommandOptions = {},
  output: Output = PROCESS,
  deciding: Deciding = REAL,
): Promise<number> {
  const given = options.catalog ?? [];
  const folders = given.length === 0 ? [demoCatalog()] : given;
  const { out } = options;
  const replaced = out === undefined ? null : ownInput(out, file, folders);
  if (replaced !== null) {
    const line = `fivesides: --out ${out} is the file ${replaced} that is read here, and would be replaced; name another file.`;
    return refuse(output, [line]);
  }
  const catalog = deciding.readCatalog(folders);
  const read = deciding.readAnswers(file, undefined, catalog.ok ? catalog.value : undefined);
  if (!read.ok || !catalog.ok) {
    return refuse(
      output,
      [read, catalog].flatMap((each) => (each.ok ? [] : each.problems)).map(describeProblem),
    );
  }
  const decision = deciding.decide(read.value.answers, catalog.value, {
    all: options.all === true,
    flips: [],
    ranges: true,
    shownIn: options.units ?? read.value.shownIn,
  });
  return deliver(decision, options, output);
}

/** Prints or writes the decision; where the answer is not on the screen then, it is said there in a sentence. */
function deliver(decision: Decision, options: DecideCommandOptions, output: Output): number {
  const { out, ascii = false } = options;
  const format = formatOf(options.format, out);
  const width = out === undefined ? clamped(output.columns ?? USUAL_WIDTH) : USUAL_WIDTH;
  const text = (): string => inFormat(decision, format, { width, ascii }, options.all === true);
  if (out === undefined) output.result(text());
  else {
    const { writing, figures } =
      format === 'markdown'
        ? writeReport(out, decision, markdownReport, true)
        : { writing: writeFileText(out, text(), { overwrite: true }), figures: null };
    if (!writing.ok) {
      return refuse(output, [`fivesides: ${out} was not written: ${notWritten(writing)}.`]);
    }
    const beside = figures === null ? '' : `, its figures to ${figures} beside it`;
    output.remark(printable(`fivesides: written to ${out}${beside}.`));
  }
  if (out !== undefined || format !== 'text') {
    const answer = answerReport(decision, { width: USUAL_WIDTH, ascii });
    for (const line of answer.trimEnd().split('\n')) output.remark(line);
  }
  return OUTCOME_CODES[decision.outcome];
}

function inFormat(decision: Decision, format: Format, look: TextLook, all: boolean): string {
  switch (format) {
    case 'json':
      return jsonReport(decision);
    case 'markdown':
      return markdownReport(decision);
    case 'text':
      return textReport(decision, look, { all });
  }
}

const clamped = (columns: number): number => Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, columns));

function refuse(output: Output, lines: readonly string[]): number {
  for (const line of lines) output.remark(printable(line));
  return UNUSABLE;
}
