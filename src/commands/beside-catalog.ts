import type { Catalog } from '../catalog/catalog.ts';
import { nearest } from '../documents/nearest.ts';
import type { Path } from '../documents/place.ts';
import type { Problem } from '../documents/problem.ts';
import type { AnswersFile } from '../questions/read-answers.ts';

/** What is wrong with answers only beside this catalog: a mill that it does not list, money in another currency. */
export function problemsBesideCatalog(read: AnswersFile, catalog: Catalog): readonly Problem[] {
  return [...strangeMachine(read, catalog), ...otherCurrency(read, catalog)];
}

function strangeMachine(read: AnswersFile, { machines }: Catalog): readonly Problem[] {
  const { machine } = read.answers.shop;
  if (machine === 'none' || machine === 'unknown' || machines.some(({ id }) => id === machine)) return [];
  const didYouMean = nearest(
    machine,
    machines.map(({ id }) => id),
  );
  const problem = problemAt(
    read,
    ['shop', 'machine'],
    `shop.machine is "${machine}"`,
    'expected none, unknown or the id of a machine in the catalog',
  );
  return [didYouMean === undefined ? problem : { ...problem, didYouMean }];
}

/** Prices in one currency held against a budget in another would be wrong without anybody seeing it. */
function otherCurrency(read: AnswersFile, { currency }: Catalog): readonly Problem[] {
  const own = read.answers.currency;
  if (own === 'unknown' || currency === 'unknown' || own === currency) return [];
  return [
    problemAt(
      read,
      ['currency'],
      `currency is "${own}"`,
      `expected ${currency}, the currency of the catalog`,
    ),
  ];
}

function problemAt(read: AnswersFile, path: Path, found: string, expected: string): Problem {
  const { line, column } = read.placeOf(path);
  return { file: read.file, line, column, found, expected };
}
