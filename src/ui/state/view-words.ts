import type { ResultView } from './ui.ts';

interface ViewWords {
  /** stands over the view */
  readonly title: string;
  /** what is found there, for the list of views and the help */
  readonly about: string;
  /** its letter */
  readonly key: string;
}

/** What each view of the result is called, and the letter that opens it. */
export const VIEW_WORDS: Readonly<Record<ResultView, ViewWords>> = {
  overview: { title: 'The answer', about: 'the answer, in short', key: 'o' },
  why: {
    title: 'Every check',
    about: 'every check of what is recommended, or nearest to it, by margin',
    key: 'w',
  },
  'why-not': {
    title: 'Why not another one',
    about: 'any other arrangement: what fails, by how much',
    key: 'n',
  },
  compare: { title: 'Side by side', about: 'up to three arrangements side by side', key: 'c' },
  kinds: {
    title: 'Which kind of rotary',
    about: 'what speaks for and against each kind',
    key: 'k',
  },
  options: { title: 'Options to order', about: 'what is required, what pays, what is not needed', key: 'x' },
  shop: { title: 'The shop', about: 'way in, floor, power, air, lifting', key: 'b' },
  money: { title: 'Money', about: 'what it costs, what it brings, when it pays', key: 'm' },
  'trade-offs': { title: 'What is given up', about: 'against the next best, in its own units', key: 'd' },
  ranges: {
    title: 'How far each answer may move',
    about: 'between which ends an answer changes nothing',
    key: 'h',
  },
  stages: {
    title: 'How it was decided',
    about: 'how many came to each stage, how they were ranked',
    key: 's',
  },
  papers: { title: 'Papers', about: 'writes the report, a paper of it, the answers', key: 'p' },
  views: { title: 'All views', about: 'the list of all views of the result', key: 'v' },
};
