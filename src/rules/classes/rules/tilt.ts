import type { Family } from '../../arranging/family.ts';
import {
  acrossCases,
  askedAtLeast,
  askedByNearlyAll,
  assumed,
  type Capacity,
  mostOffered,
} from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { shareOf, type Whether } from '../hours-share.ts';
import { COMMON_PRACTICE, defineGroup, TWO_AXES, type Weighed } from '../rule.ts';
import { isAround } from './sides.ts';

const OPPOSITE: Readonly<Record<Whether, Whether>> = { yes: 'no', perhaps: 'perhaps', no: 'yes' };
const needsTilt = (family: Family): Whether => OPPOSITE[isAround(family)];

const tilting =
  (about: 'so' | 'not so') =>
  ({ families }: ClassGround): Weighed | null =>
    families.length === 0 ? null : shareOf(families, needsTilt, about);

const TILT: Capacity = {
  name: 'tilt',
  quantity: () => (family) => acrossCases(family, (of) => of.tilt, `parts[${family.name}].tilt`),
  offers: (table) => table.tiltGreatest,
};

const AROUND = { approaches: ['around'] } as const;
const UNDERCUT = { approaches: ['top', { undercut: 105 }] } as const;
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const TO_100 = [{ tilt: [-20, 100] }] as const;

const GEOMETRY = 'geometry: the greatest polar angle of the sides against the greatest tilt';

/** Whether a second axis has work, and tilts far enough. */
export const tilt = defineGroup([
  {
    id: 'tilt-used',
    about: TWO_AXES,
    side: 'for',
    unit: 'share',
    number: tilting('so'),
    limit: assumed('kneeShare'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'all of the work needs a tilt',
        of: 'single-support',
        given: {},
        speaks: 'yes',
        number: 1,
        limit: 0.05,
      },
      { what: 'none of it does', of: 'single-support', given: { parts: [AROUND] }, speaks: 'no' },
    ],
  },
  {
    id: 'tilt-idle',
    about: TWO_AXES,
    side: 'against',
    weighty: true,
    unit: 'share',
    number: tilting('so'),
    limit: assumed('kneeShare'),
    when: 'below',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'none of the work needs a tilt',
        of: 'single-support',
        given: { parts: [AROUND] },
        speaks: 'yes',
        number: 0,
        limit: 0.05,
      },
      { what: 'all of it does', of: 'single-support', given: {}, speaks: 'no' },
    ],
  },
  {
    id: 'tilt-beyond',
    about: TWO_AXES,
    side: 'rules out',
    unit: '°',
    number: askedAtLeast(TILT),
    limit: mostOffered(TILT),
    when: 'above',
    source: GEOMETRY,
    examples: [
      {
        what: 'an undercut of 105° where nothing tilts beyond 100°',
        of: 'single-support',
        given: { parts: [UNDERCUT], rotaries: TO_100 },
        speaks: 'yes',
        number: 105,
        limit: 100,
      },
      {
        what: 'five sides on the same',
        of: 'single-support',
        given: { rotaries: TO_100 },
        speaks: 'no',
      },
      {
        what: 'an undercut that is 95° or 110°',
        of: 'single-support',
        given: { parts: [{ approaches: ['top', { undercut: [95, 110] }] }], rotaries: TO_100 },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'tilt-short',
    about: TWO_AXES,
    side: 'against',
    weighty: true,
    unit: '°',
    number: askedByNearlyAll(TILT),
    limit: mostOffered(TILT),
    when: 'above',
    unless: ['tilt-beyond'],
    source: GEOMETRY,
    examples: [
      {
        what: 'a fifth of the hours needs 105°, nothing tilts beyond 100°',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...hours(80) },
            { name: 'Fairlead', ...UNDERCUT, ...hours(20) },
          ],
          rotaries: TO_100,
        },
        speaks: 'yes',
        number: 105,
        limit: 100,
      },
      {
        what: 'only three hundredths of them do',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...hours(97) },
            { name: 'Fairlead', ...UNDERCUT, ...hours(3) },
          ],
          rotaries: TO_100,
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'tilt-reaches',
    about: TWO_AXES,
    side: 'for',
    unit: '°',
    number: askedByNearlyAll(TILT),
    limit: mostOffered(TILT),
    when: 'at most',
    source: GEOMETRY,
    examples: [
      {
        what: 'five sides where something tilts to 100°',
        of: 'single-support',
        given: { rotaries: TO_100 },
        speaks: 'yes',
        number: 90,
        limit: 100,
      },
      {
        what: 'an undercut of 105°',
        of: 'single-support',
        given: { parts: [UNDERCUT], rotaries: TO_100 },
        speaks: 'no',
      },
    ],
  },
]);
