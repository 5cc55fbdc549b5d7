import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { standingOf } from '../../src/rules/standing.ts';
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

/** What the benches of the market look at. The reference judges every arrangement, so its market is a small one. */
export const DECIDING: Deciding = {
  name: 'each arrangement judged',
  decide: standingOf,
  size: { machines: 24, rotaries: 16, families: 8 },
  growsFrom: { machines: 12, rotaries: 8, families: 4 },
};
