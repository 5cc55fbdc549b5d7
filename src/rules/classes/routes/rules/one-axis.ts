import { assumed, exactly, nearlyAllOfThem } from '../../capacity.ts';
import { around, mustTilt, SIDES_SOURCE } from '../../rules/sides.ts';
import type { RouteRule } from '../index.ts';

const AROUND = { approaches: ['around'] } as const;
const FIVE_SIDES = { approaches: ['top', 'sides'] } as const;
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const mixed = (share: number) => [
  { name: 'Spindle', ...AROUND, ...hours(100 - share) },
  { name: 'Hinge', ...FIVE_SIDES, ...hours(share) },
];
const rotaries = [{ class: 'single-axis' }] as const;

/** Whether a single-axis rotary is enough. */
export const oneAxis: readonly RouteRule[] = [
  {
    id: 'one-axis-not-enough',
    about: ['single-axis'],
    side: 'rules out',
    unit: 'share',
    number: around('not so'),
    limit: assumed('leastCoverage'),
    when: 'below',
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'six tenths of the hours need a tilt',
        of: 'single-axis',
        given: { parts: mixed(60), rotaries },
        speaks: 'yes',
        number: 0.4,
        limit: 0.5,
      },
      { what: 'half of them do', of: 'single-axis', given: { parts: mixed(50), rotaries }, speaks: 'no' },
    ],
  },
  {
    id: 'one-axis-must-tilt',
    about: ['single-axis'],
    side: 'rules out',
    unit: '',
    number: mustTilt,
    limit: exactly(1, 'one part'),
    when: 'at least',
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'a must-have part needs a tilt',
        of: 'single-axis',
        given: { parts: [{ ...FIVE_SIDES, must: true }], rotaries },
        speaks: 'yes',
        number: 1,
        limit: 1,
      },
      {
        what: 'a must-have part that does not',
        of: 'single-axis',
        given: { parts: [{ ...AROUND, must: true }], rotaries },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'one-axis-nearly',
    about: ['single-axis'],
    side: 'against',
    weighty: true,
    unit: 'share',
    number: around('not so'),
    limit: nearlyAllOfThem,
    when: 'below',
    unless: ['one-axis-not-enough'],
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'a tenth of the hours needs a tilt',
        of: 'single-axis',
        given: { parts: mixed(10), rotaries },
        speaks: 'yes',
        number: 0.9,
        limit: 0.95,
      },
      { what: 'three hundredths do', of: 'single-axis', given: { parts: mixed(3), rotaries }, speaks: 'no' },
    ],
  },
  {
    id: 'one-axis-enough',
    about: ['single-axis'],
    side: 'for',
    unit: 'share',
    number: around('so'),
    limit: nearlyAllOfThem,
    when: 'at least',
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'three hundredths of the hours need a tilt',
        of: 'single-axis',
        given: { parts: mixed(3), rotaries },
        speaks: 'yes',
        number: 0.97,
        limit: 0.95,
      },
      { what: 'a tenth does', of: 'single-axis', given: { parts: mixed(10), rotaries }, speaks: 'no' },
    ],
  },
];
