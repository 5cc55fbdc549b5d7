import { decide } from '../../../src/rules/decide.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { demoAnswers, demoCatalog } from '../../catalog-demo/demo.ts';

/** A demo shop that can only have the mills with a level spindle, all that there is listed. */
export function levelSpindle(shop: string): Decision {
  const catalog = demoCatalog();
  const machines = catalog.machines.filter(({ spindle }) => spindle === 'horizontal');
  return decide(demoAnswers(shop).answers, { ...catalog, machines }, { all: true, flips: [] });
}
