import type { Catalog } from '../../catalog/catalog.ts';

/** With more pairs of machine and rotary than these, judging every one of them takes longer than anybody waits. */
const MOST_PAIRS = 10_000;

/** Is a catalog too large to judge all of it one by one? */
export const isMarket = ({ machines, rotaries }: Pick<Catalog, 'machines' | 'rotaries'>): boolean =>
  machines.length * rotaries.length > MOST_PAIRS;
