import { BASE_UNITS } from '../quantities/kinds.ts';
import { QUESTIONS } from '../questions/index.ts';
import { UNASKED_ANSWER_WORDS, type ValueWords } from './wording/answers.ts';
import { MACHINE_VALUE_WORDS, ROTARY_VALUE_WORDS } from './wording/catalog-values.ts';
import { DERIVED_VALUE_WORDS } from './wording/derived-values.ts';

/** `parts[Lock gate hinge].depthSide` taken apart: whose value it is, and which. */
export interface ValuePath {
  readonly list: 'parts' | 'rotaries' | 'machines' | null;
  readonly name: string;
  readonly key: string;
}

/** Takes a value's path apart. A name may hold brackets itself, so its last closing bracket counts. */
export function splitValuePath(path: string): ValuePath {
  const found = /^(parts|rotaries|machines)\[(.*?)\]\.([\w.[\]-]+)$/s.exec(path);
  const [, list, name, key] = found ?? [];
  if (list === undefined || name === undefined || key === undefined)
    return { list: null, name: '', key: path };
  return { list: list as 'parts' | 'rotaries' | 'machines', name, key };
}

/** The words and the unit for a value's path; undefined where it is none that has words. */
export function valueWords(path: string): ValueWords | undefined {
  const { list, key } = splitValuePath(path);
  if (list === 'rotaries') return owned(ROTARY_VALUE_WORDS, withoutWhich(key));
  if (list === 'machines') return owned(MACHINE_VALUE_WORDS, key);
  return answerWords(list === 'parts' ? `parts.${key}` : key);
}

/** `hold.tilt-along-x.pitches[1]` → `hold.pitches`: which of several does not change what it is. */
export const withoutWhich = (key: string): string =>
  key.replace(/^hold\.[\w-]+\./, 'hold.').replace(/^(hold\.pitches|housing)\[\d+\]/, '$1');

/** An answer by its path without the part's name: the title of its question where it has one. */
function answerWords(path: string): ValueWords | undefined {
  const plain = path.replace(/\.approaches(\[\d+\])?\.(?=\w)/, '.');
  const question = QUESTIONS.find((each) => each.path === plain.replace(/\[\d+\]$/, ''));
  if (question === undefined) return owned(UNASKED_ANSWER_WORDS, plain) ?? owned(DERIVED_VALUE_WORDS, plain);
  const { field, title } = question;
  const unit = field.kind === 'quantity' || field.kind === 'quantities' ? BASE_UNITS[field.of] : '';
  const which =
    field.kind === 'quantities' ? field.names?.[Number(/\[(\d+)\]$/.exec(plain)?.[1])] : undefined;
  return { words: which ?? title.toLowerCase(), unit };
}

/** Whether an answer is one of several kinds: it is known or settled by somebody, and measured nowhere. Example: `parts[Hinge].motion` → true. */
export function isKind(path: string): boolean {
  const { list, key } = splitValuePath(path);
  const plain = list === 'parts' ? `parts.${key}` : key;
  const kind =
    list === 'machines' || list === 'rotaries'
      ? undefined
      : QUESTIONS.find((each) => each.path === plain)?.field.kind;
  return kind !== undefined && kind !== 'quantity' && kind !== 'quantities';
}

/** The unit of a value's number; empty where it has none. */
export const valueUnit = (path: string): string => valueWords(path)?.unit ?? '';

const owned = (table: Readonly<Record<string, ValueWords>>, key: string): ValueWords | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;
