import { describe, expect, it } from 'vitest';
import {
  type ArrangementAt,
  arrangementAt,
  checksAt,
  tightestChecks,
  worstFirst,
} from '../../src/report/checks-at.ts';
import type { CheckResult } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';
import { check } from './fixture-checks.ts';

/** The recommended arrangement with these checks alone. */
function withChecks(
  checks: readonly CheckResult[],
  parts: ArrangementAt['arrangement']['parts'] = {},
): ArrangementAt {
  const [first] = fixtureDecision().arrangements;
  if (first === undefined) throw new Error('the fixture lists no arrangement');
  return { arrangement: { ...first, checks, parts }, path: ['arrangements', 0] };
}

const ofPart = (
  part: string,
  relativeMargin: CheckResult['relativeMargin'],
  given: Partial<CheckResult> = {},
) => check({ check: 'swing', stage: 'envelope', part, relativeMargin, ...given });

describe('The tightest checks', () => {
  const parts = { Hinge: 'holds', Body: 'fails', Cap: 'holds if' } as const;

  it('are those with the least margin, each check once, at the part where it is tightest', () => {
    const at = withChecks(
      [
        ofPart('Hinge', 0.5),
        ofPart('Cap', 0.2),
        ofPart('Hinge', 0.3, { check: 'payload' }),
        ofPart('Hinge', 0.9, { check: 'reach-high', stage: 'clearance' }),
        ofPart('Hinge', 0.1, { check: 'tilt-moment' }),
      ],
      parts,
    );
    const found = tightestChecks(at, 3).map(({ result }) => [result.check, result.part]);
    expect(found).toEqual([
      ['tilt-moment', 'Hinge'],
      ['swing', 'Cap'],
      ['payload', 'Hinge'],
    ]);
  });

  it('go by the worse end where something is not known', () => {
    const at = withChecks([ofPart('Hinge', 0.1), ofPart('Hinge', [-0.2, 0.9], { check: 'payload' })], parts);
    expect(tightestChecks(at, 1).map(({ result }) => result.check)).toEqual(['payload']);
  });

  it('leave out parts that do not hold, a yes or no, advice, and what has no margin', () => {
    const at = withChecks(
      [
        ofPart('Body', -0.5),
        ofPart('Hinge', 0, { check: 'axis-drives', categorical: true }),
        ofPart('Hinge', 0, { check: 'inertia', verdict: 'open', advisory: true }),
        ofPart('Hinge', null, { check: 'column' }),
        ofPart('Hinge', 0.4, { check: 'payload' }),
      ],
      parts,
    );
    expect(tightestChecks(at, 3).map(({ result }) => result.check)).toEqual(['payload']);
  });

  it('say where they stand', () => {
    const at = withChecks([ofPart('Hinge', 0.4), ofPart('Hinge', 0.1, { check: 'payload' })], parts);
    expect(tightestChecks(at, 1)[0]?.path).toEqual(['arrangements', 0, 'checks', 1]);
  });
});

describe('The worst first', () => {
  it('puts what fails before what is open, then what holds if, then what holds', () => {
    const verdicts = ['holds', 'open', 'holds if', 'fails'] as const;
    const at = withChecks(verdicts.map((verdict) => ofPart('Hinge', 0.1, { verdict })));
    expect(worstFirst(checksAt(at)).map(({ result }) => result.verdict)).toEqual([
      'fails',
      'open',
      'holds if',
      'holds',
    ]);
  });

  it('keeps the order of the checks among equals, with and without a margin', () => {
    const at = withChecks([ofPart('A', null), ofPart('B', null), ofPart('C', 0.1), ofPart('D', 0.1)]);
    expect(worstFirst(checksAt(at)).map(({ result }) => result.part)).toEqual(['C', 'D', 'A', 'B']);
  });
});

describe('An arrangement', () => {
  it('that is not listed is not found', () => {
    expect(arrangementAt(fixtureDecision(), 'nobody')).toBeUndefined();
    expect(arrangementAt(fixtureDecision(), null)).toBeUndefined();
  });
});
