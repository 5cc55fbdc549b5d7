import { BASE_UNITS, type LengthUnits, type QuantityKind } from './kinds.ts';

/** A unit that people may write: `1 symbol = factor base units`. */
export interface Unit {
  readonly symbol: string;
  readonly factor: number;
  /** other ways to write it, as `unitKey` leaves them */
  readonly spellings: readonly string[];
}

const unit = (symbol: string, factor: number, ...spellings: string[]): Unit => ({
  symbol,
  factor,
  spellings: [unitKey(symbol), ...spellings],
});

// Exact by definition: the international inch and pound (1959), standard gravity (1901).
const INCH = 25.4;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const FOOT_M = FOOT / 1000;
const INCH_M = INCH / 1000;
const CUBIC_FOOT_L = FOOT_M ** 3 * 1000;
const HORSEPOWER_KW = (550 * FOOT_M * POUND_FORCE) / 1000;

const PER_MINUTE = ['/min', 'r/min', 'min1', 'rev/min', 'revs/min', 'rpm'];

/** Every unit that is understood, kind by kind; the base unit first. All factors are exact. */
export const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [
    unit('mm', 1),
    unit('cm', 10),
    unit('m', 1000),
    unit('µm', 0.001, 'micron', 'microns'),
    unit('in', INCH, '"', 'inch', 'inches'),
    unit('ft', FOOT, "'", 'foot', 'feet'),
    unit('thou', INCH / 1000),
  ],
  mass: [
    unit('kg', 1),
    unit('g', 0.001),
    unit('t', 1000, 'tonne', 'tonnes'),
    unit('lb', POUND, 'lbs', 'lbm'),
  ],
  torque: [
    unit('N·m', 1),
    unit('kN·m', 1000),
    unit('lbf·ft', POUND_FORCE * FOOT_M, 'lbft', 'ftlb', 'ftlbf', 'lbsft', 'ftlbs'),
    unit('lbf·in', POUND_FORCE * INCH_M, 'lbin', 'inlb', 'inlbf', 'lbsin', 'inlbs'),
    unit('kgf·m', GRAVITY, 'kgm', 'kpm'),
  ],
  angle: [unit('°', 1, 'deg', 'degree', 'degrees'), unit('rad', 180 / Math.PI)],
  accuracy: [
    unit('arcsec', 1, '"', 'sec', 'arcs', 'arcsecond', 'arcseconds'),
    unit('arcmin', 60, "'", 'arcminute', 'arcminutes'),
    unit('°', 3600, 'deg', 'degree', 'degrees'),
  ],
  rotation: [unit('rev/min', 1, ...PER_MINUTE), unit('rev/s', 60, '/s', 'r/s'), unit('°/s', 1 / 6, 'deg/s')],
  power: [unit('kW', 1), unit('W', 0.001), unit('hp', HORSEPOWER_KW)],
  apparentPower: [unit('kVA', 1), unit('VA', 0.001)],
  voltage: [unit('V', 1, 'volt', 'volts', 'vac')],
  pressure: [
    unit('bar', 1),
    unit('kPa', 0.01),
    unit('MPa', 10),
    unit('psi', POUND_FORCE / INCH_M ** 2 / 1e5),
  ],
  airFlow: [
    unit('L/min', 1, 'lpm', 'nl/min'),
    unit('L/s', 60),
    unit('m³/min', 1000),
    unit('m³/h', 1000 / 60),
    unit('cfm', CUBIC_FOOT_L, 'scfm', 'ft3/min'),
  ],
  cuttingSpeed: [unit('m/min', 1), unit('m/s', 60), unit('ft/min', FOOT_M, 'sfm', 'sfpm', 'fpm')],
  feed: [unit('mm/min', 1), unit('m/min', 1000), unit('mm/s', 60), unit('in/min', INCH, 'ipm', 'inch/min')],
  feedPerTooth: [unit('mm/tooth', 1, 'mm', 'mm/z'), unit('in/tooth', INCH, 'in', '"', 'inch', 'ipt', 'in/z')],
  feedPerTurn: [unit('mm/rev', 1, 'mm', 'mm/r'), unit('in/rev', INCH, 'in', '"', 'inch', 'ipr', 'in/r')],
  acceleration: [
    unit('m/s²', 1),
    unit('mm/s²', 0.001),
    unit('g', GRAVITY),
    unit('in/s²', INCH_M),
    unit('ft/s²', FOOT_M),
  ],
  minutes: [
    unit('min', 1, 'mins', 'minute', 'minutes'),
    unit('h', 60, 'hr', 'hrs', 'hour', 'hours'),
    unit('s', 1 / 60, 'sec', 'second', 'seconds'),
  ],
  years: [unit('years', 1, 'year', 'yr', 'yrs', 'a'), unit('months', 1 / 12, 'month')],
  share: [unit('share', 1), unit('%', 0.01, 'percent')],
  floorLoad: [
    unit('kPa', 1, 'kn/m2'),
    unit('Pa', 0.001, 'n/m2'),
    unit('kg/m²', GRAVITY / 1000),
    unit('t/m²', GRAVITY),
    unit('psf', POUND_FORCE / FOOT_M ** 2 / 1000, 'lb/ft2', 'lbf/ft2'),
  ],
  inertia: [
    unit('kg·m²', 1),
    unit('kg·cm²', 1e-4),
    unit('lb·ft²', POUND * FOOT_M ** 2),
    unit('lb·in²', POUND * INCH_M ** 2),
  ],
  money: [],
  count: [],
};

/**
 * A unit as it is looked up: marks for inch, foot and degree in one form, products and powers without signs.
 * Example: unitKey('N·m') → 'nm', unitKey('ft-lb') → 'ftlb', unitKey('m/s²') → 'm/s2'.
 */
export function unitKey(text: string): string {
  return text
    .trim()
    .replace(/[º˚]/g, '°')
    .replace(/″|“|”|''|′′/g, '"')
    .replace(/[′‘’]/g, "'")
    .normalize('NFKC')
    .replace(/µ|μ/g, 'u')
    .replace(/[·⋅•*×.^\s−-]/g, '')
    .toLowerCase();
}

/** The unit of this kind that the text names; undefined where it names none. Example: ('mass', 'LBS') → lb. */
export function unitNamed(kind: QuantityKind, text: string): Unit | undefined {
  const key = unitKey(text);
  return UNITS[kind].find((each) => each.spellings.includes(key));
}

/**
 * The unit that a bare number has: lengths, masses, feeds and cutting speeds follow the units of the file;
 * everything else is in its base unit. Example: ('mass', 'inch') → lb.
 */
export function bareUnit(kind: QuantityKind, units: LengthUnits): Unit {
  const symbol = units === 'inch' ? BARE_IN_INCH[kind] : undefined;
  const found = UNITS[kind].find((each) => each.symbol === symbol) ?? UNITS[kind][0];
  return found ?? { symbol: BASE_UNITS[kind], factor: 1, spellings: [] };
}

const BARE_IN_INCH: Partial<Record<QuantityKind, string>> = {
  length: 'in',
  mass: 'lb',
  feed: 'in/min',
  cuttingSpeed: 'ft/min',
  feedPerTooth: 'in/tooth',
  feedPerTurn: 'in/rev',
};
