import type { Family } from '../../arranging/family.ts';
import { assumed } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { shareOf, type Whether, whether } from '../hours-share.ts';
import { COMMON_PRACTICE, defineGroup, ONE_AXIS, type Weighed } from '../rule.ts';

const isMoving = (family: Family): Whether =>
  whether(family.cases.map(({ motion }) => motion === 'simultaneous'));

const moving =
  (about: 'so' | 'not so') =>
  ({ families }: ClassGround): Weighed | null =>
    families.length === 0 ? null : shareOf(families, isMoving, about);

const MOVING = { motion: 'simultaneous' } as const;
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const mixed = (share: number) => [
  { name: 'Hinge', ...hours(100 - share) },
  { name: 'Impeller', ...MOVING, ...hours(share) },
];

/** Axes that move in the cut, or that stand braked while it is made. */
export const moves = defineGroup([
  {
    id: 'moving-stiff',
    about: ['trunnion', 'built-in'],
    side: 'for',
    unit: 'share',
    number: moving('so'),
    limit: assumed('kneeShare'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'a tenth of the hours moves all axes at once',
        of: 'trunnion',
        given: { parts: mixed(10), rotaries: [{ class: 'trunnion' }] },
        speaks: 'yes',
        number: 0.1,
        limit: 0.05,
      },
      {
        what: 'three hundredths of them do',
        of: 'trunnion',
        given: { parts: mixed(3), rotaries: [{ class: 'trunnion' }] },
        speaks: 'no',
      },
      {
        what: 'nobody knows whether the axes move',
        of: 'trunnion',
        given: { parts: [{ motion: 'unknown' }], rotaries: [{ class: 'trunnion' }] },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'moving-one-support',
    about: ['single-support'],
    side: 'against',
    unit: 'share',
    number: moving('so'),
    limit: assumed('leastCoverage'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'most of the hours move all axes at once',
        of: 'single-support',
        given: { parts: mixed(60) },
        speaks: 'yes',
        number: 0.6,
        limit: 0.5,
      },
      { what: 'a tenth of them does', of: 'single-support', given: { parts: mixed(10) }, speaks: 'no' },
    ],
  },
  {
    id: 'moving-indexed',
    about: ONE_AXIS,
    side: 'against',
    unit: 'share',
    number: moving('so'),
    limit: assumed('kneeShare'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'a tenth of the hours moves all axes at once',
        of: 'single-axis',
        given: { parts: mixed(10), rotaries: [{ class: 'single-axis' }] },
        speaks: 'yes',
        number: 0.1,
        limit: 0.05,
      },
      {
        what: 'nothing does',
        of: 'single-axis',
        given: { rotaries: [{ class: 'single-axis' }] },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'positional',
    about: ['collet-indexer', 'single-axis', 'single-support'],
    side: 'for',
    unit: 'share',
    number: moving('not so'),
    limit: assumed('kneeShare'),
    when: 'below',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'every cut is made with the axes braked',
        of: 'single-support',
        given: {},
        speaks: 'yes',
        number: 0,
        limit: 0.05,
      },
      {
        what: 'a tenth of the hours moves all axes at once',
        of: 'single-support',
        given: { parts: mixed(10) },
        speaks: 'no',
      },
    ],
  },
]);
