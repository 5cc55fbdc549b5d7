import { isMap } from '../documents/fields/strict-map.ts';
import { type Reading, wholeFile } from '../documents/problem.ts';
import { jsonReport, markdownReport } from '../report/index.ts';
import { decideAgain, readCarried } from './carried.ts';
import { countNumbers, type Difference, differences } from './json-differences.ts';
import { lineDifferences } from './line-differences.ts';
import { readAsWritten } from './numbers-as-written.ts';
import { paperFigures } from './paper-figures.ts';
import { paperInputs } from './paper-inputs.ts';
import { paperNodes } from './paper-nodes.ts';

/** What became of working out an export again. */
export interface Verification {
  readonly kind: 'decision' | 'paper';
  /** numbers that were held against each other */
  readonly numbers: number;
  /** arrangements that were judged again */
  readonly arrangements: number;
  readonly differences: readonly Difference[];
}

/**
 * Works out every number of an exported decision again, from the answers and the catalog that it carries: of JSON
 * value by value, of a paper in Markdown line by line. Never throws on a file that is none.
 */
export function verify(text: string, file: string): Reading<Verification> {
  return text.trimStart().startsWith('{') ? verifyDecision(text, file) : verifyPaper(text, file);
}

function verifyDecision(text: string, file: string): Reading<Verification> {
  const parsed = parsedJson(text, file, 1);
  if (!parsed.ok) return parsed;
  const raw = parsed.value;
  if (!isMap(raw) || raw.format !== 'fivesides-decision/1') {
    return wholeFile(file, 'this is no decision', 'expected a file with the format fivesides-decision/1');
  }
  const line = text.slice(0, Math.max(0, text.indexOf('"inputs"'))).split('\n').length;
  const carried = readCarried(raw.inputs, idsIn(raw.arrangements), { file, line });
  if (!carried.ok) return carried;
  const again = decideAgain(carried.value);
  const comesOut = readAsWritten(jsonReport(again));
  const says = readAsWritten(text);
  return {
    ok: true,
    value: {
      kind: 'decision',
      numbers: countNumbers(withoutInputs(comesOut)),
      arrangements: again.count,
      differences: differences(withoutInputs(says), withoutInputs(comesOut)),
    },
  };
}

function verifyPaper(text: string, file: string): Reading<Verification> {
  const paper = paperNodes(text);
  const inputs = paperInputs(paper);
  if (inputs === null) {
    const expected = 'expected a whole report in Markdown, or a decision file in JSON';
    return wholeFile(file, 'the file carries no inputs that it could be worked out from', expected);
  }
  const parsed = parsedJson(inputs.text, file, inputs.line);
  if (!parsed.ok) return parsed;
  const listed = isMap(parsed.value) && Array.isArray(parsed.value.listed) ? parsed.value.listed : [];
  const carried = readCarried(parsed.value, listed.map(String), { file, line: inputs.line });
  if (!carried.ok) return carried;
  const again = decideAgain(carried.value);
  const comesOut = markdownReport(again, paperFigures(paper));
  return {
    ok: true,
    value: {
      kind: 'paper',
      numbers: comesOut.slice(0, comesOut.indexOf(inputs.text)).match(/\d+(?:[.,  ]\d+)*/g)?.length ?? 0,
      arrangements: again.count,
      differences: lineDifferences(text, comesOut),
    },
  };
}

/** What is taken as given; all else that stands in the inputs was made by the program. */
function withoutInputs(decision: unknown): unknown {
  if (!isMap(decision) || !isMap(decision.inputs)) return decision;
  const { answers: _answers, catalog: _catalog, ...rest } = decision.inputs;
  return { ...decision, inputs: rest };
}

const idsIn = (arrangements: unknown): readonly string[] =>
  Array.isArray(arrangements)
    ? arrangements.flatMap((each) => (isMap(each) && typeof each.id === 'string' ? [each.id] : []))
    : [];

function parsedJson(text: string, file: string, line: number): Reading<unknown> {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return {
      ok: false,
      problems: [
        {
          file,
          line,
          column: 1,
          found: `this is no JSON (${why})`,
          expected: 'expected an export as it was written',
        },
      ],
    };
  }
}
