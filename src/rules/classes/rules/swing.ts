import type { Family } from '../../arranging/family.ts';
import { derived, type Value } from '../../judging/value.ts';
import { turningDiameter } from '../../weighing/envelope.ts';
import { askedAtLeast, askedByNearlyAll, assumed, type Capacity, mostOffered } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { COMMON_PRACTICE, defineGroup, EVERY_CLASS, type Weighed } from '../rule.ts';

/** The circle that a family and its fixture describe as they turn. */
export const swingOf = (family: Family): Value =>
  derived(
    turningDiameter(family),
    `parts[${family.name}].swing`,
    family.cases.flatMap((of) => [of.planRadius, of.eccentricity, of.fixtureDiameter, ...of.kinds]),
  );

export const SWING: Capacity = {
  name: 'swing',
  quantity: () => swingOf,
  offers: (table) => table.swing,
};

const asked = askedByNearlyAll(SWING);

/** The least swing of the class, as a multiple of what nearly all of the hours ask for. */
function oversize(of: ClassGround): Weighed | null {
  const need = asked(of)?.value;
  const all = of.tables.map(({ swing }) => swing);
  if (need === undefined || all.length === 0 || need.high === 0) return null;
  const least = (end: 'low' | 'high'): number => Math.min(...all.map((each) => each[end]));
  const ends = { low: least('low') / need.high, high: least('high') / need.low };
  return { value: derived(ends, 'least swing ÷ swing needed', [need, ...all]), parts: [] };
}

const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const turning = (diameter: number | readonly [number, number]) => ({
  size: [30, 40, 20] as const,
  holding: { diameter },
});
const SWING_200 = [{ swing: 200 }] as const;
const GEOMETRY = 'geometry: the circle that part and fixture describe';

/** What has to turn, against what the class offers in this catalog. */
export const swing = defineGroup([
  {
    id: 'swing-beyond',
    about: EVERY_CLASS,
    side: 'rules out',
    unit: 'mm',
    number: askedAtLeast(SWING),
    limit: mostOffered(SWING),
    when: 'above',
    source: GEOMETRY,
    examples: [
      {
        what: 'half of the hours turn within 201 mm',
        of: 'single-support',
        given: { parts: [turning(201)], rotaries: SWING_200 },
        speaks: 'yes',
        number: 201,
        limit: 200,
      },
      {
        what: 'they turn within just 200 mm',
        of: 'single-support',
        given: { parts: [turning(200)], rotaries: SWING_200 },
        speaks: 'no',
      },
      {
        what: 'a fixture that is not made yet',
        of: 'single-support',
        given: { parts: [turning([150, 250])], rotaries: SWING_200 },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'swing-short',
    about: EVERY_CLASS,
    side: 'against',
    weighty: true,
    unit: 'mm',
    number: asked,
    limit: mostOffered(SWING),
    when: 'above',
    unless: ['swing-beyond'],
    source: GEOMETRY,
    examples: [
      {
        what: 'a tenth of the hours turns within 300 mm',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...turning(90), ...hours(90) },
            { name: 'Plate', ...turning(300), ...hours(10) },
          ],
          rotaries: SWING_200,
        },
        speaks: 'yes',
        number: 300,
        limit: 200,
      },
      {
        what: 'three hundredths of them do',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...turning(90), ...hours(97) },
            { name: 'Plate', ...turning(300), ...hours(3) },
          ],
          rotaries: SWING_200,
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'swing-holds',
    about: EVERY_CLASS,
    side: 'for',
    unit: 'mm',
    number: asked,
    limit: mostOffered(SWING),
    when: 'at most',
    source: GEOMETRY,
    examples: [
      {
        what: 'all of it turns within 150 mm',
        of: 'single-support',
        given: { parts: [turning(150)], rotaries: SWING_200 },
        speaks: 'yes',
        number: 150,
        limit: 200,
      },
      {
        what: 'all of it turns within 201 mm',
        of: 'single-support',
        given: { parts: [turning(201)], rotaries: SWING_200 },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'swing-oversized',
    about: EVERY_CLASS,
    side: 'against',
    unit: '',
    number: oversize,
    limit: assumed('oversize'),
    when: 'above',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'the smallest turns 200 mm, the work asks for 80',
        of: 'single-support',
        given: { parts: [turning(80)], rotaries: SWING_200 },
        speaks: 'yes',
        number: 2.5,
        limit: 2,
      },
      {
        what: 'the work asks for 100',
        of: 'single-support',
        given: { parts: [turning(100)], rotaries: SWING_200 },
        speaks: 'no',
      },
    ],
  },
]);
