import { nearest } from '../documents/nearest.ts';
import { TOPICS } from './topics/index.ts';
import type { Topic } from './topics/topic.ts';

/** What a name stands for: a check and a word may share one. Where it stands for nothing: the name that was probably meant. */
export interface FoundTopics {
  readonly found: readonly Topic[];
  readonly meant: string | undefined;
}

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

/** A name that stands for one thing only. Example: `term/swing`. */
export const qualified = ({ kind, id }: Pick<Topic, 'kind' | 'id'>): string => `${plain(kind)}/${id}`;

/** What a qualified name stands for; undefined: nothing is called so. */
export const topicNamed = (name: string): Topic | undefined =>
  TOPICS.find((each) => qualified(each) === name);

/**
 * Finds what a name stands for, by its id or its title; spaces and capitals aside. Example: findTopics('Reach high') → the
 * check `reach-high`; findTopics('swign') → none, `swing` was meant.
 */
export function findTopics(name: string): FoundTopics {
  const wanted = plain(name);
  const found = TOPICS.filter((each) =>
    [each.id, each.title, qualified(each)].some((own) => plain(own) === wanted),
  );
  if (found.length > 0) return { found, meant: undefined };
  const ids = [...new Set(TOPICS.map(({ id }) => id))];
  return { found, meant: nearest(wanted, ids) ?? ids.find((id) => isNear(wanted, plain(id))) };
}

const letters = (text: string): string => [...text].sort().join('');

/** Letters that changed places, or a part of a name. */
const isNear = (wanted: string, id: string): boolean =>
  letters(wanted) === letters(id) || (wanted.length >= LEAST_PART && id.includes(wanted));

const LEAST_PART = 4;
