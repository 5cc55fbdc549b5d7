import type { TextOf } from './plain-fields.ts';

/** How a currency is written, in answers and catalogs. */
export const CURRENCY: TextOf = {
  means: 'the currency of all amounts',
  fits: /^[A-Z]{3}$/,
  expected: 'three capital letters such as EUR',
  longest: 3,
};
