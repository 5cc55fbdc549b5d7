import type { Family } from '../../arranging/family.ts';
import { derived } from '../../judging/value.ts';
import { assumed, mostOffered } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { shareOf, type Whether, whether } from '../hours-share.ts';
import { ADDED, COMMON_PRACTICE, defineGroup, type Weighed } from '../rule.ts';

const largestCollet = mostOffered({ name: 'collet capacity', offers: (table) => table.collet });

/** Held by a collet, and within the largest one of the class. */
function bar(of: ClassGround): Weighed | null {
  if (of.families.length === 0 || of.tables.length === 0) return null;
  const most = largestCollet(of);
  const fits = (family: Family): Whether => {
    const surely = family.cases.map(
      ({ heldByCollet, planRadius }) => heldByCollet && 2 * planRadius.high <= most.low + 1e-9,
    );
    const perhaps = family.cases.map(
      ({ heldByCollet, planRadius }) => heldByCollet && 2 * planRadius.low <= most.high + 1e-9,
    );
    if (whether(surely) === 'yes') return 'yes';
    return whether(perhaps) === 'no' ? 'no' : 'perhaps';
  };
  const found = shareOf(of.families, fits);
  const diameters = of.families.flatMap(({ cases }) => cases.map(({ planRadius }) => planRadius));
  return { ...found, value: derived(found.value, found.value.path, [found.value, most, ...diameters]) };
}

/** Held in a chuck, which wants a spindle nose; nothing to say where no work is, or where the class is not so. */
const chucked =
  (hasNose: boolean) =>
  (of: ClassGround): Weighed | null => {
    const noses = of.tables.map(({ row }) => row?.nose ?? 'none');
    if (noses.length === 0 || noses.some((nose) => nose !== 'none') !== hasNose) return null;
    return shareOf(of.families, (family) => {
      const { by } = of.partOf(family).holding;
      return by === 'unknown' ? 'perhaps' : by === 'chuck' ? 'yes' : 'no';
    });
  };

const hours = (quantity: number) => ({
  yearly: { quantity, lots: 0, setups: 0, cycleMinutes: 60, handlingMinutes: 0 },
});
const barOf = (diameter: number) => ({
  shape: 'round' as const,
  diameter,
  length: 50,
  approaches: ['around' as const],
  holding: { by: 'collet' as const },
});
const INDEXER = [{ class: 'collet-indexer', collet: 42 }] as const;
const CHUCK = { holding: { by: 'chuck' } } as const;

/** How the work is held: bar in collets, round work in chucks. */
export const held = defineGroup([
  {
    id: 'bar-fits',
    about: ['collet-indexer'],
    side: 'for',
    unit: 'share',
    number: bar,
    limit: assumed('leastCoverage'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'bar of 40 mm in a collet of 42',
        of: 'collet-indexer',
        given: { parts: [barOf(40)], rotaries: INDEXER },
        speaks: 'yes',
        number: 1,
        limit: 0.5,
      },
      {
        what: 'bar of 43 mm',
        of: 'collet-indexer',
        given: { parts: [barOf(43)], rotaries: INDEXER },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'bar-little',
    about: ['collet-indexer'],
    side: 'against',
    weighty: true,
    unit: 'share',
    number: bar,
    limit: assumed('leastCoverage'),
    when: 'below',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'three tenths of the hours are bar',
        of: 'collet-indexer',
        given: {
          parts: [
            { name: 'Spindle', ...barOf(40), ...hours(30) },
            { name: 'Body', approaches: ['around'], ...hours(70) },
          ],
          rotaries: INDEXER,
        },
        speaks: 'yes',
        number: 0.3,
        limit: 0.5,
      },
      {
        what: 'six tenths are',
        of: 'collet-indexer',
        given: {
          parts: [
            { name: 'Spindle', ...barOf(40), ...hours(60) },
            { name: 'Body', approaches: ['around'], ...hours(40) },
          ],
          rotaries: INDEXER,
        },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'nose-takes-chucks',
    about: ADDED,
    side: 'for',
    unit: 'share',
    number: chucked(true),
    limit: assumed('kneeShare'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'work in a chuck, and a nose that takes it',
        of: 'single-support',
        given: { parts: [CHUCK], rotaries: [{ nose: 'A2-5' }] },
        speaks: 'yes',
        number: 1,
        limit: 0.05,
      },
      {
        what: 'work on a fixture',
        of: 'single-support',
        given: { rotaries: [{ nose: 'A2-5' }] },
        speaks: 'no',
      },
      {
        what: 'nobody knows how it is held',
        of: 'single-support',
        given: { parts: [{ holding: { by: 'unknown' } }], rotaries: [{ nose: 'A2-5' }] },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'nose-missing',
    about: ADDED,
    side: 'against',
    unit: 'share',
    number: chucked(false),
    limit: assumed('kneeShare'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'work in a chuck, and faceplates only',
        of: 'single-support',
        given: { parts: [CHUCK] },
        speaks: 'yes',
        number: 1,
        limit: 0.05,
      },
      { what: 'work on a fixture', of: 'single-support', given: {}, speaks: 'no' },
    ],
  },
]);
