import type { Family } from '../../arranging/family.ts';
import type { Outcome } from '../../judging/outcome.ts';
import { derived, known, type Value } from '../../judging/value.ts';
import {
  acrossCases,
  askedAtLeast,
  askedByNearlyAll,
  type Capacity,
  mostOffered,
  nearlyAll,
} from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { neededFor } from '../hours-share.ts';
import { defineGroup, EVERY_CLASS, ONE_AXIS, TWO_AXES, type Weighed } from '../rule.ts';

/** Beyond this tilt the lower of the two payloads counts. */
const LEVEL_UP_TO = 30;

/** Part and fixture, where they are carried tilted; what stays nearly level is not the narrow place. */
const tiltedMass = ({ class: ofClass }: ClassGround) => {
  const level = ONE_AXIS.includes(ofClass);
  return (family: Family): Value =>
    acrossCases(
      family,
      (of) => {
        const counts = { low: level || of.tilt.low > LEVEL_UP_TO, high: level || of.tilt.high > LEVEL_UP_TO };
        const ends = {
          low: counts.low ? of.mass.low + of.fixtureMass.low : 0,
          high: counts.high ? of.mass.high + of.fixtureMass.high : 0,
        };
        return derived(ends, '', [of.mass, of.fixtureMass, of.tilt]);
      },
      `parts[${family.name}].massCarried`,
    );
};

const MASS: Capacity = {
  name: 'payload, tilted',
  quantity: tiltedMass,
  offers: (table) => table.payloadTilted,
};

/** The moment that nearly all of the hours ask of the rotary of this class that carries most. */
function moment(of: ClassGround): { readonly need: Weighed; readonly have: Value } | null {
  const tables = [...of.tables].sort((a, b) => b.tiltMoment.low - a.tiltMoment.low);
  const [strongest] = tables;
  const judged = of.judged.find(({ setUp }) => setUp.candidate.rotary === strongest);
  if (strongest === undefined || judged === undefined || of.families.length === 0) return null;
  const outcomes = new Map(
    judged.families.map((each): [string, Outcome | undefined] => [
      each.family.name,
      each.outcomes.find(({ check }) => check.id === 'tilt-moment'),
    ]),
  );
  const quantity = ({ name }: Family): Value => {
    const found = outcomes.get(name);
    return found === undefined
      ? known(0, 'moment')
      : derived({ low: Math.max(0, found.need.low), high: found.need.high }, 'moment', found.hangsOn);
  };
  const have = strongest.tiltMoment;
  const parts = of.families.filter((family) => quantity(family).high > have.low).map(({ name }) => name);
  return { need: { value: neededFor(of.families, quantity, nearlyAll(of)), parts }, have };
}

const momentNeed = (of: ClassGround): Weighed | null => moment(of)?.need ?? null;
const momentHave = (of: ClassGround): Value => moment(of)?.have ?? known(0, 'moment carried');

const carried = (mass: number | readonly [number, number], fixture = 0) => ({
  mass,
  holding: { mass: fixture },
});
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const PAYLOAD_20 = [{ payload: { level: 35, tilted: 20 } }] as const;
const SOURCE = 'the catalog’s payload, tilted';
const STATICS = 'statics: mass × distance of its center from the tilt axis';

/** Mass and moment of the largest work. */
export const mass = defineGroup([
  {
    id: 'mass-beyond',
    about: EVERY_CLASS,
    side: 'rules out',
    unit: 'kg',
    number: askedAtLeast(MASS),
    limit: mostOffered(MASS),
    when: 'above',
    source: SOURCE,
    examples: [
      {
        what: '21 kg with its fixture, tilted',
        of: 'single-support',
        given: { parts: [carried(15, 6)], rotaries: PAYLOAD_20 },
        speaks: 'yes',
        number: 21,
        limit: 20,
      },
      {
        what: 'the same kept nearly level',
        of: 'single-support',
        given: { parts: [{ ...carried(15, 6), approaches: ['top', { slant: 30 }] }], rotaries: PAYLOAD_20 },
        speaks: 'no',
      },
      {
        what: 'a part that nobody weighed',
        of: 'single-support',
        given: { parts: [carried([10, 40])], rotaries: PAYLOAD_20 },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'mass-short',
    about: EVERY_CLASS,
    side: 'against',
    weighty: true,
    unit: 'kg',
    number: askedByNearlyAll(MASS),
    limit: mostOffered(MASS),
    when: 'above',
    unless: ['mass-beyond'],
    source: SOURCE,
    examples: [
      {
        what: 'a tenth of the hours weighs 30 kg',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...carried(5), ...hours(90) },
            { name: 'Bollard', ...carried(30), ...hours(10) },
          ],
          rotaries: PAYLOAD_20,
        },
        speaks: 'yes',
        number: 30,
        limit: 20,
      },
      {
        what: 'three hundredths of them do',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...carried(5), ...hours(97) },
            { name: 'Bollard', ...carried(30), ...hours(3) },
          ],
          rotaries: PAYLOAD_20,
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'mass-holds',
    about: EVERY_CLASS,
    side: 'for',
    unit: 'kg',
    number: askedByNearlyAll(MASS),
    limit: mostOffered(MASS),
    when: 'at most',
    source: SOURCE,
    examples: [
      {
        what: '20 kg on 20 kg',
        of: 'single-support',
        given: { parts: [carried(15, 5)], rotaries: PAYLOAD_20 },
        speaks: 'yes',
        number: 20,
        limit: 20,
      },
      {
        what: '21 kg on 20 kg',
        of: 'single-support',
        given: { parts: [carried(15, 6)], rotaries: PAYLOAD_20 },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'moment-short',
    about: TWO_AXES,
    side: 'against',
    weighty: true,
    unit: 'N·m',
    number: momentNeed,
    limit: momentHave,
    when: 'above',
    source: STATICS,
    examples: [
      {
        what: '10 kg whose center stands 100 mm above the tilt axis, 9 N·m carried',
        of: 'single-support',
        given: {
          parts: [{ ...carried(10), size: [60, 60, 120], holding: { mass: 0, height: 0 } }],
          rotaries: [{ tiltMoment: 9, faceOffset: 40 }],
        },
        speaks: 'yes',
        number: 9.80665,
        limit: 9,
      },
      {
        what: 'the same, 10 N·m carried',
        of: 'single-support',
        given: {
          parts: [{ ...carried(10), size: [60, 60, 120], holding: { mass: 0, height: 0 } }],
          rotaries: [{ tiltMoment: 10, faceOffset: 40 }],
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'moment-holds',
    about: TWO_AXES,
    side: 'for',
    unit: 'N·m',
    number: momentNeed,
    limit: momentHave,
    when: 'at most',
    source: STATICS,
    examples: [
      {
        what: '10 kg whose center stands 100 mm above the tilt axis, 10 N·m carried',
        of: 'single-support',
        given: {
          parts: [{ ...carried(10), size: [60, 60, 120], holding: { mass: 0, height: 0 } }],
          rotaries: [{ tiltMoment: 10, faceOffset: 40 }],
        },
        speaks: 'yes',
        number: 9.80665,
        limit: 10,
      },
      {
        what: 'the same, 9 N·m carried',
        of: 'single-support',
        given: {
          parts: [{ ...carried(10), size: [60, 60, 120], holding: { mass: 0, height: 0 } }],
          rotaries: [{ tiltMoment: 9, faceOffset: 40 }],
        },
        speaks: 'no',
      },
    ],
  },
]);
