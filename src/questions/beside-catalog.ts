import { CURRENCY } from '../documents/fields/currency.ts';
import { isMap } from '../documents/fields/strict-map.ts';
import { nearest } from '../documents/nearest.ts';
import { quoted } from '../documents/printable.ts';
import type { FaultAt } from '../documents/problems-from-issues.ts';

/** The catalog that answers are read beside, as far as they have to agree with it. */
export interface BesideCatalog {
  readonly machines: readonly { readonly id: string }[];
  readonly currency: string | 'unknown';
}

/**
 * What is wrong with answers only beside a catalog: a mill that it does not list, money in another currency. Looks
 * at the file as it stands, so that it is found whatever else is wrong.
 */
export const faultsBeside = (raw: unknown, catalog: BesideCatalog): readonly FaultAt[] =>
  isMap(raw) ? [...strangeMachine(raw, catalog), ...otherCurrency(raw, catalog)] : [];

type RawMap = Readonly<Record<string, unknown>>;

function strangeMachine({ shop }: RawMap, { machines }: BesideCatalog): readonly FaultAt[] {
  const machine = isMap(shop) ? shop.machine : undefined;
  if (typeof machine !== 'string' || machine === 'none' || machine === 'unknown') return [];
  const ids = machines.map(({ id }) => id);
  if (ids.includes(machine)) return [];
  const expected = 'expected none, unknown or the id of a machine in the catalog';
  const found = `is ${quoted(machine)}`;
  return [{ path: ['shop', 'machine'], found, expected, didYouMean: nearest(machine, ids) }];
}

/** Prices in one currency held against a budget in another would be wrong without anybody seeing it. */
function otherCurrency({ currency: own }: RawMap, { currency }: BesideCatalog): readonly FaultAt[] {
  // what is no currency at all is a fault of its own
  if (
    typeof own !== 'string' ||
    CURRENCY.fits?.test(own) === false ||
    currency === 'unknown' ||
    own === currency
  )
    return [];
  const expected = `expected ${currency}, the currency of the catalog`;
  return [{ path: ['currency'], found: `is ${quoted(own)}`, expected }];
}
