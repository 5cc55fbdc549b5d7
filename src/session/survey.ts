import type { Answers } from '../questions/answers.ts';
import { fits } from '../questions/fits.ts';
import { QUESTIONS } from '../questions/index.ts';
import { type Offer, type Question, SECTIONS, type Value } from '../questions/question.ts';
import { groundAnswers } from './base.ts';
import { type Given, givenAt, type Kept, type Subject } from './kept.ts';

/** What a session reads but does not change: what is on offer, in which money, and how much room that has. */
export interface Setting {
  readonly offer: Offer;
  readonly currency: string;
  /** mm: nothing longer has a place in the catalog; null where it states no length */
  readonly longest: number | null;
}

/** One question, asked about the shop or about one part, and how it stands. */
export interface Item {
  readonly question: Question;
  readonly subject: Subject;
  /** kept, but ignored, where it does not apply now */
  readonly applies: boolean;
  readonly given: Given | undefined;
  /** why the answer that was given cannot stand beside the others; it is asked again */
  readonly objection: string | null;
}

/** All answers as the rules read them, and all questions in the order in which they are asked. */
export interface Survey {
  readonly answers: Answers;
  readonly items: readonly Item[];
}

/** Whether an item still waits for an answer. */
export const isOpen = (item: Item): boolean =>
  item.applies && (item.given === undefined || item.objection !== null);

/** Whether a question about the shop is asked before the parts are gone through. */
export const comesFirst = (question: Question): boolean =>
  question.of === 'shop' && SECTIONS.indexOf(question.section) < SECTIONS.indexOf('parts');

const SIZES: ReadonlySet<string> = new Set(['size', 'diameter', 'length']);

/** Whether a question asks how large a part is. */
export const asksSize = ({ id }: Question): boolean => SIZES.has(id);

const FIRST = QUESTIONS.filter(comesFirst);
const LAST = QUESTIONS.filter((question) => question.of === 'shop' && !comesFirst(question));
const OF_A_PART = QUESTIONS.filter((question) => question.of === 'part');

/**
 * Goes through every question once. An answer that does not apply, that its question does not know any more, or
 * that contradicts an earlier one is left out of `answers`; what is open is unknown, or has its usual value.
 */
export function surveyOf(kept: Kept, { offer, currency }: Pick<Setting, 'offer' | 'currency'>): Survey {
  let answers: Answers = groundAnswers(kept, namesOf(kept), currency);
  const items: Item[] = [];
  const visit = (question: Question, subject: Subject) => {
    const index = subject ?? 0;
    const applies = question.applies(answers, index);
    const given = knownGiven(kept, subject, question, offer);
    const value = given === undefined ? question.preset?.value : standsFor(question, given);
    const objection = applies && value !== undefined ? question.objection(answers, index, value) : null;
    items.push({ question, subject, applies, given, objection });
    if (!applies || value === undefined || objection !== null) return;
    // what an answers file says stays as it is there until something else is said
    const stays = kept.base !== undefined && isSaid(question.get(answers, index), given, value);
    if (!stays) answers = question.set(answers, index, value);
  };
  for (const question of FIRST) visit(question, null);
  for (const subject of kept.parts.keys()) for (const question of OF_A_PART) visit(question, subject);
  for (const question of LAST) visit(question, null);
  return { answers, items };
}

/** Whether the answers say this already: the same value, nothing where nobody is sure, something where nothing is answered. */
const isSaid = (there: Value, given: Given | undefined, value: Value): boolean =>
  given === undefined
    ? there !== 'unknown'
    : given.from === 'not sure'
      ? there === 'unknown'
      : JSON.stringify(there) === JSON.stringify(value);

/** An answer that its question still knows: a machine that is not on offer any more is none. */
function knownGiven(kept: Kept, subject: Subject, question: Question, offer: Offer): Given | undefined {
  const given = givenAt(kept, subject, question.id);
  if (given === undefined || given.from === 'not sure') return given;
  return fits(question.field, given.value, offer) ? given : undefined;
}

/** The value that an answer stands for. Example: 'not sure' whether a part must be held → false. */
function standsFor(question: Question, given: Given): Value {
  if (given.from !== 'not sure') return given.value;
  return question.unsure.as === 'value' ? question.unsure.value : 'unknown';
}

/** What each part is called; one without a name gets one that no other has. Example: → ['Hinge', 'Part 2']. */
function namesOf(kept: Kept): readonly string[] {
  const typed = kept.parts.map((answers) => {
    const name = answers.name;
    return name === undefined || name.from === 'not sure' ? null : String(name.value);
  });
  const taken = new Set(typed);
  return typed.map((each, index) => {
    if (each !== null) return each;
    let number = index + 1;
    while (taken.has(`Part ${number}`)) number += 1;
    taken.add(`Part ${number}`);
    return `Part ${number}`;
  });
}
