import { expect, test } from 'vitest';
import type { Asking } from '../../src/rules/asking/asking.ts';
import { screenOf } from '../../src/session/screen.ts';
import type { Session } from '../../src/session/session.ts';
import { fakeAsk } from './fake-asking.ts';
import { BASICS, begun, go, worldWith } from './needed-talk.ts';

test('seen by a few of many arrangements, nothing is said of what was not looked at', () => {
  const world = worldWith((...given) => ({ ...(fakeAsk(...given) as Asking), outOf: 900 }));
  const shown = (session: Session) => {
    const now = screenOf(session, world);
    return now.kind === 'question' ? now : null;
  };
  const first = shown(go(begun(world), world, ...BASICS));
  expect(first?.because).toMatchObject({ kind: 'narrows', left: 31, outOf: 900, alone: false });
  // one question is named: it may not be the only one
  const last = shown(go(begun(world), world, ...BASICS, '200000'));
  expect(last?.because).toMatchObject({ kind: 'narrows', alone: false });
  expect(last?.progress.needed).toEqual({ answered: 10, toAsk: 1, isBasic: false, byFew: true });
  const review = screenOf(
    go(begun(world), world, ...BASICS, { type: 'go', to: { at: 'review', part: null } }),
    world,
  );
  expect(review).toMatchObject({ settled: { outcome: 'open', isProven: false, byFew: true } });
});
