import { nextPlace } from './next.ts';
import type { Place, Session } from './session.ts';
import { type Item, isOpen } from './survey.ts';
import { PARTS, placeOf, REVIEW, walkOf } from './walk.ts';
import type { World } from './world.ts';

export type Found =
  | { readonly ok: true; readonly place: Place }
  | { readonly ok: false; readonly why: string };

/**
 * The place that a text names: the number of a question, the beginning of its title or id (of this part first,
 * then of the shop), the name of a part, also with a title behind it, or `parts`, `review`, `open` (the first open one). Example: 'tol' while a part is asked about → its tolerance.
 */
export function findPlace(session: Session, world: World, text: string): Found {
  const typed = text.trim().toLowerCase();
  if (/^\d+$/.test(typed)) {
    const questions = walkOf(session.kept, world).filter(({ at }) => at === 'question');
    const place = questions[Number(typed) - 1];
    return place === undefined
      ? no(`There is no question ${typed}: there are ${questions.length}.`)
      : yes(place);
  }
  if (typed === 'parts') return yes(PARTS);
  if (typed === 'review') return yes(REVIEW);
  const { answers, items } = world.survey(session.kept);
  if (typed === 'open') {
    return firstOpen(session, items, world);
  }
  const part = answers.parts.findIndex((each) => each.name.toLowerCase() === typed);
  if (part >= 0) return yes({ at: 'review', part });
  const asked = items.filter((item) => item.applies);
  const named = partNamed(answers.parts, typed);
  if (named !== null) {
    const found = pick(
      asked.filter(({ subject }) => subject === named.part),
      named.rest,
    );
    if (found !== null) return found;
  }
  const here = session.at.at === 'question' ? session.at.subject : null;
  return (
    pick(
      asked.filter(({ subject }) => subject === here),
      typed,
    ) ??
    pick(
      asked.filter(({ subject }) => subject === null),
      typed,
    ) ??
    pick(asked, typed) ??
    no(
      `No question and no part is called "${text.trim()}": type its number or words of its title; "review" lists them.`,
    )
  );
}

/** A part and what follows its name. Example: 'fan wheel: must' → that part, 'must'; the longest name counts. */
function partNamed(parts: readonly { readonly name: string }[], typed: string) {
  const fits = parts
    .map(({ name }, part) => ({ part, name: name.toLowerCase() }))
    .filter(({ name }) => typed.startsWith(name) && /^[\s:,]/.test(typed.slice(name.length)))
    .toSorted((a, b) => b.name.length - a.name.length);
  const [first] = fits;
  if (first === undefined) return null;
  return { part: first.part, rest: typed.slice(first.name.length).replace(/^[\s:,]+/, '') };
}

/** The question to ask next; where every one that matters is answered, the first that is not. */
function firstOpen(session: Session, items: readonly Item[], world: World): Found {
  const open = items.find(isOpen);
  if (open === undefined) return no('No question is open.');
  const next = session.asks === 'all' ? REVIEW : nextPlace({ ...session, at: REVIEW }, world);
  return yes(next.at === 'question' ? next : placeOf(open));
}

/** One of these items, or why it is not one; null where none is meant. */
function pick(items: readonly Item[], typed: string): Found | null {
  const wordsOf = ({ question }: Item) => [question.id, question.title.toLowerCase()];
  const exact = items.filter((item) => wordsOf(item).includes(typed));
  const begins = items.filter((item) => wordsOf(item).some((words) => words.startsWith(typed)));
  const holds = items.filter((item) => wordsOf(item).some((words) => words.includes(typed)));
  for (const some of [exact, begins, holds]) {
    const [first, second] = some;
    if (typed === '' || first === undefined) continue;
    if (second === undefined) return yes(placeOf(first));
    const titles = [...new Set(some.map(({ question }) => question.title))].slice(0, 5);
    if (titles.length === 1) {
      return no(
        `"${titles[0]}" is asked about each part: type the name of the part before it, or its number from the review.`,
      );
    }
    return no(`"${typed}" can be ${titles.join(' or ')}: type more of it, or the number from the review.`);
  }
  return null;
}

const yes = (place: Place): Found => ({ ok: true, place });
const no = (why: string): Found => ({ ok: false, why });
