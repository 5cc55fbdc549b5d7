import type { Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import { missingValues } from '../../src/catalog/missing.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { type Chance, chanceOf } from '../interviews/chance.ts';
import { simulatedShop } from '../interviews/shops.ts';
import { withAnswerGaps } from './answers-gaps.ts';
import { withCatalogGaps } from './catalog-gaps.ts';
import { partsFor } from './parts.ts';
import { roomyShop } from './roomy-shop.ts';
import { scatterOf } from './scatter.ts';
import { scatteredMachine } from './scattered-machine.ts';
import { scatteredRotary } from './scattered-rotary.ts';

/** How large a made-up market is, and what is not known in it. */
export interface MarketSize {
  readonly machines: number;
  readonly rotaries: number;
  readonly families: number;
  readonly seed?: number;
  /** share of the values of the catalog that are left out, 0 to 1; usually none */
  readonly catalogGaps?: number;
  /** share of the answers that are not known or ranges, 0 to 1; usually none */
  readonly answerGaps?: number;
  /** a building, a supply and a budget that seldom stop anything; usually so */
  readonly roomy?: boolean;
  /** digits that are kept of each number; with few of them need and have meet exactly now and then */
  readonly digits?: number;
}

export interface Market {
  readonly answers: Answers;
  readonly catalog: Catalog;
}

/** Rows are this much smaller or larger than what they are made after, at most. */
const SPREAD = 1.5;

/**
 * A market by chance, the same for the same seed, and a shop before it. Its rows are made after those of a catalog (rows
 * with gaps are left out), so that all classes and kinds are in it; every id and name is its own. A smaller market of the
 * same seed is the beginning of a larger one, in machines, rotaries and families alike.
 */
export function marketOf(after: Catalog, size: MarketSize): Market {
  const { machines, rotaries, families, seed = 1, digits = 3, catalogGaps = 0, answerGaps = 0 } = size;
  const shop = size.roomy === false ? simulatedShop(seed) : roomyShop(seed);
  const gaps = new Set(missingValues(after).map(({ row }) => row));
  const whole = <Row extends { readonly id: string }>(list: string, rows: readonly Row[]): readonly Row[] =>
    rows.filter(({ id }) => !gaps.has(`${list}[${id}]`));
  const rows = {
    rotaries: many(whole('rotaries', after.rotaries), rotaries, chanceOf(seed * 4), (row, chance, at) =>
      scatteredRotary(row, scatterOf(chance, SPREAD, digits), `${row.id}-${at}`, `${row.name} ${at}`),
    ),
    machines: many(whole('machines', after.machines), machines, chanceOf(seed * 4 + 1), (row, chance, at) =>
      scatteredMachine(row, scatterOf(chance, SPREAD, digits), `${row.id}-${at}`, `${row.name} ${at}`),
    ),
  };
  const catalog: Catalog = { ...after, ...rows, machines: withIncluded(rows.machines, rows.rotaries) };
  const answers: Answers = { ...shop, parts: partsFor(chanceOf(seed * 4 + 2), families) };
  const chance = chanceOf(seed * 4 + 3);
  return {
    catalog: withCatalogGaps(catalog, catalogGaps, chance),
    answers: withAnswerGaps(answers, answerGaps, chance),
  };
}

/** Each row is made after in turn, in another order each time: any beginning of the list has every kind in its share. */
function many<Row>(
  after: readonly Row[],
  count: number,
  chance: Chance,
  make: (row: Row, chance: Chance, at: number) => Row,
): readonly Row[] {
  if (after.length === 0) throw new Error('there is no row to make others after');
  let deck: readonly Row[] = [];
  return Array.from({ length: count }, (_, at) => {
    if (deck.length === 0) deck = shuffled(after, chance);
    const [row, ...others] = deck as readonly [Row, ...Row[]];
    deck = others;
    return make(row, chance, at);
  });
}

const shuffled = <Row>(rows: readonly Row[], { next }: Chance): readonly Row[] =>
  rows
    .map((row) => ({ row, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ row }) => row);

/** What comes with a machine has to be there: one of the first rotaries that tilt, else it comes without. */
function withIncluded(machines: readonly Machine[], rotaries: readonly Rotary[]): readonly Machine[] {
  const tilting = rotaries.filter(({ tilt }) => tilt !== null).slice(0, 4);
  return machines.map((row, at) =>
    row.rotaryIncluded === null ? row : { ...row, rotaryIncluded: tilting[at % tilting.length]?.id ?? null },
  );
}
