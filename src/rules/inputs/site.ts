import type { SiteCase } from '../judging/site-case.ts';
import type { Input } from '../judging/term.ts';
import type { Value } from '../judging/value.ts';

const input = (
  name: string,
  unit: string,
  domain: readonly [low: number, high: number],
  read: (site: SiteCase) => Value,
): Input => ({ name, unit, domain, read: (of) => read(of.shop.site) });

/** The numbers of the building. */
export const site = {
  bayOne: input('bay, one way', 'mm', [1000, 20000], (of) => of.bay[0]),
  bayOther: input('bay, the other way', 'mm', [1000, 20000], (of) => of.bay[1]),
  ceiling: input('ceiling', 'mm', [2000, 12000], (of) => of.ceiling),
  doorWidth: input('width of the doorway', 'mm', [700, 6000], (of) => of.doorWidth),
  doorHeight: input('height of the doorway', 'mm', [1800, 6000], (of) => of.doorHeight),
  doorSill: input('door sill of the machine', 'mm', [500, 1500], (of) => of.doorSill),
  floorRating: input('rating of the floor', 'kPa', [1, 60], (of) => of.floorRating),
  kVA: input('supply that is free', 'kVA', [2, 400], (of) => of.kVA),
  volts: input('voltage of the supply', 'V', [100, 690], (of) => of.volts),
  phases: input('phases of the supply', '', [1, 3], (of) => of.phases),
  airFlow: input('air that the compressor gives', 'L/min', [0, 5000], (of) => of.airFlow),
  airBar: input('pressure of the compressor', 'bar', [0, 15], (of) => of.airBar),
} as const;
