import { describe, expect, test } from 'vitest';
import type { Rotary } from '../../src/catalog/catalog.ts';
import type { Answers, Lifting } from '../../src/questions/answers.ts';
import { EXAMPLE_FORKLIFT, EXAMPLE_HANDS, EXAMPLE_HOIST } from '../../src/rules/checks/example-means.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement } from '../../src/rules/decision.ts';
import type { LiftingDecision } from '../../src/rules/decision-lifting.ts';
import { expectClose } from '../close-to.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART, EXAMPLE_ROTARY } from './example-shop.ts';

interface Given {
  readonly lifting: readonly Lifting[] | 'unknown';
  readonly rotary?: Partial<Rotary>;
  readonly work?: Partial<Answers['work']>;
}

/** The example shop wants so many vises that the rotary has to come off for them. */
function arrangementOf({ lifting, rotary = {}, work = {} }: Given): Arrangement {
  const answers: Answers = {
    ...EXAMPLE_ANSWERS,
    parts: [{ ...EXAMPLE_PART, tolerance: 0.5 }],
    shop: { ...EXAMPLE_ANSWERS.shop, lifting },
    work: { ...EXAMPLE_ANSWERS.work, visesWanted: 6, switchesPerWeek: 3, ...work },
  };
  const catalog = { ...EXAMPLE_CATALOG, rotaries: [{ ...EXAMPLE_ROTARY, ...rotary }] };
  const [first] = decide(answers, catalog, { all: true }).arrangements;
  if (first === undefined) throw new Error('no arrangement');
  return first;
}

function liftingOf(given: Given): LiftingDecision {
  const { lifting } = arrangementOf(given);
  if (lifting === null) throw new Error('nothing is lifted');
  return lifting;
}

const chosenBy = (given: Given): string | null => {
  const { chosen, means } = liftingOf(given);
  return chosen === null ? null : (means[chosen]?.by ?? null);
};

describe('the best means that suffices', () => {
  const all = [EXAMPLE_HOIST, EXAMPLE_FORKLIFT, EXAMPLE_HANDS];

  test('is by hand where hands may, else a forklift, else a hoist', () => {
    expect(chosenBy({ lifting: all, rotary: { mass: 17 } })).toBe('hand');
    expect(chosenBy({ lifting: all, rotary: { mass: 18 } })).toBe('forklift');
    expect(chosenBy({ lifting: [EXAMPLE_HOIST, EXAMPLE_HANDS] })).toBe('hoist');
  });

  test('is never a hoist whose hook is too low, and then the arrangement fails', () => {
    const low = { lifting: [{ ...EXAMPLE_HOIST, hookHeight: 1850 }] };
    expect(liftingOf(low)).toMatchObject({ outcome: 'none', chosen: null });
    expect(arrangementOf(low)).toMatchObject({
      passes: 'no',
      dropped: { stage: 'shop', check: 'hook-height' },
    });
  });

  test('is none where nothing suffices, and then three-axis work has to find room beside it', () => {
    const hands = { lifting: [EXAMPLE_HANDS] };
    expect(arrangementOf(hands)).toMatchObject({ passes: 'no', dropped: { stage: 'shop', check: 'lift' } });
    for (const work of [{ switchesPerWeek: 0 }, { visesWanted: 0 }]) {
      expect(liftingOf({ ...hands, work })).toMatchObject({ outcome: 'stays-on', swaps: 0 });
      expect(arrangementOf({ ...hands, work }).passes).toBe('yes');
    }
  });

  test('is open where nobody says what there is, and only where the rotary has to come off', () => {
    expect(arrangementOf({ lifting: 'unknown' }).passes).toBe('open');
    expect(arrangementOf({ lifting: 'unknown', work: { switchesPerWeek: 0 } }).passes).toBe('yes');
    expect(liftingOf({ lifting: [{ ...EXAMPLE_HOIST, capacity: 'unknown', rigging: 0 }] }).outcome).toBe(
      'chosen',
    );
    expect(liftingOf({ lifting: [{ ...EXAMPLE_HOIST, capacity: [50, 400] }] }).outcome).toBe('open');
  });
});

describe('a sling', () => {
  const slingOf = (hoist: Partial<Lifting>) =>
    liftingOf({ lifting: [{ ...EXAMPLE_HOIST, ...hoist }], rotary: { mass: 100 } }).means[0]?.sling;

  test('at 60 degrees pulls 57.7 kg on each leg, and asks 88.8 kg of an eye bolt that keeps 65 percent', () => {
    const sling = slingOf({ slingAngle: 60 });
    expectClose(Number(sling?.legPull), 57.735, { percent: 0.01 });
    expectClose(Number(sling?.eyeBolt), 57.735 / 0.65, { percent: 0.01 });
    expect(sling).toMatchObject({ hookNeed: 1100 + 300 + 500, hookHave: 2600 });
  });

  test('of one leg hangs straight, and one that is too flat has no numbers', () => {
    expect(slingOf({ legs: 1, slingAngle: 'unknown' })).toMatchObject({ legPull: 100, eyeBolt: 100 });
    expect(slingOf({ slingAngle: 25 })).toMatchObject({ legPull: null, eyeBolt: null });
  });

  test('on one lifting point carries all on one leg, however many it has', () => {
    const one = { mass: 42, liftingPoints: 1 };
    const [means] = liftingOf({
      lifting: [{ ...EXAMPLE_HOIST, legs: 2, slingAngle: 60 }],
      rotary: one,
    }).means;
    expect(means?.sling).toMatchObject({ legPull: 42, eyeBolt: 42 });
  });
});
