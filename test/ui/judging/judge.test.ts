import { describe, expect, test, vi } from 'vitest';
import { blankAnswers } from '../../../src/questions/blank-answers.ts';
import { createJudge, type Job, type SentDecision } from '../../../src/ui/judging/judge.ts';
import { NotYet } from '../../../src/ui/state/not-yet.ts';
import { FAKE_CATALOG } from '../../session/fake-engine.ts';

const OPTIONS = { shownIn: 'mm', traces: false } as const;
const answersOf = (currency: string) => blankAnswers(currency);
/** as it is sent, and as it is given: with what it was made from */
const decisionOf = (name: string) => ({ recommended: name, inputs: { shownIn: 'mm' } }) as SentDecision;
const decidedOn = (name: string) => ({
  recommended: name,
  inputs: { answers: answersOf(name), catalog: FAKE_CATALOG, shownIn: 'mm' },
});

function judging(giveUp: (() => void) | null = null) {
  const sent: Job[] = [];
  const onReady = vi.fn();
  const { judge, received } = createJudge((job) => void sent.push(job), onReady, giveUp);
  const ask = (name: string) => judge.decide(answersOf(name), FAKE_CATALOG, OPTIONS);
  const want = (name: string): void => void expect(() => ask(name)).toThrow(NotYet);
  /** what is worked on is done */
  const finish = (): void => {
    const job = sent.at(-1);
    if (job !== undefined) received({ id: job.id, decision: decisionOf(job.answers.currency) });
  };
  return { judge, received, sent, onReady, ask, want, finish };
}

const taskOf = (job: Job) => ('unasked' in job ? job.unasked : job.options);
const names = (sent: readonly Job[]): readonly string[] => sent.map(({ answers }) => answers.currency);

describe('a judge', () => {
  test('begins nothing by itself, and what was wanted first is begun first', () => {
    const { judge, sent, want, finish, ask, onReady } = judging();
    want('A');
    want('B');
    expect(sent).toEqual([]);
    judge.work();
    judge.work();
    expect(names(sent)).toEqual(['A']);
    finish();
    expect(onReady).toHaveBeenCalledTimes(1);
    expect(ask('A')).toEqual(decidedOn('A'));
    judge.work();
    expect(names(sent)).toEqual(['A', 'B']);
  });

  test('where a job takes long, gives up one that nobody wants any more for one that is wanted', () => {
    const giveUp = vi.fn();
    const { judge, received, sent, want, finish, ask } = judging(giveUp);
    want('A');
    judge.work();
    judge.forget();
    // nothing else is wanted: it may as well go on
    judge.work();
    expect(giveUp).not.toHaveBeenCalled();
    want('A');
    want('B');
    judge.work();
    // it is still wanted
    expect(giveUp).not.toHaveBeenCalled();
    judge.forget();
    want('B');
    judge.work();
    expect(giveUp).toHaveBeenCalledTimes(1);
    expect(names(sent)).toEqual(['A', 'B']);
    // what had been on its way is of nobody
    received({ id: sent[0]?.id ?? 0, decision: decisionOf('A') });
    want('A');
    finish();
    expect(ask('B')).toEqual(decidedOn('B'));
  });

  test('forgets what is wanted no more, but keeps what is being worked out', () => {
    const { judge, sent, want, finish, ask } = judging();
    want('A');
    judge.work();
    want('B');
    judge.forget();
    want('C');
    finish();
    judge.work();
    expect(names(sent)).toEqual(['A', 'C']);
    expect(ask('A')).toEqual(decidedOn('A'));
  });

  test('tells answers apart, and the ways in which they are decided', () => {
    const { judge, want, finish, sent } = judging();
    want('A');
    judge.work();
    finish();
    expect(() => judge.decide(answersOf('A'), FAKE_CATALOG, { ...OPTIONS, all: true })).toThrow(NotYet);
    judge.work();
    expect(sent.map(taskOf)).toEqual([OPTIONS, { ...OPTIONS, all: true }]);
  });

  test('keeps twelve decisions, those that were looked at last', () => {
    const { judge, want, finish, ask } = judging();
    const work = (name: string): void => {
      want(name);
      judge.work();
      finish();
    };
    for (let index = 1; index <= 12; index += 1) work(`D${index}`);
    expect(ask('D1')).toEqual(decidedOn('D1'));
    work('D13');
    expect(ask('D1')).toEqual(decidedOn('D1'));
    expect(() => ask('D2')).toThrow(NotYet);
    expect(ask('D3')).toEqual(decidedOn('D3'));
  });

  test('works out what is worth asking as a job of its own, and gives it afterwards', () => {
    const { judge, sent, received, onReady, want } = judging();
    const ask = (name: string) => judge.ask(answersOf(name), FAKE_CATALOG, ['shop.bay']);
    const asking = { outcome: 'open', left: 3, outOf: null, answers: [], openChecks: [] } as const;
    want('A');
    expect(ask('A')).toBe('later');
    judge.work();
    expect(sent.map(taskOf)).toEqual([OPTIONS]);
    received({ id: 1, decision: decisionOf('A') });
    judge.work();
    expect(sent.map(taskOf)).toEqual([OPTIONS, ['shop.bay']]);
    received({ id: 2, asking });
    expect(onReady).toHaveBeenCalledTimes(2);
    expect(ask('A')).toEqual(asking);
    expect(ask('B')).toBe('later');
  });

  test('passes a fault on, and goes on afterwards', () => {
    const { judge, want, received, sent } = judging();
    want('A');
    want('B');
    judge.work();
    expect(() => received({ id: sent[0]?.id ?? 0, fault: 'it broke' })).toThrow('it broke');
    judge.work();
    expect(names(sent)).toEqual(['A', 'B']);
  });

  test('takes no notice of what it does not wait for', () => {
    const { received, onReady } = judging();
    received({ id: 7, fault: 'late' });
    expect(onReady).not.toHaveBeenCalled();
  });
});
