import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { decide } from '../../src/rules/decide.ts';
import { stabilityOf } from '../../src/rules/stability/stability-of.ts';
import { runningOf, standingOf } from '../../src/rules/standing.ts';
import type { Bench, Figure } from '../figure.ts';
import { inMs, quantile } from '../interleaved.ts';
import { DEMO, DEMO_ANSWERS } from '../terminal/kept-interview.ts';

/** What takes seconds is measured so often at most. */
const MOST_LONG_ROUNDS = 3;

/**
 * What the engine takes at the size of the demo catalog, in one process that has decided before, as an interview has: a
 * changed answer, the next question, the ranges. Each change is another one, so that nothing is found worked out already.
 */
export const decisions: Bench = {
  name: 'decisions',
  run: ({ rounds }) => {
    const { answers, catalog } = demo();
    const [part, ...parts] = answers.parts;
    if (part === undefined) throw new Error('the demo shop has no parts');
    const deeper = (by: number): Answers => ({
      ...answers,
      parts: [{ ...part, depthSide: Number(part.depthSide) + by }, ...parts],
    });
    const cheaper = (by: number): Answers => ({
      ...answers,
      money: { ...answers.money, budget: Number(answers.money.budget) - by },
    });
    // what was open at the start of an interview that knows its parts and its tools
    const early = (by: number): Answers => ({
      ...deeper(by),
      shop: { ...answers.shop, ceiling: 'unknown', doorSill: 'unknown', floorRating: 'unknown' },
      money: { ...answers.money, budget: 'unknown', years: 'unknown' },
    });
    runningOf(answers, catalog);
    const changedPart = median(rounds, (round) => runningOf(deeper(round * 0.1), catalog));
    const changedBudget = median(rounds, (round) => runningOf(cheaper(round * 10), catalog));
    const nextQuestion = median(rounds, (round) => askingOf(early(round * 0.1), catalog));
    const long = Math.min(rounds, MOST_LONG_ROUNDS);
    const ranges = median(long, (round) => {
      const changed = deeper(round * 0.1);
      stabilityOf(standingOf(changed, catalog), { answers: changed, catalog });
    });
    const whole = median(long, (round) => decide(deeper(round * 0.1), catalog));
    return Promise.resolve([
      figure('an answer of a part changed, decided', changedPart, 5, 'of the demo shop, full set of checks'),
      figure('the budget changed, decided', changedBudget, 5, ''),
      figure('which question next', nextQuestion, 80, 'five answers about building and money open'),
      figure('all ranges', ranges, 150, `of every answer; ${long} rounds`),
      figure('the whole decision, every check traced', whole, null, `${long} rounds`),
    ]);
  },
};

function demo(): { readonly answers: Answers; readonly catalog: Catalog } {
  const catalog = readCatalog([DEMO]);
  if (!catalog.ok) throw new Error('the demo catalog cannot be read');
  const answers = readAnswers(DEMO_ANSWERS);
  if (!answers.ok) throw new Error('the demo shop cannot be read');
  return { answers: answers.value.answers, catalog: catalog.value };
}

/** Milliseconds; the first round does not count. */
function median(rounds: number, run: (round: number) => void): number {
  const times = Array.from({ length: rounds + 1 }, (_, round) => {
    const start = performance.now();
    run(round);
    return performance.now() - start;
  });
  return quantile(times.slice(1), 0.5);
}

const figure = (what: string, value: number, atMost: number | null, beside: string): Figure => ({
  requirement: null,
  what,
  value,
  unit: 'ms',
  atMost,
  beside: beside === '' ? inMs(value) : beside,
});
