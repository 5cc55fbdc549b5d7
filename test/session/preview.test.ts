import { describe, expect, test } from 'vitest';
import { previewLive, previewOf } from '../../src/session/preview.ts';
import { go, oneBlock, WORLD } from './talk.ts';

const atTolerance = () => go(oneBlock(), { type: 'find', text: 'tolerance' }).session;

describe('an answer before it is given', () => {
  test('is said as it would be taken, in both systems of units', () => {
    const preview = previewOf(atTolerance(), { type: 'reply', text: '0.002 in' }, WORLD);
    expect(preview.ok && preview.words).toBe('0.0508 mm (0.002 in)');
  });

  test('is refused in the words in which it would be', () => {
    const preview = previewOf(atTolerance(), { type: 'reply', text: 'about so' }, WORLD);
    expect(preview).toMatchObject({ ok: false });
    expect(!preview.ok && preview.why).toContain('expected a length');
    expect(previewLive(preview, WORLD)).toBeNull();
  });

  test('of a question that was gone to from the result decides nothing by itself', () => {
    const atResult = go(
      oneBlock(),
      { type: 'go', to: { at: 'result' } },
      { type: 'find', text: 'tolerance' },
    );
    const { session } = atResult;
    expect(session.detours.some(({ from }) => from.at === 'result')).toBe(true);
    const never = (): never => expect.fail('it is decided');
    const world = { ...WORLD, decision: never, liveDecision: never };
    const preview = previewOf(session, { type: 'reply', text: '0.002 in' }, world);
    expect(preview.ok && preview.after.at).toEqual({ at: 'result' });
  });

  test('shows what it would do, and changes nothing', () => {
    const session = go(oneBlock(), { type: 'find', text: 'size' }).session;
    const before = JSON.stringify(session);
    const live = previewLive(previewOf(session, { type: 'reply', text: '300 x 300 x 50' }, WORLD), WORLD);
    expect(live).toMatchObject({ leftBefore: 12, left: 3, dropped: { check: 'swing' } });
    expect(JSON.stringify(session)).toBe(before);
  });

  test('that is the answer already is told to change nothing while something is tried', () => {
    const atResult = go(
      oneBlock(),
      { type: 'go', to: { at: 'result' } },
      { type: 'try-find', text: 'budget' },
    );
    const same = previewOf(atResult.session, { type: 'reply', text: '180000' }, WORLD);
    expect(same.ok && same.takes).toBe('Nothing is changed: that is the answer already.');
    const other = previewOf(atResult.session, { type: 'reply', text: '150000' }, WORLD);
    expect(other.ok && other.takes).toBe('Enter takes: 150 000 EUR');
  });
});
