import type { DescribeContext } from '../questions/describe-value.ts';
import type { AnswerBeside } from '../rules/beside.ts';
import type { Kept } from './kept.ts';
import { givenWords } from './review.ts';
import type { Item } from './survey.ts';
import { unitsOf, type World } from './world.ts';

const NOT_ASKED = 'does not apply';

/**
 * What several sets of answers say differently, in the order in which it is asked. Parts are the same by their place
 * while all have as many, else by their name; of a part that some lack only that is told.
 */
export function answersBeside(all: readonly Kept[], world: World): readonly AnswerBeside[] {
  const [first] = all;
  if (first === undefined) return [];
  const context = { ...world.setting, units: unitsOf(first) };
  const byPlace = all.every(({ parts }) => parts.length === first.parts.length);
  const asked = all.map((kept) => itemsBySubject(kept, byPlace, world));
  const keys = [...new Set(asked.flatMap((items) => [...items.keys()]))];
  return keys.flatMap((key): readonly AnswerBeside[] => {
    const items = asked.map((each) => each.get(key));
    const some = items.find((item) => item !== undefined);
    if (some === undefined) return [];
    const { part, item } = some;
    if (items.includes(undefined)) {
      if (item.question.id !== 'name') return [];
      const words = items.map((each) => (each === undefined ? 'not there' : 'there'));
      return [{ part: null, title: `Part ${part ?? ''}`, words }];
    }
    const same = new Set(items.map((each) => JSON.stringify(answerIn(each?.item)))).size === 1;
    if (same) return [];
    const words = items.map((each) => (each === undefined ? NOT_ASKED : wordsOf(each.item, context)));
    return [{ part, title: item.question.title, words }];
  });
}

interface Asked {
  readonly part: string | null;
  readonly item: Item;
}

function itemsBySubject(kept: Kept, byPlace: boolean, world: World): ReadonlyMap<string, Asked> {
  const { items, answers } = world.survey(kept);
  return new Map(
    items.map((item) => {
      const { question, subject } = item;
      const part = subject === null ? null : (answers.parts[subject]?.name ?? null);
      return [JSON.stringify([question.id, byPlace ? subject : part]), { part, item }];
    }),
  );
}

/** What counts as the answer; null where it is not asked, or nothing stands for it. */
function answerIn(item: Item | undefined): unknown {
  if (item === undefined || !item.applies) return null;
  const { given, question } = item;
  if (given === undefined) return question.preset?.value ?? null;
  return given.from === 'not sure' ? 'unknown' : given.value;
}

function wordsOf({ applies, given, question }: Item, context: DescribeContext): string {
  if (!applies) return NOT_ASKED;
  if (given === undefined) return question.preset?.words ?? 'no answer yet';
  return given.from === 'not sure' ? 'not sure' : givenWords(question, given, context);
}
