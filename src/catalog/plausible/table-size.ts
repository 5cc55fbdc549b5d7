import type { TableMechanics } from '../catalog.ts';
import { COMMON_PRACTICE, ends, GEOMETRY, known, type PlausibleRule, spanOf, when } from './rule.ts';

/** A free radius beyond so many times the swing is a diameter, or of another table. */
const MOST_CLEAR = 2;
/** Less than this is no tilt axis, in degrees; a range in radians ends below it. */
const LEAST_TILT_SPAN = 10;

/** What turns has to pass what stands: of rotaries and of built-in tables. */
export const TABLE_SIZE_RULES: readonly PlausibleRule<TableMechanics>[] = [
  {
    id: 'faceplate-in-swing',
    reason: 'the faceplate turns with the work',
    source: GEOMETRY,
    doubts: ({ faceplate, swing }, { say }) =>
      when(known(swing) < known(faceplate), () => ({
        path: ['swing'],
        found: `is ${say(known(swing), 'mm')}, and the faceplate is ${say(known(faceplate), 'mm')}`,
        expected: 'at least the faceplate',
      })),
  },
  {
    id: 'swing-tilts',
    reason:
      'the rim of the swing, at the height of the faceplate, goes around the tilt axis within the free radius',
    source: GEOMETRY,
    doubts: ({ swing, faceOffset, tilt, tiltClearRadius }, { say }) => {
      const rim = Math.hypot(known(swing) / 2, known(faceOffset));
      return when(tilt !== null && rim > known(tiltClearRadius), () => ({
        path: ['tiltClearRadius'],
        found: `is ${say(known(tiltClearRadius), 'mm')}, and the rim of the swing is ${say(rim, 'mm')} from the tilt axis`,
        expected: 'a larger radius, or a smaller swing',
      }));
    },
  },
  {
    id: 'clear-radius-near-swing',
    reason: 'room around the tilt axis is made for what the swing allows',
    source: COMMON_PRACTICE,
    doubts: ({ swing, tiltClearRadius }, { say }) =>
      when(known(tiltClearRadius) > MOST_CLEAR * known(swing), () => ({
        path: ['tiltClearRadius'],
        found: `is ${say(known(tiltClearRadius), 'mm')}, more than ${MOST_CLEAR} times the swing of ${say(known(swing), 'mm')}`,
        expected: 'a radius, not a diameter, about the tilt axis',
      })),
  },
  {
    id: 'tilt-through-level',
    reason: 'heights and offsets are stated for a level faceplate, at tilt 0',
    source: COMMON_PRACTICE,
    doubts: ({ tilt }, { say }) => {
      const [low, high] = ends(tilt);
      return when(low > 0 || high < 0, () => ({
        path: ['tilt'],
        found: `goes from ${say(low, '°')} to ${say(high, '°')}, and 0° is not in it`,
        expected: 'a range with the level faceplate, 0°, in it',
      }));
    },
  },
  {
    id: 'tilt-in-degrees',
    reason: 'a tilt axis is built to reach the sides of the work',
    source: COMMON_PRACTICE,
    doubts: ({ tilt }, { say }) => {
      const [low, high] = ends(tilt);
      return when(spanOf(tilt) < LEAST_TILT_SPAN, () => ({
        path: ['tilt'],
        found: `goes from ${say(low, '°')} to ${say(high, '°')}`,
        expected: `a range of at least ${LEAST_TILT_SPAN} degrees`,
        perhaps: `[${low} rad, ${high} rad]`,
      }));
    },
  },
];
