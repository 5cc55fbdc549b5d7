import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { inlineText } from '../../src/report/blocks/inline-text.ts';
import { findAt, lookUp, placeText } from '../../src/report/blocks/path.ts';
import { jsonReport, markdownReport } from '../../src/report/index.ts';
import { wholeReport } from '../../src/report/whole-report.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { inlinesOf, numbersIn } from './account.ts';
import { DECISIONS } from './decisions.ts';
import { demoDecisions } from './demo-decisions.ts';
import { codeIn, readText } from './markdown-text.ts';
import { STEERS } from './steers.ts';

const SIGNS = { ascii: false };
const jsonOf = (decision: Decision): Decision => JSON.parse(jsonReport(decision));

describe.each([...DECISIONS, ...demoDecisions()])('The numbers in the Markdown of %s', (_what, decision) => {
  const json = jsonOf(decision);
  const pieces = inlinesOf(wholeReport(decision));

  it('are never part of fixed wording', () => {
    const worded = pieces.filter((piece) => piece.kind === 'words' && /\d/.test(piece.text));
    expect(worded).toEqual([]);
  });

  it('stand in the JSON at their paths', () => {
    for (const piece of pieces) {
      if (piece.kind !== 'number') continue;
      const value = lookUp(json, piece.path);
      const text = inlineText(piece, decision, SIGNS);
      const known = [value].flat().filter((end) => typeof end === 'number');
      if (known.length === 0) expect(text, placeText(piece.path)).toBe(piece.ifNull);
      const shown = numbersIn(text).map((each) => Number(each.replaceAll('\u202f', '')));
      for (const end of known.map((each) => Math.abs(piece.unit === 'share' ? each * 100 : each))) {
        // four significant digits, a tenth of a millimeter at least
        const slack = Math.max(0.0006 * end, 0.05 * Math.min(1, end));
        const near = shown.some((each) => Math.abs(each - end) <= slack);
        expect(near, `${placeText(piece.path)} is ${end}, printed as ${text}`).toBe(true);
      }
    }
  });

  it('are all accounted for, in order, by numbers of the decision and text that it holds', () => {
    const printed = numbersIn(readText(markdownReport(decision)));
    const accounted = pieces.flatMap((piece) => numbersIn(inlineText(piece, decision, SIGNS)));
    expect(printed).toEqual(accounted);
  });

  it('in text that came from outside stand in the JSON too', () => {
    for (const piece of pieces) {
      if (piece.kind === 'data' || piece.kind === 'name') {
        expect(findAt(json, piece.path), placeText(piece.path)).not.toBeUndefined();
      }
    }
  });

  it('of the answers file are the answers of the JSON', () => {
    const yaml = codeIn(markdownReport(decision), 'yaml') ?? '';
    const { parts } = json.inputs.answers;
    expect(parse(yaml).parts.map(({ name }: { name: string }) => name)).toEqual(
      parts.map(({ name }) => name),
    );
    // a reader refuses names that could steer a terminal
    if (parts.some(({ name }) => STEERS.test(name))) return;
    const read = readAnswers('report.yaml', yaml);
    expect(read.ok ? read.value.answers : read.problems).toEqual(json.inputs.answers);
  });
});
