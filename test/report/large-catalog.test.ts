import { describe, expect, test } from 'vitest';
import { contenders } from '../../src/report/sections/contenders.ts';
import { outcome } from '../../src/report/sections/outcome.ts';
import { path } from '../../src/report/sections/path.ts';
import type { Decision, MarketCount } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';
import { blockText } from './section-text.ts';

const open = (market: MarketCount | null): Decision => ({
  ...fixtureDecision(),
  outcome: 'open',
  recommended: null,
  market,
});
const SEEN: MarketCount = { looked: 31, behind: 12, unseen: 0 };
const UNSEEN: MarketCount = { looked: 31, behind: 12, unseen: 41 };

describe('of a large catalog the report says', () => {
  test('how many were judged one by one, and never that all of them were', () => {
    const text = blockText(outcome(open(SEEN)), open(SEEN));
    expect(text).toContain('Of 84 arrangements 31 were judged one by one');
    expect(text).not.toContain('84 arrangements were judged.');
    expect(blockText(outcome(open(null)), open(null))).toContain('84 arrangements were judged.');
  });

  test('how many are behind, and that ranges were not worked out', () => {
    const text = blockText(path(open(SEEN)), open(SEEN));
    expect(text).toContain('Of the others 31 were judged one by one, and 12 not');
    expect(text).toContain('How far each answer may move was not worked out.');
    expect(text).not.toContain('too many to be judged');
    expect(blockText(path(open(null)), open(null))).not.toContain('This catalog is large.');
  });

  test('that one of those may win that were too many to be judged', () => {
    expect(blockText(path(open(UNSEEN)), open(UNSEEN))).toContain('Another 41 were too many to be judged');
    expect(blockText(contenders(open(UNSEEN)), open(UNSEEN))).toContain(
      '- one of 41 that were too many to be judged',
    );
    expect(blockText(contenders(open(SEEN)), open(SEEN))).not.toContain('too many to be judged');
  });

  test('that none passes, and not that all were judged', () => {
    const none: Decision = { ...open(SEEN), outcome: 'none', contenders: [] };
    expect(blockText(outcome(none), none)).toContain('None of 84 arrangements passes');
  });
});
