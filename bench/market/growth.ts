import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import type { Bench, Figure } from '../figure.ts';
import { busyMs, inMs, interleaved } from '../interleaved.ts';
import { DEMO } from '../terminal/kept-interview.ts';
import { DECIDING } from './deciding.ts';
import { type Market, marketOf } from './market.ts';
import { slopeOf } from './slope.ts';

const DOUBLINGS = [1, 2, 4, 8] as const;
/** What takes seconds is measured so often at most. */
const MOST_ROUNDS = 5;
const MOST_EXPONENT = 1.05;

/** How the time on a core of a full decision grows with the market and with the shop: the exponent, over three doublings of each. */
export const growth: Bench = {
  name: 'growth',
  run: async ({ rounds }) => {
    const catalog = demoCatalog();
    const figures: Figure[] = [];
    for (const [what, key] of GROWING) {
      const markets = DOUBLINGS.map((times) => {
        const size = { ...DECIDING.growsFrom, [key]: DECIDING.growsFrom[key] * times };
        return {
          size: size[key],
          market: key === 'families' ? repeated(catalog, times) : marketOf(catalog, size),
        };
      });
      const times = await interleaved(
        Math.min(rounds, MOST_ROUNDS),
        Object.fromEntries(markets.map(({ size, market }) => [size, () => decided(market, busyMs)])),
      );
      const points = markets.map(({ size }) => ({ size, time: times[size] ?? Number.NaN }));
      figures.push({
        requirement: null,
        what: `full decision, growth with ${what}`,
        value: slopeOf(points),
        unit: 'exponent',
        atMost: MOST_EXPONENT,
        beside: `${points.map(({ size, time }) => `${size}: ${inMs(time)}`).join(', ')}; ${DECIDING.name}`,
      });
    }
    return figures;
  },
};

const GROWING = [
  ['machines', 'machines'],
  ['rotaries', 'rotaries'],
  ['families of parts', 'families'],
] as const;

/** The same families again and again, each a hair deeper, so that more of them are not others. */
function repeated(catalog: Catalog, times: number): Market {
  const market = marketOf(catalog, DECIDING.growsFrom);
  const parts = Array.from({ length: times }, (_, again) =>
    market.answers.parts.map((part) => ({
      ...part,
      name: again === 0 ? part.name : `${part.name} again ${again}`,
      must: part.must && again === 0,
      depthSide: Number(part.depthSide) + again / 100,
    })),
  ).flat();
  return { ...market, answers: { ...market.answers, parts } };
}

/** Milliseconds by this clock; a catalog of its own each time, so that nothing is found worked out already. */
export async function decided({ answers, catalog }: Market, clock: () => number): Promise<number> {
  const fresh = { ...catalog };
  const start = clock();
  DECIDING.decide(answers, fresh);
  return clock() - start;
}

export function demoCatalog(): Catalog {
  const reading = readCatalog([DEMO]);
  if (!reading.ok) throw new Error('the demo catalog cannot be read');
  return reading.value;
}
