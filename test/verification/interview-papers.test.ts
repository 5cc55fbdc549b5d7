import { expect, test } from 'vitest';
import { answeredWith, applies, everyQuestion } from '../../bench/interviews/asked.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { markdownReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { verify } from '../../src/verification/verify.ts';
import { DEMO_FOLDER, demoCatalog } from '../catalog-demo/demo.ts';

/** The answers of a demo shop as an interview gathers them, question by question. */
function gathered(file: string): Answers {
  const read = readAnswers(`${DEMO_FOLDER}${file}`);
  if (!read.ok) throw new Error('the demo cannot be read');
  const { answers: truth } = read.value;
  let answers: Answers = { ...blankAnswers('EUR'), parts: truth.parts.map(({ name }) => blankPart(name)) };
  for (const each of everyQuestion(truth.parts.length)) {
    if (applies(each, answers)) answers = answeredWith(each, answers, truth);
  }
  return answers;
}

test.each(['shop.answers.yaml', 'shop-hand-lifting.answers.yaml'])(
  'a paper on answers that an interview gathered comes out the same: %s',
  (file) => {
    // detailed cuts, a drill, hoist and hands: kept in the order in which they were asked
    const all = demoCatalog();
    const catalog = { ...all, machines: all.machines.filter(({ id }) => ['alder', 'medlar'].includes(id)) };
    const rotaries = catalog.rotaries.filter(({ id }) => ['lapwing', 'whinchat'].includes(id));
    const paper = markdownReport(
      decide(gathered(file), { ...catalog, rotaries }, { flips: [], ranges: true }),
    );
    const found = verify(paper, 'paper.md');
    expect(found.ok ? found.value.differences : found.problems).toEqual([]);
  },
);
