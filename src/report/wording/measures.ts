import type { Measure } from '../../questions/answers.ts';

/** What arrangements are compared on, in words. */
export interface MeasureWords {
  readonly title: string;
  /** what it counts */
  readonly means: string;
  readonly unit: 'share' | '' | 'years' | 'money' | 'm²' | 'h';
  readonly better: 'more' | 'less';
  /** said where there is no number; default: not worked out */
  readonly ifNull?: string;
}

export const MEASURE_WORDS: Readonly<Record<Measure, MeasureWords>> = {
  coverage: {
    title: 'Coverage',
    means: 'share of the yearly five-axis hours whose families it holds',
    unit: 'share',
    better: 'more',
  },
  viseStations: {
    title: 'Vise stations',
    means: 'vises that still find room beside the rotary',
    unit: '',
    better: 'more',
  },
  payback: {
    title: 'Payback',
    means: 'time until it has paid for itself, without interest',
    unit: 'years',
    better: 'less',
    ifNull: 'never',
  },
  price: {
    title: 'Price',
    means: 'machine, rotary and all that has to be added',
    unit: 'money',
    better: 'less',
  },
  floorArea: {
    title: 'Floor area',
    means: 'floor that the machine itself takes, without the room to work around it',
    unit: 'm²',
    better: 'less',
  },
  swapHours: {
    title: 'Swap hours',
    means: 'hours a year for lifting the rotary on and off',
    unit: 'h',
    better: 'less',
  },
  margin: {
    title: 'Margin',
    means: 'the tightest of its checks, as a share of what is needed',
    unit: 'share',
    better: 'more',
  },
};
