import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import type { MarketSize } from './market.ts';

/** What is measured on made-up markets, and at which sizes it can be. */
export interface Deciding {
  readonly name: string;
  readonly decide: (answers: Answers, catalog: Catalog) => unknown;
  /** of a full decision, a changed answer and memory */
  readonly size: Sizes;
  /** what grows starts here and is doubled, while the rest stays as it is */
  readonly growsFrom: Sizes;
}

type Sizes = Required<Pick<MarketSize, 'machines' | 'rotaries' | 'families'>>;

/** What the promises at market size are about. */
export const MARKET_SIZE: Sizes = { machines: 2000, rotaries: 500, families: 40 };

/** What the benches of the market look at: a whole decision, but for its reasons in words of numbers. */
export const DECIDING: Deciding = {
  name: 'tables, and the most hopeful judged',
  decide: (answers, catalog) => decide(answers, catalog, { traces: false }),
  size: MARKET_SIZE,
  // more pairs than that are judged one by one
  growsFrom: { machines: 250, rotaries: 60, families: 8 },
};
