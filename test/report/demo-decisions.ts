import { join } from 'node:path';
import { describeProblem, type Reading } from '../../src/documents/problem.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { DEMO_FOLDER, demoCatalog } from '../catalog-demo/demo.ts';

const SHOPS = [
  'shop',
  'shop-nothing-passes',
  'shop-own-mill',
  'shop-many-unknowns',
  'shop-school-workshop',
  'shop-hand-lifting',
];

/** The decisions of the demo shops, by the names of their files. */
export function demoDecisions(): readonly (readonly [what: string, decision: Decision])[] {
  const catalog = demoCatalog();
  return SHOPS.map((shop) => {
    const { answers, shownIn } = readingOf(readAnswers(join(DEMO_FOLDER, `${shop}.answers.yaml`)));
    return [shop, decide(answers, catalog, { shownIn, flips: [] })];
  });
}

function readingOf<Value>(reading: Reading<Value>): Value {
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
}
