import type { MoneyFormulas } from '../decision-money.ts';

const COMMON = 'common practice, no source';
const BOOK = 'L. Blank, A. Tarquin, Engineering Economy, 8th ed.';

/** How the amounts of an arrangement are reckoned, and where that stands. */
export const MONEY_FORMULAS: MoneyFormulas = {
  hours: {
    formula: '(lots × setups × setup minutes + quantity × (cycle + setups × handling)) / 60',
    source: 'batch time of courses in production planning, for each holding and lot',
  },
  setups: {
    formula:
      'tilting: 1 for top and sides, 1 more for the bottom where it is cut; single axis: 1 for the sides, 1 more for each end that is cut; never more than now',
    source: COMMON,
  },
  gain: {
    formula: 'hours saved × shop rate − swap hours × shop rate − yearly costs',
    source: COMMON,
  },
  payback: { formula: 'C / A', source: `${BOOK}, payback without interest` },
  netPresentValue: {
    formula: '−C + A × (1 − (1 + i)^−n) / i + R × (1 + i)^−n',
    source: `${BOOK}, present worth`,
  },
  breakEven: {
    formula: '(C − R × (1 + i)^−n) × i / (1 − (1 + i)^−n), and yearly costs on top of it',
    source: `${BOOK}, present worth set to 0 and solved for the gain`,
  },
};
