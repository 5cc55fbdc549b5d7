import type { Bounded } from './check-result.ts';
import type { PriceItem } from './decision.ts';

/** One family: hours a year now and then, and what the difference is worth. */
export interface FamilyMoney {
  readonly part: string;
  readonly setupsNow: Bounded;
  readonly setupsThen: Bounded;
  readonly hoursNow: Bounded;
  readonly hoursThen: Bounded;
  readonly hoursSaved: Bounded;
  readonly gain: Bounded;
}

export interface CapitalItem {
  /** still-open: what another place, other plates or additions may cost, while they are not settled */
  readonly item: PriceItem['item'] | 'still-open' | 'rigging' | 'training';
  /** which one, as in the prices */
  readonly which: string;
  readonly price: Bounded;
}

/** What it comes to with a rate or a quantity so many times as large. */
export interface SensitivityRow {
  readonly times: number;
  readonly gain: Bounded;
  /** null: never */
  readonly payback: Bounded;
  readonly netPresentValue: Bounded;
}

interface FormulaAndSource {
  readonly formula: string;
  readonly source: string;
}

/** C: capital, A: yearly gain, R: residual, i: interest, n: years. */
export type MoneyFormulas = Readonly<
  Record<'hours' | 'setups' | 'gain' | 'payback' | 'netPresentValue' | 'breakEven', FormulaAndSource>
>;

/** The money of an arrangement: every amount to the cent, and every total the sum of its items. */
export interface Money {
  readonly families: readonly FamilyMoney[];
  readonly hoursSaved: Bounded;
  /** hours saved at the shop's rate: the sum of the families' gains */
  readonly savings: Bounded;
  readonly swapHours: Bounded;
  readonly swapCost: Bounded;
  readonly running: {
    readonly items: readonly { readonly item: 'yearly-costs'; readonly price: Bounded }[];
    readonly total: Bounded;
  };
  /** savings less swaps less running */
  readonly gain: Bounded;
  readonly capital: {
    readonly items: readonly CapitalItem[];
    readonly total: Bounded;
    /** the CAM post with machine simulation: the contract has no price of its own for it */
    readonly camPost: 'owned' | 'in-training' | 'not-needed' | 'unknown';
  };
  /** years; null: never */
  readonly payback: Bounded;
  readonly netPresentValue: Bounded;
  /** as it was reckoned: never more than what is bought */
  readonly residual: Bounded;
  /** the shop's numbers as they were taken */
  readonly terms: {
    readonly shopRate: Bounded;
    readonly years: Bounded;
    readonly interest: Bounded;
    /** false: nobody named a rate, so that payback ranks nothing */
    readonly ranked: boolean;
  };
  readonly sensitivity: {
    readonly shopRate: readonly SensitivityRow[];
    readonly quantity: readonly SensitivityRow[];
  };
  /** where the present value is nothing; null: nowhere, for no hours are saved */
  readonly breakEven: {
    readonly shopRate: Bounded;
    /** hours that have to be saved a year, swaps included */
    readonly hours: Bounded;
  };
}
