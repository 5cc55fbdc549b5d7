import type { TableMechanics } from '../catalog.ts';
import { COMMON_PRACTICE, type Doubt, known, type PlausibleRule, type Surroundings, when } from './rule.ts';

const GRAVITY = 9.80665;
/** Tilt brake over rotary brake. */
const BRAKES = { least: 0.2, most: 10 };
/** Lever arm of the rated tilting moment, as shares of the swing and of the free radius. */
const LEVER = { ofSwing: 1 / 20, ofRadius: 2 };
/** Rated inertia over that of the payload as a disc on the faceplate. */
const INERTIA = { least: 0.1, most: 100 };
/** Accuracy of an axis that positions work, arcsec. */
const ACCURACY = { least: 0.5, most: 600 };
const ARCSEC = 3600;

type Axis = 'rotary' | 'tilt';
const AXES: readonly Axis[] = ['rotary', 'tilt'];

/** What a table carries, turns and holds belong together: of rotaries and of built-in tables. */
export const TABLE_LOAD_RULES: readonly PlausibleRule<TableMechanics>[] = [
  {
    id: 'payload-level-most',
    reason: 'tilted, the load hangs on clamps and brake',
    source: COMMON_PRACTICE,
    doubts: ({ payload: { level, tilted } }, { say }) =>
      when(known(tilted) > known(level), () => ({
        path: ['payload', 'tilted'],
        found: `is ${say(known(tilted), 'kg')}, and level it is ${say(known(level), 'kg')}`,
        expected: 'no more tilted than level',
      })),
  },
  {
    id: 'tilt-moment-lever',
    reason: 'moment = weight × distance of the center of mass from the tilt axis',
    source: 'statics; how far that can be is common practice',
    doubts: ({ tiltMoment, payload, swing, tiltClearRadius }, { say }) => {
      const lever = (known(tiltMoment) / (known(payload.tilted) * GRAVITY)) * 1000;
      const short = lever < known(swing) * LEVER.ofSwing;
      return when(short || lever > known(tiltClearRadius) * LEVER.ofRadius, () => ({
        path: ['tiltMoment'],
        found: `is ${say(known(tiltMoment), 'N·m')}, the tilted payload of ${say(known(payload.tilted), 'kg')} at ${say(lever, 'mm')} from the axis`,
        expected: `a ${short ? 'larger' : 'smaller'} moment, or another payload`,
      }));
    },
  },
  {
    id: 'tilt-brake-holds-moment',
    reason: 'what may be put on has to be held as well',
    source: 'statics',
    doubts: ({ brakeTorque, tiltMoment }, { say }) =>
      when(known(brakeTorque.tilt) < known(tiltMoment), () => ({
        path: ['brakeTorque', 'tilt'],
        found: `is ${say(known(brakeTorque.tilt), 'N·m')}, and the allowed tilting moment is ${say(known(tiltMoment), 'N·m')}`,
        expected: 'at least that moment',
      })),
  },
  {
    id: 'tilt-drive-lifts-moment',
    reason: 'what may be put on has to be raised as well',
    source: COMMON_PRACTICE,
    doubts: ({ driveTorque, tiltMoment }, { say }) =>
      when(known(driveTorque.tilt) < known(tiltMoment), () => ({
        path: ['driveTorque', 'tilt'],
        found: `is ${say(known(driveTorque.tilt), 'N·m')}, and the allowed tilting moment is ${say(known(tiltMoment), 'N·m')}`,
        expected: 'at least that moment',
      })),
  },
  {
    id: 'brakes-of-one-size',
    reason: 'both axes hold the same cut, the tilt axis the load as well',
    source: COMMON_PRACTICE,
    doubts: ({ brakeTorque: { rotary, tilt } }, { say }) => {
      const ratio = known(tilt) / known(rotary);
      return when(ratio < BRAKES.least || ratio > BRAKES.most, () => ({
        path: ['brakeTorque', 'tilt'],
        found: `is ${say(known(tilt), 'N·m')}, and that of the rotary axis is ${say(known(rotary), 'N·m')}`,
        expected: `between a fifth of that and ${BRAKES.most} times as much`,
      }));
    },
  },
  {
    id: 'brake-over-drive',
    reason: 'a clamp grips a disc, a drive works through a gear',
    source: COMMON_PRACTICE,
    doubts: ({ brakeTorque, driveTorque }, { say }) =>
      AXES.flatMap((axis) =>
        when(known(brakeTorque[axis]) < known(driveTorque[axis]), () => ({
          path: ['brakeTorque', axis],
          found: `is ${say(known(brakeTorque[axis]), 'N·m')}, and the drive of that axis turns with ${say(known(driveTorque[axis]), 'N·m')}`,
          expected: 'a brake that holds more than the drive',
        })),
      ),
  },
  {
    id: 'inertia-of-payload',
    reason: 'a load that may be put on may be turned: ½·m·r² of a disc on the faceplate',
    source: 'mechanics of a disc; how far off it can be is common practice',
    doubts: ({ inertia, payload, faceplate }, { say }) => {
      const disc = 0.5 * known(payload.level) * (known(faceplate) / 2000) ** 2;
      const ratio = known(inertia) / disc;
      return when(ratio < INERTIA.least || ratio > INERTIA.most, () => ({
        path: ['inertia'],
        found: `is ${say(known(inertia), 'kg·m²')}, and the payload as a disc has ${say(disc, 'kg·m²')}`,
        expected: 'about that, or more',
        perhaps: ratio > INERTIA.most ? `${known(inertia)} kg·cm²` : undefined,
      }));
    },
  },
  {
    id: 'accuracy-in-arcsec',
    reason: 'indexing accuracy is between a few arc seconds and a few arc minutes',
    source: COMMON_PRACTICE,
    doubts: ({ accuracy }, around) => AXES.flatMap((axis) => accuracyDoubts(axis, accuracy[axis], around)),
  },
];

function accuracyDoubts(
  axis: Axis,
  stated: TableMechanics['accuracy'][Axis],
  { say }: Surroundings,
): readonly Doubt[] {
  const value = known(stated);
  const inDegrees = value * ARCSEC;
  const perhaps = inDegrees >= ACCURACY.least && inDegrees <= ACCURACY.most ? `${value}°` : undefined;
  return when(value < ACCURACY.least || value > ACCURACY.most, () => ({
    path: ['accuracy', axis],
    found: `is ${say(value, 'arcsec')}`,
    expected: `between ${ACCURACY.least} and ${ACCURACY.most} arcsec`,
    perhaps,
  }));
}
