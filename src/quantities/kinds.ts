/**
 * What a number can be a number of. Each kind has one base unit, in which everything is computed, and a list
 * of units that people may write (units.ts). `money` and `count` have none to write.
 */
export const BASE_UNITS = {
  length: 'mm',
  mass: 'kg',
  torque: 'N·m',
  /** directions and tilts */
  angle: '°',
  /** how well a rotary axis finds its place */
  accuracy: 'arcsec',
  /** of a spindle or a rotary axis */
  rotation: 'rev/min',
  power: 'kW',
  apparentPower: 'kVA',
  voltage: 'V',
  pressure: 'bar',
  airFlow: 'L/min',
  cuttingSpeed: 'm/min',
  feed: 'mm/min',
  feedPerTooth: 'mm/tooth',
  feedPerTurn: 'mm/rev',
  acceleration: 'm/s²',
  minutes: 'min',
  years: 'years',
  /** 0 to 1; `40 %` is 0.4 */
  share: 'share',
  floorLoad: 'kPa',
  inertia: 'kg·m²',
  /** in the currency of the file */
  money: 'money',
  count: '',
} as const;

export type QuantityKind = keyof typeof BASE_UNITS;

/** Whose units a bare number is in, and which ones are shown. */
export type LengthUnits = 'mm' | 'inch';
