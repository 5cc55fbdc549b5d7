import assert from 'node:assert/strict';
import { decodeText } from '../../../src/documents/decode-text.ts';
import type { Answers } from '../../../src/questions/answers.ts';
import { readAnswers } from '../../../src/questions/read-answers.ts';
import { answersToFile } from '../../../src/questions/write-answers.ts';
import { jsonReport, markdownReport, textReport } from '../../../src/report/index.ts';
import { decide } from '../../../src/rules/decide.ts';
import { heldLines, heldMarkdown, heldProblems, linesIn } from '../held.ts';
import { demoFilesEnding, FILE, FIXTURES, type FuzzedInput } from './input.ts';
import { SMALL_CATALOG } from './small-world.ts';

const namesIn = ({ parts }: Answers): readonly string[] => parts.map(({ name }) => name);

/** Deciding on each would take the time of a hundred others. */
const DECIDED = 0.02;

/** An answers file: refused in words, or decided on, and written as every paper. */
export const ANSWERS: FuzzedInput = {
  name: 'answers',
  share: 260,
  seeds: () => [...demoFilesEnding(/\.answers\.yaml$/), ...demoFilesEnding(/answers/, FIXTURES)],
  take: (bytes, chance) => {
    const text = decodeText(bytes, FILE);
    const read = text.ok ? readAnswers(FILE, text.value, SMALL_CATALOG) : text;
    if (!read.ok) return heldProblems(read.problems, linesIn(bytes.toString('utf8')));
    const { answers, shownIn } = read.value;
    const again = readAnswers(FILE, answersToFile(answers, { units: shownIn }).text, SMALL_CATALOG);
    assert.ok(again.ok, 'what is written cannot be read');
    assert.deepEqual(namesIn(again.value.answers), namesIn(answers));
    if (!chance.happens(DECIDED)) return 'taken';
    const decision = decide(answers, SMALL_CATALOG, { all: true, flips: [], ranges: false, shownIn });
    heldMarkdown(markdownReport(decision));
    heldLines(textReport(decision, { width: 80, ascii: false }, { all: true }));
    heldLines(jsonReport(decision));
    return 'taken';
  },
};
