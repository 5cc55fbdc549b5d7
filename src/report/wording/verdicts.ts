import type { Decision, Verdict } from '../../rules/decision.ts';

/** A verdict in words, with a sign so that it is found at a glance and a twin for plain terminals. */
export interface VerdictWords {
  readonly word: string;
  readonly sign: string;
  readonly ascii: string;
  readonly means: string;
}

export const VERDICT_WORDS: Readonly<Record<Verdict, VerdictWords>> = {
  holds: {
    word: 'holds',
    sign: '✓',
    ascii: 'OK',
    means: 'what is needed is there, for every value that the unknown answers may take',
  },
  'holds if': {
    word: 'holds if',
    sign: '~',
    ascii: 'IF',
    means: 'it holds once something ordinary is done, which is named',
  },
  fails: {
    word: 'fails',
    sign: '✗',
    ascii: 'NO',
    means: 'what is needed is not there, whatever the unknown answers turn out to be',
  },
  open: {
    word: 'open',
    sign: '?',
    ascii: '??',
    means: 'a value that is not known decides, and it is named',
  },
};

/** The outcome as the first words of a report. */
export const OUTCOME_WORDS: Readonly<Record<Decision['outcome'], string>> = {
  recommended: 'An arrangement is recommended.',
  none: 'No arrangement in this catalog passes.',
  open: 'It is open: something that is not known yet decides.',
};
