import type { Interval } from '../../quantities/interval.ts';
import type { ShopCase } from '../judging/case.ts';
import type { Judged } from './judged.ts';
import type { Ranked } from './scores.ts';

/** Vises beyond those that the shop wants count for nothing: bigger is never better by itself. */
export const rankedOf = (
  { id, passes, measures, coverageAt, worth }: Judged,
  { visesWanted, money: { hasRate } }: ShopCase,
): Ranked => ({
  id,
  surely: passes === 'yes',
  measures: {
    ...measures,
    viseStations: atMostWanted(measures.viseStations, visesWanted),
    // without a rate that somebody named, payback is told and held against nothing
    payback: hasRate ? measures.payback : null,
  },
  atCorners: {
    ...(coverageAt === null ? {} : { coverage: coverageAt }),
    ...(hasRate && worth.paybackAt !== null ? { payback: worth.paybackAt } : {}),
  },
});

const atMostWanted = (stations: Interval | null, wanted: Interval): Interval | null =>
  stations === null
    ? null
    : { low: Math.min(stations.low, wanted.low), high: Math.min(stations.high, wanted.high) };
