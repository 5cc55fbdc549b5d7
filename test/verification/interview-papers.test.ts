import { expect, test } from 'vitest';
import { answeredWith, applies, everyQuestion } from '../../bench/interviews/asked.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { markdownReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { verify } from '../../src/verification/verify.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

/** The answers of a demo shop as an interview gathers them, question by question. */
function gathered(shop: string): Answers {
  const { answers: truth } = demoAnswers(shop);
  let answers: Answers = { ...blankAnswers('EUR'), parts: truth.parts.map(({ name }) => blankPart(name)) };
  for (const each of everyQuestion(truth.parts.length)) {
    if (applies(each, answers)) answers = answeredWith(each, answers, truth);
  }
  return answers;
}

test.each(['shop', 'shop-hand-lifting'])(
  'a paper on answers that an interview gathered comes out the same: %s',
  (shop) => {
    // detailed cuts, a drill, hoist and hands: kept in the order in which they were asked
    const all = demoCatalog();
    const catalog = { ...all, machines: all.machines.filter(({ id }) => ['alder', 'medlar'].includes(id)) };
    const rotaries = catalog.rotaries.filter(({ id }) => ['lapwing', 'whinchat'].includes(id));
    const paper = markdownReport(
      decide(gathered(shop), { ...catalog, rotaries }, { flips: [], ranges: true }),
    );
    const found = verify(paper, 'paper.md');
    expect(found.ok ? found.value.differences : found.problems).toEqual([]);
  },
);
