import type { Mounting, Rotary } from '../catalog.ts';
import { COMMON_PRACTICE, GEOMETRY, known, type PlausibleRule, when } from './rule.ts';
import { isSlotWidth, SLOT_WIDTH } from './slot-width.ts';

/** The extent of the base across slots that run along X, in which its bolts stand. */
const acrossSlots = ({ base }: Rotary, mounting: string): number =>
  known(mounting.endsWith('-x') ? base.across : base.along);

const holdsOf = ({ hold }: Rotary) =>
  hold === 'unknown'
    ? []
    : Object.entries(hold).map(([mounting, each]) => ({ mounting: mounting as Mounting, ...each }));

/** How a rotary is held, and what goes with it. */
export const ROTARY_HOLDING_RULES: readonly PlausibleRule<Rotary>[] = [
  {
    id: 'key-of-a-slot',
    reason: SLOT_WIDTH.reason,
    source: SLOT_WIDTH.source,
    doubts: (row, { say }) =>
      holdsOf(row).flatMap(({ mounting, keyWidth }) =>
        when(keyWidth !== 'unknown' && !isSlotWidth(keyWidth), () => ({
          path: ['hold', mounting, 'keyWidth'],
          found: `is ${say(known(keyWidth), 'mm')}, which is no width of a T-slot`,
          expected: SLOT_WIDTH.expected,
        })),
      ),
  },
  {
    id: 'bolts-on-base',
    reason: 'a lug outside of the base holds nothing',
    source: GEOMETRY,
    doubts: (row, { say }) =>
      holdsOf(row).flatMap(({ mounting, pitches }) =>
        (pitches === 'unknown' ? [] : pitches).flatMap((pitch, at) =>
          when(pitch > acrossSlots(row, mounting), () => ({
            path: ['hold', mounting, 'pitches', at],
            found: `is ${say(pitch, 'mm')}, and the base is ${say(acrossSlots(row, mounting), 'mm')} there`,
            expected: 'bolts that stand on the base',
          })),
        ),
      ),
  },
  {
    id: 'tailstock-price',
    reason: 'a tailstock has no drive',
    source: COMMON_PRACTICE,
    doubts: ({ tailstock, price }, { say }) =>
      when(known(tailstock?.price) > known(price), () => ({
        path: ['tailstock', 'price'],
        found: `is ${say(known(tailstock?.price), 'money')}, and the rotary costs ${say(known(price), 'money')}`,
        expected: 'less than the price of the rotary',
      })),
  },
];
