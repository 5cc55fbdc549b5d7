import { expect, test } from 'vitest';
import { liveLine } from '../../src/report/live-line.ts';
import { decide } from '../../src/rules/decide.ts';
import { liveOf } from '../../src/session/live.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { begun, WORLD } from './talk.ts';

test('where nothing passes it says what stops the arrangement that comes nearest', () => {
  const { answers } = demoAnswers('shop-nothing-passes');
  const decision = decide(answers, demoCatalog(), { flips: [] });
  const { session } = begun();
  const note = {
    kind: 'accepted',
    id: 'units',
    subject: null,
    given: { from: 'typed', value: 'mm' },
    before: session.kept,
  } as const;
  const live = liveOf({ ...session, note }, { ...WORLD, liveDecision: () => decision });
  expect(live === null ? '' : liveLine(live)).toBe(
    'Still 0 of 458 arrangements left; swing drops the nearest, Spindlewood.',
  );
  expect(live?.nearest?.check).toBe(
    decision.arrangements.find(({ id }) => id === decision.nearestMisses[0])?.dropped?.check,
  );
});
