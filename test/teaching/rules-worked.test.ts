import { describe, expect, test } from 'vitest';
import { CLASS_RULES } from '../../src/rules/classes/index.ts';
import { ROUTE_RULES } from '../../src/rules/classes/routes/index.ts';
import { STAGES } from '../../src/rules/stages/index.ts';
import { effectOf } from '../../src/teaching/topics/assumption-effect.ts';
import { hoursOf, spoken } from '../../src/teaching/topics/rule-topic.ts';
import { droppingAt } from '../../src/teaching/topics/stage-topic.ts';
import {
  ASSUMPTION_LESSONS,
  type AssumptionKey,
  type ShownBy,
} from '../../src/teaching/words/assumptions.ts';
import { CLASS_RULE_LESSONS } from '../../src/teaching/words/class-rules.ts';
import { ROUTE_RULE_LESSONS } from '../../src/teaching/words/route-rules.ts';
import { expectClose } from '../close-to.ts';

const shares = [
  ...CLASS_RULES.map((rule) => ({ rule, share: CLASS_RULE_LESSONS[rule.id].share })),
  ...ROUTE_RULES.map((rule) => ({ rule, share: ROUTE_RULE_LESSONS[rule.id].share })),
].flatMap(({ rule, share }) => (share === undefined ? [] : [[rule.id, rule, share] as const]));

test('most shares of hours are worked out', () => {
  expect(shares.length).toBeGreaterThan(15);
});

test.each(shares)('%s: the hours of its families come to its share', (_id, rule, share) => {
  const { decision, argument } = spoken(rule);
  const { shown } = hoursOf(decision, argument, share);
  expectClose(shown[2].need, Number(argument.number), { absolute: 1e-9 });
});

describe('a rule whose number is a share of the hours says so', () => {
  test.each([...CLASS_RULES, ...ROUTE_RULES].map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
    const lesson = { ...CLASS_RULE_LESSONS, ...ROUTE_RULE_LESSONS }[id];
    // shares of something else: of all work, and of what the best arrangement covers
    const others = [
      'three-axis-often-light',
      'three-axis-often-heavy',
      'three-axis-seldom',
      'route-covers',
      'route-covers-part',
    ];
    expect(lesson.share !== undefined).toBe(rule.unit === 'share' && !others.includes(id));
  });
});

const shown = Object.entries(ASSUMPTION_LESSONS).flatMap(([key, { shownBy }]) =>
  'none' in shownBy ? [] : [[key as AssumptionKey, shownBy] as const],
);

test.each(shown)(
  'moving %s moves a number where it is said to be shown',
  (key, shownBy: Exclude<ShownBy, { none: string }>) => {
    const effect = effectOf(key, shownBy);
    expect(effect?.before).not.toBe(effect?.after);
    expect(effect).not.toBeNull();
  },
);

test.each(STAGES)('an example drops at %s', (id) => {
  const stage = droppingAt(id).stages.find((each) => each.stage === id);
  expect(stage?.after).toBeLessThan(stage?.before ?? 0);
});
