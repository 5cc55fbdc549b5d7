import type { Rotary } from '../catalog.ts';
import { COMMON_PRACTICE, ends, GEOMETRY, known, type PlausibleRule, when } from './rule.ts';

/** Flange of a short-taper spindle nose, mm in diameter. */
const FLANGE: Readonly<Record<string, number>> = {
  'A2-4': 108,
  'A2-5': 133.4,
  'A2-6': 165.1,
  'A2-8': 209.5,
};
/** Mass over base × height, kg/m³: iron with a cavity; solid steel is 7850. */
const DENSITY = { least: 700, most: 6500 };
const POUND = 0.45359237;

const greatestTilt = ({ tilt }: Rotary): number => Math.max(...ends(tilt).map(Math.abs));

/** The body of a rotary: base, housing, heights, mass. */
export const ROTARY_BODY_RULES: readonly PlausibleRule<Rotary>[] = [
  {
    id: 'swing-above-table',
    reason: 'work on a level axis, or tilted to the side, must not meet the table',
    source: GEOMETRY,
    doubts: (row, { say }) => {
      const { swing, centerHeight, tilt } = row;
      const turnsOver = tilt === null || greatestTilt(row) >= 90;
      return when(turnsOver && known(swing) / 2 > known(centerHeight), () => ({
        path: ['swing'],
        found: `is ${say(known(swing), 'mm')}, and the axis is ${say(known(centerHeight), 'mm')} above the base`,
        expected: 'at most twice the center height',
      }));
    },
  },
  {
    id: 'faceplate-on-base',
    reason: 'bearings and drive stand around the faceplate',
    source: COMMON_PRACTICE,
    doubts: ({ faceplate, base }, { say }) =>
      when(known(faceplate) > Math.max(known(base.along), known(base.across)), () => ({
        path: ['faceplate'],
        found: `is ${say(known(faceplate), 'mm')}, and the base is ${say(known(base.along), 'mm')} × ${say(known(base.across), 'mm')}`,
        expected: 'a faceplate that is smaller than the base',
      })),
  },
  {
    id: 'trunnion-longer-than-swing',
    reason: 'both supports stand outside what turns',
    source: GEOMETRY,
    doubts: (row, { say }) =>
      when(row.class === 'trunnion' && known(row.base.along) < known(row.swing), () => ({
        path: ['base', 'along'],
        found: `is ${say(known(row.base.along), 'mm')}, and the swing is ${say(known(row.swing), 'mm')}`,
        expected: 'more than the swing',
      })),
  },
  {
    id: 'housing-below-height',
    reason: 'the overall height is that of the highest point',
    source: GEOMETRY,
    doubts: ({ housing, height }, { say }) =>
      (housing ?? []).flatMap(({ top }, at) =>
        when(top > known(height), () => ({
          path: ['housing', at, 'top'],
          found: `is ${say(top, 'mm')}, and the overall height is ${say(known(height), 'mm')}`,
          expected: 'at most the overall height',
        })),
      ),
  },
  {
    id: 'center-below-height',
    reason: 'the overall height is that of the highest point',
    source: GEOMETRY,
    doubts: ({ centerHeight, height }, { say }) =>
      when(known(height) < known(centerHeight), () => ({
        path: ['height'],
        found: `is ${say(known(height), 'mm')}, and the axis is ${say(known(centerHeight), 'mm')} above the base`,
        expected: 'more than the center height',
      })),
  },
  {
    id: 'nose-in-faceplate',
    reason: 'the flange of a spindle nose is turned into the faceplate',
    source: 'short-taper noses of ISO 702-1, flange diameters as printed in two workholding charts',
    doubts: ({ nose, faceplate }, { say }) =>
      when((FLANGE[nose] ?? 0) > known(faceplate), () => ({
        path: ['nose'],
        found: `is ${nose} with a flange of ${say(FLANGE[nose] ?? 0, 'mm')}, and the faceplate is ${say(known(faceplate), 'mm')}`,
        expected: 'a nose that is smaller than the faceplate',
      })),
  },
  {
    id: 'bar-in-swing',
    reason: 'collet, closer and bearing stand around the bar',
    source: COMMON_PRACTICE,
    doubts: ({ collet, swing }, { say }) =>
      when(known(collet) > known(swing) / 2, () => ({
        path: ['collet'],
        found: `is ${say(known(collet), 'mm')}, and the swing is ${say(known(swing), 'mm')}`,
        expected: 'at most half of the swing',
      })),
  },
  {
    id: 'rotary-mass-for-size',
    reason: `a rotary is iron with a cavity, ${DENSITY.least} to ${DENSITY.most} kg a cubic meter of base × height`,
    source: COMMON_PRACTICE,
    doubts: ({ mass, base, height }, { say }) => {
      const volume = (known(base.along) * known(base.across) * known(height)) / 1e9;
      const density = known(mass) / volume;
      const light = density < DENSITY.least;
      return when(light || density > DENSITY.most, () => ({
        path: ['mass'],
        found: `is ${say(known(mass), 'kg')}, ${say(density, 'kg')} a cubic meter of its outline`,
        expected: light ? 'a larger mass' : 'a smaller mass',
        perhaps: otherUnit(known(mass), density),
      }));
    },
  },
];

/** The same number in the other unit, where that is plausible. */
function otherUnit(mass: number, density: number): string | undefined {
  const within = (value: number) => value >= DENSITY.least && value <= DENSITY.most;
  if (density > DENSITY.most && within(density * POUND)) return `${Number(mass.toPrecision(6))} lb`;
  if (density < DENSITY.least && within(density / POUND))
    return `${Number((mass / POUND).toPrecision(6))} kg`;
  return undefined;
}
