import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

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
    const { answers, shownIn } = demoAnswers(shop);
    return [shop, decide(answers, catalog, { shownIn, flips: [] })];
  });
}
