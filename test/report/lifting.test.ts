import { describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { lifting, liftingInShort } from '../../src/report/sections/lifting.ts';
import type { Decision } from '../../src/rules/decision.ts';
import type { LiftingDecision } from '../../src/rules/decision-lifting.ts';
import { fixtureDecision } from './fixture.ts';
import { readText } from './markdown-text.ts';

const decision = fixtureDecision();
const plain = (of: Decision): string => readText(markdownReport(of)).replace(/\s+/g, ' ');

function withLifting(change: Partial<LiftingDecision> | null): Decision {
  const arrangements = decision.arrangements.map((each) => ({
    ...each,
    lifting: change === null || each.lifting === null ? null : { ...each.lifting, ...change },
  }));
  return { ...decision, arrangements };
}

describe('Lifting it on and off', () => {
  it('says what there is, what suffices, and which is chosen', () => {
    const text = plain(decision);
    expect(text).toContain('Lifting it on and off');
    expect(text).toContain('Best of what there is and suffices: forklift');
    expect(text).toMatch(/each leg of the sling has to be rated for 69.7 kg/);
    expect(text).toContain('It does not hold for reaching into the enclosure of a machine');
  });

  it('says that it stays on where nothing lifts it', () => {
    expect(plain(withLifting({ outcome: 'stays-on', chosen: null }))).toContain(
      'what three-axis work there is lives beside it',
    );
    expect(plain(withLifting({ outcome: 'none', chosen: null }))).toContain('Nothing in the shop lifts it');
  });

  it('says nothing of a table that is built in', () => {
    expect(lifting(withLifting(null))).toEqual([]);
    expect(liftingInShort(withLifting(null))).toEqual([]);
  });
});
