import type { Measures } from '../rules/decision.ts';

/** The unit in which each measure of an arrangement is told. */
export const MEASURE_UNITS: Readonly<Record<keyof Measures, string>> = {
  coverage: 'share',
  viseStations: '',
  price: 'money',
  payback: 'years',
  netPresentValue: 'money',
  floorArea: 'm²',
  swapHours: 'h',
  margin: 'share',
};
