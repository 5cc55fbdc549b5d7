import { answerPath } from '../questions/answer-path.ts';
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
export interface AskingNow extends Pick<Asking, 'outcome' | 'left' | 'outOf'> {
  /** the next one first */
  readonly questions: readonly DecidingQuestion[];
}

/** What the engine says of answers, as questions that are open. 'later' where it says nothing yet. */
export function askingNow(
  { answers, items }: Survey,
  ask: (answers: Answers, unasked: readonly string[]) => Asking | 'later',
): AskingNow | 'later' {
  const open = items.filter(isOpen);
  const unasked = open.map(({ question, subject }) => answerPath(question, subject, answers));
  const asking = ask(answers, unasked);
  if (asking === 'later') return 'later';
  const found = new Map<Item, DecidingQuestion>();
  for (const deciding of asking.answers) {
    const item = itemAbout(open, deciding.answer, answers);
    if (item !== undefined) found.set(item, joined(item, deciding, found.get(item)));
  }
  for (const item of open.filter((each) => !found.has(each) && reads(each, asking.openChecks)))
    found.set(item, { ...LAST_OF_ALL, id: item.question.id, subject: item.subject });
  const { outcome, left, outOf } = asking;
  return { outcome, left, outOf, questions: [...found.values()] };
}

/** What an open check reads besides what it hangs on most: it comes when that stays open. */
const LAST_OF_ALL = { touches: 0, drops: 0, ordersOnly: true } as const;

const reads = ({ question }: Item, checks: readonly string[]): boolean =>
  question.readBy.some((id) => checks.includes(id));

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
