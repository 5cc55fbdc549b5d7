import type { Family } from '../../arranging/family.ts';
import { known } from '../../judging/value.ts';
import { assumed, exactly, nearlyAllOfThem } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { shareOf, type Whether, whether } from '../hours-share.ts';
import { defineGroup, ONE_AXIS, type Weighed } from '../rule.ts';

/** One level axis turns the sides around it to the tool, and never another. */
export const isAround = (family: Family): Whether =>
  whether(family.cases.map((of) => of.approaches.every(({ kind }) => kind === 'around' || kind === 'sides')));

export const around =
  (about: 'so' | 'not so') =>
  ({ families }: Pick<ClassGround, 'families'>): Weighed | null =>
    families.length === 0 ? null : shareOf(families, isAround, about);

/** Must-have parts that a level axis does not reach, counted. */
export function mustTilt({ families }: Pick<ClassGround, 'families'>): Weighed | null {
  const musts = families.filter(({ must }) => must).map((family) => ({ family, so: isAround(family) }));
  if (musts.length === 0) return null;
  const surely = musts.filter(({ so }) => so === 'no');
  const parts = musts.filter(({ so }) => so !== 'yes').map(({ family }) => family.name);
  const kinds = musts.flatMap(({ family, so }) =>
    so === 'perhaps' ? family.cases.flatMap((of) => of.kinds) : [],
  );
  const [low, high] = [surely.length, parts.length];
  if (low === high) return { value: known(low, 'must-have parts'), parts };
  const gaps = kinds.flatMap((each) => each.gaps);
  return {
    value: { low, high, path: 'must-have parts', gaps, forSeller: false, forOthers: true },
    parts,
  };
}

const AROUND = { approaches: ['around'] } as const;
const FIVE_SIDES = { approaches: ['top', 'sides'] } as const;
const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});

export const SIDES_SOURCE = 'geometry: one level axis turns a part about itself only';

/** Whether one level axis is enough for the sides that have to be reached. */
export const sides = defineGroup([
  {
    id: 'sides-tilt',
    about: ONE_AXIS,
    side: 'rules out',
    unit: 'share',
    number: around('not so'),
    limit: assumed('leastCoverage'),
    when: 'below',
    source: SIDES_SOURCE,
    examples: [
      {
        what: '40 % of the hours lie around one axis, half are wanted',
        of: 'single-axis',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(40) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(60) },
          ],
        },
        speaks: 'yes',
        number: 0.4,
        limit: 0.5,
      },
      {
        what: 'half of the hours lie around one axis',
        of: 'single-axis',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(50) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(50) },
          ],
        },
        speaks: 'no',
      },
      {
        what: 'nobody knows which sides are cut',
        of: 'single-axis',
        given: { parts: [{ approaches: 'unknown' }] },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'sides-must-tilt',
    about: ONE_AXIS,
    side: 'rules out',
    unit: '',
    number: mustTilt,
    limit: exactly(1, 'one part'),
    when: 'at least',
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'one must-have part is cut from the top as well',
        of: 'collet-indexer',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(90) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(10), must: true },
          ],
        },
        speaks: 'yes',
        number: 1,
        limit: 1,
      },
      {
        what: 'the must-have part lies around one axis',
        of: 'collet-indexer',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(90), must: true },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(10) },
          ],
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'sides-some-tilt',
    about: ONE_AXIS,
    side: 'against',
    weighty: true,
    unit: 'share',
    number: around('not so'),
    limit: nearlyAllOfThem,
    when: 'below',
    unless: ['sides-tilt'],
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'a tenth of the hours needs a tilt',
        of: 'single-axis',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(90) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(10) },
          ],
        },
        speaks: 'yes',
        number: 0.9,
        limit: 0.95,
      },
      {
        what: 'less than the share that sets a size needs a tilt',
        of: 'single-axis',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(97) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(3) },
          ],
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'sides-around',
    about: ONE_AXIS,
    side: 'for',
    unit: 'share',
    number: around('so'),
    limit: nearlyAllOfThem,
    when: 'at least',
    source: SIDES_SOURCE,
    examples: [
      {
        what: 'all sides lie around one axis',
        of: 'single-axis',
        given: { parts: [AROUND] },
        speaks: 'yes',
        number: 1,
        limit: 0.95,
      },
      {
        what: 'a tenth of the hours needs a tilt',
        of: 'single-axis',
        given: {
          parts: [
            { name: 'Spindle', ...AROUND, ...hours(90) },
            { name: 'Hinge', ...FIVE_SIDES, ...hours(10) },
          ],
        },
        speaks: 'no',
      },
    ],
  },
]);
