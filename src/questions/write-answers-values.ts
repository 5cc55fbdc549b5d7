import type { LengthUnits } from '../quantities/kinds.ts';
import { roundSignificant } from '../quantities/round-significant.ts';
import type { Uncertain } from './answers.ts';

/** A map as it goes into a file. */
export type Plain = Readonly<Record<string, unknown>>;

type Written = number | string | readonly (number | string)[];

/** Writes values that follow the units of a file. What is not neat in inches is written out in metric units. */
export interface Writer {
  readonly length: (value: Uncertain) => Written;
  readonly mass: (value: Uncertain) => Written;
  readonly perTooth: (value: Uncertain) => Written;
  readonly perTurn: (value: Uncertain) => Written;
  readonly feed: (value: Uncertain) => Written;
  readonly cuttingSpeed: (value: Uncertain) => Written;
}

const INCH = 25.4;
const POUND = 0.45359237;
const FOOT_M = 0.3048;

/** Example: writerIn('inch').length(88.9) → 3.5; writerIn('inch').length(30) → '30 mm'. */
export function writerIn(units: LengthUnits): Writer {
  const by = (factor: number, unit: string) => (value: Uncertain) =>
    units === 'mm' ? asItIs(value) : each(value, (number) => neat(number, factor, unit));
  return {
    length: by(INCH, 'mm'),
    mass: by(POUND, 'kg'),
    perTooth: by(INCH, 'mm/tooth'),
    perTurn: by(INCH, 'mm/rev'),
    feed: by(INCH, 'mm/min'),
    cuttingSpeed: by(FOOT_M, 'm/min'),
  };
}

const asItIs = (value: Uncertain): Written => (typeof value === 'object' ? [...value] : value);

function each(value: Uncertain, write: (number: number) => number | string): Written {
  if (value === 'unknown') return value;
  return typeof value === 'number' ? write(value) : value.map(write);
}

/** In inches where that takes few digits and gives the same number back. */
function neat(value: number, factor: number, unit: string): number | string {
  const converted = Number((value / factor).toPrecision(6));
  return roundSignificant(converted * factor) === value ? converted : `${value} ${unit}`;
}
