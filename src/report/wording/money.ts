import type { Money, MoneyFormulas } from '../../rules/decision.ts';

/** A post with simulation has no price of its own: the question on training asks for both. */
export const CAM_POST_WORDS: Readonly<Record<Money['capital']['camPost'], string>> = {
  owned: 'A CAM post for five axes is there already; ask whether it covers this machine.',
  'in-training':
    'Training and CAM software has to cover a post-processor for this machine with a simulation of it: ask its seller.',
  'not-needed': 'A single axis asks for no new CAM software.',
  unknown:
    'What the CAM software of the shop can do is not known; training and CAM software has to cover a post-processor with simulation where there is none.',
};

export const FORMULA_WORDS: Readonly<Record<keyof MoneyFormulas, string>> = {
  hours: 'Hours a year',
  setups: 'Setups with the rotary',
  gain: 'Yearly gain',
  payback: 'Payback',
  netPresentValue: 'Net present value',
  breakEven: 'Gain that is just enough',
};
