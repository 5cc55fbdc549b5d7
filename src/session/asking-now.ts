import type { Answers } from '../questions/answers.ts';
import { isAbout } from '../questions/is-about.ts';
import type { Asking, DecidingAnswer } from '../rules/asking/asking.ts';
import type { Subject } from './kept.ts';
import { type Item, isOpen, type Survey } from './survey.ts';

/** A question that can still change the result. */
interface DecidingQuestion extends Omit<DecidingAnswer, 'answer'> {
  readonly id: string;
  readonly subject: Subject;
}

/** What is worth asking now, as questions. */
export interface AskingNow extends Pick<Asking, 'outcome' | 'left'> {
  /** the next one first */
  readonly questions: readonly DecidingQuestion[];
}

/** What the engine says of answers, as questions that are open. 'later' where it says nothing yet. */
export function askingNow(survey: Survey, ask: (answers: Answers) => Asking | 'later'): AskingNow | 'later' {
  const answers = hedged(survey);
  const asking = ask(answers);
  if (asking === 'later') return 'later';
  const open = survey.items.filter(isOpen);
  const found = new Map<Item, DecidingQuestion>();
  for (const deciding of asking.answers) {
    const item = itemAbout(open, deciding.answer, answers);
    if (item !== undefined) found.set(item, joined(item, deciding, found.get(item)));
  }
  for (const item of open.filter((each) => !found.has(each) && reads(each, asking.openChecks)))
    found.set(item, { ...LAST_OF_ALL, id: item.question.id, subject: item.subject });
  return { outcome: asking.outcome, left: asking.left, questions: [...found.values()] };
}

/** What an open check reads besides what it hangs on most: it comes when that stays open. */
const LAST_OF_ALL = { touches: 0, drops: 0, ordersOnly: true } as const;

const reads = ({ question }: Item, checks: readonly string[]): boolean =>
  question.readBy.some((id) => checks.includes(id));

/**
 * Answers as they are, but what has a usual value and was not asked yet is not taken for known: otherwise it could
 * never be worth asking.
 */
function hedged({ answers, items }: Survey): Answers {
  return items
    .filter((item) => isOpen(item) && item.given === undefined && item.question.preset !== null)
    .reduce((all, { question, subject }) => question.set(all, subject ?? 0, 'unknown'), answers);
}

/** The open question about a value; where none is, one that it is a detail of. */
function itemAbout(open: readonly Item[], path: string, answers: Answers): Item | undefined {
  const about = (value: string) =>
    open.find(({ question, subject }) => isAbout(question, subject, value, answers));
  return about(path) ?? about(path.replace(/\.[^.\]]*$/, ''));
}

/** A question that several values hang on says what the most telling of them does. */
function joined(
  { question, subject }: Item,
  { touches, drops, ordersOnly }: DecidingAnswer,
  before: DecidingQuestion | undefined,
): DecidingQuestion {
  return {
    id: question.id,
    subject,
    touches: Math.max(touches, before?.touches ?? 0),
    drops: Math.max(drops, before?.drops ?? 0),
    ordersOnly: ordersOnly && (before?.ordersOnly ?? true),
  };
}
