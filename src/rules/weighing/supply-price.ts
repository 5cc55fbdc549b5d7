import type { PriceItem } from '../decision.ts';
import type { Outcome } from '../judging/outcome.ts';
import { derived, known, type Value } from '../judging/value.ts';

interface SupplyItem {
  readonly item: PriceItem['item'];
  readonly which: string;
  readonly price: Value;
}

const PRICE_NAMES = { transformer: 'transformerPrice', 'phase-converter': 'phaseConverterPrice' } as const;

/**
 * What has to be bought so that the supply suits the machine: as large as its connected load, at a price for each
 * kVA that is assumed. Where nobody says which phases and voltage there are, it may cost nothing.
 */
export function supplyItems(own: readonly Outcome[]): readonly SupplyItem[] {
  return own.flatMap(({ easing, mayHoldPlainly, hangsOn, of: { machine, shop } }) => {
    if (easing !== 'transformer' && easing !== 'phase-converter') return [];
    const name = PRICE_NAMES[easing];
    const each = known(shop.assume[name], `assume.${name}`);
    const ends = {
      low: mayHoldPlainly ? 0 : each.low * machine.kVA.low,
      high: each.high * machine.kVA.high,
    };
    const price = derived(ends, each.path, [machine.kVA, ...(mayHoldPlainly ? hangsOn : [])]);
    return [{ item: 'power' as const, which: easing, price }];
  });
}
