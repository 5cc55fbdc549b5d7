import { setting, shop } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { needsInput, theInput } from '../../sides/single.ts';

export const budget = defineCheck({
  id: 'budget',
  stage: 'shop',
  about: 'arrangement',
  unit: 'money',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'price of all of it',
      need: needsInput(['price'], setting.price),
      have: theInput([], shop.budget),
    },
  ],
  // a shop that names no budget is told the price; the price is not held against a number that is not there
  advisory: (of) => of.shop.budget.low === 0 && of.shop.budget.high === Number.POSITIVE_INFINITY,
  categorical: true,
  formula: 'machine + rotary + additions + plates + drives + required features + rigging + training ≤ budget',
  source: 'the catalog’s prices; rigging and training as the shop names them',
  remedies: ['more-budget'],
  examples: [
    {
      what: 'a price within the budget',
      given: { money: { budget: 1e6 } },
      verdict: 'holds',
    },
    {
      what: 'a price over the budget',
      given: { money: { budget: 100 } },
      verdict: 'fails',
    },
    {
      what: 'no budget is named',
      given: { money: { budget: 'unknown' } },
      verdict: 'open',
    },
  ],
});
