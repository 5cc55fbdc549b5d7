import type { Family } from '../../arranging/family.ts';
import { corners } from '../../facts/corners.ts';
import { derived, type Value } from '../../judging/value.ts';
import { assumed } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { neededFor } from '../hours-share.ts';
import { COMMON_PRACTICE, defineGroup, type Weighed } from '../rule.ts';
import { swingOf } from './swing.ts';

const LARGE = 0.9;
const SMALL = 0.1;

const free = (family: Family): Family => ({ ...family, must: false });

/** Swing that nine tenths of the hours ask for ÷ swing that one tenth asks for. */
function spreadOf({ families }: ClassGround): Weighed | null {
  if (families.length < 2) return null;
  const all = families.map(free);
  const at = (share: number): Value => neededFor(all, swingOf, share);
  const [large, small] = [at(LARGE), at(SMALL)];
  if (small.low <= 0) return null;
  const ends = corners([large, small], ([p90 = 0, p10 = 1]) => Math.max(1, p90 / p10));
  return { value: derived(ends, 'spread of sizes', [large, small]), parts: [] };
}

const turning = (name: string, diameter: number) => ({
  name,
  size: [10, 10, 20] as const,
  holding: { diameter },
  yearly: { quantity: 50, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const WIDE = [turning('Small', 50), turning('Large', 150)];
const NARROW = [turning('Small', 60), turning('Large', 120)];

/** How far the sizes of the mix lie apart. */
export const spread = defineGroup([
  {
    id: 'spread-wide-open',
    about: ['single-support'],
    side: 'for',
    unit: '',
    number: spreadOf,
    limit: assumed('spreadWide'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'swings of 50 and 150 mm',
        of: 'single-support',
        given: { parts: WIDE },
        speaks: 'yes',
        number: 3,
        limit: 2.5,
      },
      { what: 'swings of 60 and 120 mm', of: 'single-support', given: { parts: NARROW }, speaks: 'no' },
    ],
  },
  {
    id: 'spread-wide-closed',
    about: ['collet-indexer', 'trunnion'],
    side: 'against',
    unit: '',
    number: spreadOf,
    limit: assumed('spreadWide'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'swings of 50 and 150 mm',
        of: 'trunnion',
        given: { parts: WIDE, rotaries: [{ class: 'trunnion' }] },
        speaks: 'yes',
        number: 3,
        limit: 2.5,
      },
      {
        what: 'swings of 60 and 120 mm',
        of: 'trunnion',
        given: { parts: NARROW, rotaries: [{ class: 'trunnion' }] },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'spread-narrow',
    about: ['collet-indexer', 'trunnion'],
    side: 'for',
    unit: '',
    number: spreadOf,
    limit: assumed('spreadWide'),
    when: 'below',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'swings of 60 and 120 mm',
        of: 'trunnion',
        given: { parts: NARROW, rotaries: [{ class: 'trunnion' }] },
        speaks: 'yes',
        number: 2,
        limit: 2.5,
      },
      {
        what: 'swings of 50 and 150 mm',
        of: 'trunnion',
        given: { parts: WIDE, rotaries: [{ class: 'trunnion' }] },
        speaks: 'no',
      },
    ],
  },
]);
