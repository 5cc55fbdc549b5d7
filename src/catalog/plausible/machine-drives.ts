import type { Machine } from '../catalog.ts';
import { COMMON_PRACTICE, known, type PlausibleRule, when } from './rule.ts';

/** kW·min/rev in N·m: 60 000/2π. */
const KW_PER_RPM = 60_000 / (2 * Math.PI);
/** Speed at which power and torque meet, rev/min, at least. */
const LEAST_BASE_SPEED = 50;
/** Spindle power, kW. */
const POWER = { least: 0.3, most: 200 };
/** Connected load over spindle power, kVA/kW. */
const LEAST_LOAD = 0.7;
/** ± positioning of linear axes, mm. */
const POSITIONING = { least: 0.0005, most: 0.1 };
/** Acceleration of linear axes, m/s². */
const ACCELERATION = { least: 0.3, most: 50 };
const GRAVITY = 9.80665;
const INCH = 25.4;
/** Diameter of a spindle nose, mm, by the size of its taper. */
const NOSES: readonly (readonly [taper: RegExp, least: number, most: number])[] = [
  [/(?:^|\D)30$/, 40, 100],
  [/(?:(?:^|\D)40|HSK-?A ?63)$/i, 55, 170],
  [/(?:(?:^|\D)50|HSK-?A ?100)$/i, 90, 260],
];

/** Spindle, axes and control. */
export const MACHINE_DRIVE_RULES: readonly PlausibleRule<Machine>[] = [
  {
    id: 'power-from-torque',
    reason: 'power = torque × speed: they meet at a base speed between standstill and the greatest speed',
    source: 'P = M·n/9549',
    doubts: ({ spindleDrive: { power, torque, speed } }, { say }) => {
      const base = (known(power) * KW_PER_RPM) / known(torque);
      const never = base > known(speed);
      return when(never || base < LEAST_BASE_SPEED, () => ({
        path: ['spindleDrive', 'torque'],
        found: `is ${say(known(torque), 'N·m')}, which makes ${say(known(power), 'kW')} at ${say(base, 'rev/min')}${never ? `, above the greatest speed of ${say(known(speed), 'rev/min')}` : ''}`,
        expected: `a ${never ? 'larger' : 'smaller'} torque, or another power`,
      }));
    },
  },
  {
    id: 'power-in-kilowatts',
    reason: `milling spindles have ${POWER.least} to ${POWER.most} kW`,
    source: COMMON_PRACTICE,
    doubts: ({ spindleDrive: { power } }, { say }) => {
      const value = known(power);
      const watts = value / 1000;
      return when(value < POWER.least || value > POWER.most, () => ({
        path: ['spindleDrive', 'power'],
        found: `is ${say(value, 'kW')}`,
        expected: 'the power of the spindle in kW',
        perhaps: watts >= POWER.least && watts <= POWER.most ? `${value} W` : undefined,
      }));
    },
  },
  {
    id: 'load-over-spindle-power',
    reason: 'axes, coolant and control draw as well',
    source: COMMON_PRACTICE,
    doubts: ({ power: { kVA }, spindleDrive }, { say }) =>
      when(known(kVA) < LEAST_LOAD * known(spindleDrive.power), () => ({
        path: ['power', 'kVA'],
        found: `is ${say(known(kVA), 'kVA')}, and the spindle alone has ${say(known(spindleDrive.power), 'kW')}`,
        expected: 'about the power of the spindle, or more',
      })),
  },
  {
    id: 'nose-for-taper',
    reason: 'the nose goes around the taper',
    source: `sizes of steep tapers and hollow shanks are standards; the diameters are ${COMMON_PRACTICE}`,
    doubts: ({ noseDiameter, spindleDrive: { taper } }, { say }) => {
      const [, least = 0, most = 0] = NOSES.find(([each]) => each.test(taper.trim())) ?? [];
      return when(most > 0 && (known(noseDiameter) < least || known(noseDiameter) > most), () => ({
        path: ['noseDiameter'],
        found: `is ${say(known(noseDiameter), 'mm')} for a taper ${taper}`,
        expected: `between ${say(least, 'mm')} and ${say(most, 'mm')}`,
      }));
    },
  },
  {
    id: 'positioning-of-a-mill',
    reason: 'less is a laboratory, more is no machine tool',
    source: COMMON_PRACTICE,
    doubts: ({ positioning }, { say }) => {
      const value = known(positioning);
      const inch = value * INCH;
      return when(value < POSITIONING.least || value > POSITIONING.most, () => ({
        path: ['positioning'],
        found: `is ${say(value, 'mm')}`,
        expected: `between ${say(POSITIONING.least, 'mm')} and ${say(POSITIONING.most, 'mm')}`,
        perhaps: inch >= POSITIONING.least && inch <= POSITIONING.most ? `${value} in` : undefined,
      }));
    },
  },
  {
    id: 'acceleration-of-a-mill',
    reason: `linear axes accelerate with ${ACCELERATION.least} to ${ACCELERATION.most} m/s²`,
    source: COMMON_PRACTICE,
    doubts: ({ acceleration }, { say }) => {
      const value = known(acceleration);
      const inG = value * GRAVITY;
      return when(value < ACCELERATION.least || value > ACCELERATION.most, () => ({
        path: ['acceleration'],
        found: `is ${say(value, 'm/s²')}`,
        expected: 'the acceleration of the axes in m/s²',
        perhaps: value < ACCELERATION.least && inG >= ACCELERATION.least ? `${value} g` : undefined,
      }));
    },
  },
  {
    id: 'look-ahead-reads-more',
    reason: 'look-ahead is bought to read more blocks',
    source: COMMON_PRACTICE,
    doubts: ({ blocks }) => [
      ...when(known(blocks.lookAhead) < known(blocks.standard), () => ({
        path: ['blocks', 'lookAhead'],
        found: `is ${known(blocks.lookAhead)} a second, and without look-ahead it is ${known(blocks.standard)}`,
        expected: 'no fewer than without',
      })),
      ...when(known(blocks.aheadWithLookAhead) < known(blocks.ahead), () => ({
        path: ['blocks', 'aheadWithLookAhead'],
        found: `is ${known(blocks.aheadWithLookAhead)}, and without look-ahead it is ${known(blocks.ahead)}`,
        expected: 'no fewer than without',
      })),
    ],
  },
  {
    id: 'drives-of-what-comes-with-it',
    reason: 'a rotary that comes with the machine could not be used otherwise',
    source: COMMON_PRACTICE,
    doubts: (row) =>
      when(row.rotaryIncluded !== null && row.axisDrives.fitted === 0, () => ({
        path: ['axisDrives', 'fitted'],
        found: 'is 0, and the machine comes with a rotary',
        expected: 'the drives of that rotary',
      })),
  },
];
