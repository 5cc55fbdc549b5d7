import type { Problem } from '../../documents/problem.ts';
import type { List, Stated } from '../catalog.ts';
import type { CatalogInFiles } from '../read.ts';
import { type RowPlace, rowPlaces } from '../row-places.ts';
import { MACHINE_RULES, ROTARY_RULES, TABLE_RULES } from './index.ts';
import { type Doubt, known, type PlausibleRule, type Surroundings } from './rule.ts';

/** So many rows have to state mass and price before the middle of them says anything. */
const ENOUGH_ROWS = 6;

/**
 * Values that are hard to believe, each with its place, what is expected and why. The catalog can be used as it is: these
 * are no problems.
 */
export function doubtsIn(read: CatalogInFiles): readonly Problem[] {
  const { rotaries, machines } = read.catalog;
  const placeOf = rowPlaces(read);
  const prices = { rotaries: middlePrice(rotaries), machines: middlePrice(machines) };
  const told = (list: List, id: string, of: (around: Surroundings) => readonly Doubt[]) => {
    const place = placeOf(list, id);
    return toldOnce(of({ say: place.say, pricePerKilogram: prices[list] })).map((doubt) =>
      problemOf(doubt, place),
    );
  };
  return [
    ...rotaries.flatMap((row) => told('rotaries', row.id, (around) => broken(ROTARY_RULES, row, around))),
    ...machines.flatMap((row) =>
      told('machines', row.id, (around) => [
        ...broken(MACHINE_RULES, row, around),
        ...(row.builtIn === null ? [] : broken(TABLE_RULES, row.builtIn, around).map(inBuiltIn)),
      ]),
    ),
  ];
}

const broken = <Row>(
  rules: readonly PlausibleRule<Row>[],
  row: Row,
  around: Surroundings,
): readonly Doubt[] =>
  rules.flatMap(({ doubts, reason, source }) =>
    doubts(row, around).map((doubt) => ({
      ...doubt,
      expected: `expected ${doubt.expected}: ${reason} (${source})`,
    })),
  );

const inBuiltIn = (doubt: Doubt): Doubt => ({ ...doubt, path: ['builtIn', ...doubt.path] });

/** A row that is in other units as a whole breaks many rules for one reason. */
function toldOnce(doubts: readonly Doubt[]): readonly Doubt[] {
  const whole = doubts.filter(({ path }) => path.length === 0);
  return whole.length > 0 ? whole : doubts;
}

const problemOf = ({ perhaps, ...fault }: Doubt, { problem }: RowPlace): Problem =>
  problem(perhaps === undefined ? fault : { ...fault, didYouMean: perhaps });

/** Half of the rows have a lower price of a kilogram; null where too few say. */
function middlePrice(rows: readonly { readonly mass: Stated; readonly price: Stated }[]): number | null {
  const each = rows
    .map(({ mass, price }) => known(price) / known(mass))
    .filter((price) => price > 0 && Number.isFinite(price))
    .toSorted((one, other) => one - other);
  return each.length < ENOUGH_ROWS ? null : (each[Math.floor(each.length / 2)] ?? null);
}
