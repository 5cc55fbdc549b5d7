import { TERM_IDS, TERMS, type TermId } from './words/terms.ts';

/** More words than these are not read under a question. */
const MOST = 5;

const asWord = (text: string): RegExp =>
  new RegExp(`(?<![\\p{L}-])${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}s?(?![\\p{L}-])`, 'iu');

/** Words of every day, which mean nothing more in a question. */
const EVERYDAY: ReadonlySet<TermId> = new Set<TermId>([
  'holds',
  'holds-if',
  'fails',
  'open',
  'must',
  'base',
  'depth',
  'approach',
  'swap',
]);

/** Where a word of the glossary begins in a text; negative where it does not occur. */
const placeOf = (id: TermId, text: string): number =>
  Math.min(
    ...[TERMS[id].name, ...(TERMS[id].also ?? [])].map((each) => {
      const at = text.search(asWord(each));
      return at < 0 ? Number.POSITIVE_INFINITY : at;
    }),
  );

/**
 * Words of the glossary that occur in a text, in the order in which they are read. Example: termsIn('How large is the
 * faceplate?') → ['faceplate'].
 */
export function termsIn(text: string): readonly TermId[] {
  return TERM_IDS.filter((id) => !EVERYDAY.has(id))
    .map((id) => ({ id, place: placeOf(id, text) }))
    .filter(({ place }) => Number.isFinite(place))
    .toSorted((a, b) => a.place - b.place)
    .slice(0, MOST)
    .map(({ id }) => id);
}

/** Words of the glossary in a question: in its title, in what is asked, and in why. */
export const termsOfQuestion = (asked: {
  readonly title: string;
  readonly ask: string;
  readonly why: { readonly words: string };
}): readonly TermId[] => termsIn([asked.title, asked.ask, asked.why.words].join(' '));

/** A word and what it means, as a line. Example: 'Swing: the largest circle …' */
export const termLine = (id: TermId): string => `${TERMS[id].name}: ${TERMS[id].plain}`;
