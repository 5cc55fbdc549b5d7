import type { Stated } from '../catalog.ts';
import { COMMON_PRACTICE, known, type PlausibleRule, when } from './rule.ts';

const MOST_BAR = 16;
/** Less is none of a shop's compressed air; 0 says that none is needed. */
const LEAST_BAR = 2;
const BAR_PER_PSI = 0.0689475729;
const BAR_PER_MPA = 10;
/** How far the price of a kilogram may be from that of the other rows. */
const PRICE_FACTOR = 10;

interface Bought {
  readonly mass: Stated;
  readonly price: Stated;
  readonly air: { readonly bar: Stated };
}

/** What rotaries and machines state alike. */
export const BOUGHT_RULES: readonly PlausibleRule<Bought>[] = [
  {
    id: 'air-in-bar',
    reason: `compressed air of a shop is between ${LEAST_BAR} and ${MOST_BAR} bar`,
    source: COMMON_PRACTICE,
    doubts: ({ air }, { say }) => {
      const bar = known(air.bar);
      const high = bar > MOST_BAR;
      const meant = high ? bar * BAR_PER_PSI : bar * BAR_PER_MPA;
      const fits = meant >= LEAST_BAR && meant <= MOST_BAR;
      return when(high || (bar > 0 && bar < LEAST_BAR), () => ({
        path: ['air', 'bar'],
        found: `is ${say(bar, 'bar')}`,
        expected: `between ${LEAST_BAR} and ${MOST_BAR} bar`,
        perhaps: fits ? `${bar} ${high ? 'psi' : 'MPa'}` : undefined,
      }));
    },
  },
  {
    id: 'price-is-one',
    reason: 'what has no price is left out, and stays open',
    source: COMMON_PRACTICE,
    doubts: ({ price }) =>
      when(price === 0, () => ({
        path: ['price'],
        found: 'is 0, so it is taken as free',
        expected: 'a price, or unknown',
      })),
  },
  {
    id: 'price-for-mass',
    reason: 'rows of a kind cost about the same a kilogram',
    source: COMMON_PRACTICE,
    doubts: ({ price, mass }, { say, pricePerKilogram }) => {
      const own = known(price) / known(mass);
      const ratio = pricePerKilogram === null ? Number.NaN : own / pricePerKilogram;
      return when(price !== 0 && (ratio > PRICE_FACTOR || ratio < 1 / PRICE_FACTOR), () => ({
        path: ['price'],
        found: `is ${say(known(price), 'money')}, ${say(own, 'money')} a kilogram, and half of the others have less than ${say(pricePerKilogram ?? 0, 'money')}`,
        expected: 'a price that goes with the mass, in the currency of the file',
      }));
    },
  },
];
