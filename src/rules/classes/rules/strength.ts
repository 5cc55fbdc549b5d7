import type { CheckId } from '../../checks/ids.ts';
import { derived } from '../../judging/value.ts';
import type { Judged } from '../../weighing/judged.ts';
import { assumed, nearlyAllOfThem } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { shareOf, type Whether } from '../hours-share.ts';
import { defineGroup, EVERY_CLASS, type Weighed } from '../rule.ts';

/** What has to carry and hold the work: masses, moments, brakes and drives. */
export const STRENGTH: ReadonlySet<CheckId> = new Set<CheckId>([
  'payload',
  'tilt-moment',
  'brake-rotary',
  'brake-tilt',
  'drive-rotary',
  'drive-tilt',
]);

/** The share that one arrangement is strong enough for. */
function strongFor(of: ClassGround, judged: Judged): Weighed {
  const told = new Map(
    judged.families.map(({ family, outcomes }): [string, Whether] => {
      const about = outcomes.filter(({ check, advisory }) => STRENGTH.has(check.id) && !advisory);
      if (about.some(({ verdict }) => verdict === 'fails')) return [family.name, 'no'];
      return [family.name, about.some(({ verdict }) => verdict === 'open') ? 'perhaps' : 'yes'];
    }),
  );
  const found = shareOf(of.families, ({ name }) => told.get(name) ?? 'yes', 'not so');
  const open = judged.families.flatMap(({ outcomes }) =>
    outcomes.filter(({ check }) => STRENGTH.has(check.id)).flatMap(({ openOn }) => openOn),
  );
  return { value: derived(found.value, found.value.path, [found.value, ...open]), parts: found.parts };
}

/** The share that the strongest of the class is strong enough for. */
function strongest(of: ClassGround): Weighed | null {
  const [first, ...others] = of.judged.map((judged) => strongFor(of, judged));
  if (first === undefined || of.families.length === 0) return null;
  const best = others.reduce((found, each) => (each.value.low > found.value.low ? each : found), first);
  const high = Math.max(...[first, ...others].map(({ value }) => value.high));
  return { value: derived({ low: best.value.low, high }, best.value.path, [best.value]), parts: best.parts };
}

const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const HEAVY = { mass: 15, holding: { mass: 6 } } as const;
const LIGHT = { mass: 2, holding: { mass: 2 } } as const;
const PAYLOAD_20 = [{ payload: { level: 35, tilted: 20 } }] as const;
const SOURCE = 'the checks of payload, tilt moment, brakes and drives';

/** Whether anything of the class carries and holds enough of the work. */
export const strength = defineGroup([
  {
    id: 'strength-beyond',
    about: EVERY_CLASS,
    side: 'rules out',
    unit: 'share',
    number: strongest,
    limit: assumed('leastCoverage'),
    when: 'below',
    unless: ['mass-beyond'],
    source: SOURCE,
    examples: [
      {
        what: 'the brakes hold none of the work',
        of: 'single-support',
        given: { rotaries: [{ brakeTorque: { rotary: 1, tilt: 1 } }] },
        speaks: 'yes',
        number: 0,
        limit: 0.5,
      },
      { what: 'the brakes hold all of it', of: 'single-support', given: {}, speaks: 'no' },
    ],
  },
  {
    id: 'strength-short',
    about: EVERY_CLASS,
    side: 'against',
    weighty: true,
    unit: 'share',
    number: strongest,
    limit: nearlyAllOfThem,
    when: 'below',
    unless: ['strength-beyond', 'mass-beyond', 'mass-short', 'moment-short'],
    source: SOURCE,
    examples: [
      {
        what: 'a fifth of the hours is cut too hard for the brake',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...LIGHT, ...hours(80) },
            {
              name: 'Bollard',
              ...LIGHT,
              cut: { diameter: 50, teeth: 5, ap: 20, ae: 25, fz: 0.3, vc: 100, interrupted: false },
              material: 'steel-alloy',
              ...hours(20),
            },
          ],
          rotaries: PAYLOAD_20,
        },
        speaks: 'yes',
        number: 0.8,
        limit: 0.95,
      },
      {
        what: 'a tenth of the hours is too heavy, which is said as such',
        of: 'single-support',
        given: {
          parts: [
            { name: 'Hinge', ...LIGHT, ...hours(90) },
            { name: 'Bollard', ...HEAVY, ...hours(10) },
          ],
          rotaries: PAYLOAD_20,
        },
        speaks: 'no',
      },
      { what: 'everything is held', of: 'single-support', given: {}, speaks: 'no' },
    ],
  },
]);
