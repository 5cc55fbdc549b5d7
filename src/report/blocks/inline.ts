import type { Verdict } from '../../rules/decision.ts';
import type { Path } from './path.ts';

/**
 * A piece of a sentence. Numbers and names are not text: they say where in the decision they stand, so that
 * nothing is printed that the decision does not hold, and each is written in one place only.
 */
export type Inline = Words | NumberAt | DataAt | NameAt | Standard | VerdictSign | Strong;

/** Fixed wording; holds no digits. */
export interface Words {
  readonly kind: 'words';
  readonly text: string;
}

/** A number, or both its ends, at a path. */
export interface NumberAt {
  readonly kind: 'number';
  readonly path: Path;
  readonly unit: string;
  /** without its sign, where the words say which way it is: 'short by' */
  readonly magnitude: boolean;
  /** what is written where nothing is known */
  readonly ifNull: string;
}

/** Text that was read from answers or catalog, or made by the rules: a name, a formula, a source. */
export interface DataAt {
  readonly kind: 'data';
  readonly path: Path;
  readonly code: boolean;
}

/** The last key of a path, where the key itself is what has to be read: the name of an input. */
export interface NameAt {
  readonly kind: 'name';
  readonly path: Path;
  readonly code: boolean;
}

/** The name of a standard: the only wording that may hold digits. */
export interface Standard {
  readonly kind: 'standard';
  readonly text: string;
}

export interface VerdictSign {
  readonly kind: 'verdict';
  readonly verdict: Verdict;
}

export interface Strong {
  readonly kind: 'strong';
  readonly children: readonly Inline[];
}

export const words = (text: string): Words => ({ kind: 'words', text });

interface NumberOptions {
  readonly magnitude?: boolean;
  readonly ifNull?: string;
}

/** A number by its path. Example: number(['count'], '') */
export const number = (path: Path, unit: string, options: NumberOptions = {}): NumberAt => ({
  kind: 'number',
  path,
  unit,
  magnitude: options.magnitude ?? false,
  ifNull: options.ifNull ?? 'not known',
});

export const data = (path: Path): DataAt => ({
  kind: 'data',
  path,
  code: false,
});
export const codeData = (path: Path): DataAt => ({
  kind: 'data',
  path,
  code: true,
});
/** A key as a name: typed as it is where it has the form of a path, plain words otherwise. */
export const keyName = (path: Path, code = String(path.at(-1)).includes('.')): NameAt => ({
  kind: 'name',
  path,
  code,
});
export const standard = (text: string): Standard => ({
  kind: 'standard',
  text,
});
export const verdictSign = (verdict: Verdict): VerdictSign => ({
  kind: 'verdict',
  verdict,
});
export const strong = (children: readonly Inline[]): Strong => ({
  kind: 'strong',
  children,
});

/** What a sentence can be made of. */
export type Piece = Inline | readonly Inline[];

const isList = (piece: Piece): piece is readonly Inline[] => Array.isArray(piece);

/** A sentence: fixed words around numbers and names; line breaks in the source are spaces. Example: say`It covers ${number(path, 'share')}.` */
export function say(strings: TemplateStringsArray, ...pieces: readonly Piece[]): readonly Inline[] {
  const sentence: Inline[] = [];
  strings.forEach((text, index) => {
    if (text !== '') sentence.push(words(text.replace(/\s+/g, ' ')));
    const piece = pieces[index];
    if (piece === undefined) return;
    if (isList(piece)) sentence.push(...piece);
    else sentence.push(piece);
  });
  return sentence;
}

/** Several pieces with the same words between them. Example: joined([say`a`, say`b`]) is 'a; b'. */
export const joined = (items: readonly Piece[], between = '; '): readonly Inline[] =>
  items.flatMap((item, index): readonly Inline[] => {
    const own = isList(item) ? item : [item];
    return index === 0 ? own : [words(between), ...own];
  });

/** Several pieces as a list in a sentence: 'a, b and c'. Nothing is said of none. */
export function enumerate(items: readonly Piece[], last = 'and'): readonly Inline[] {
  return items.flatMap((item, index): readonly Inline[] => {
    const own = isList(item) ? item : [item];
    if (index === 0) return own;
    return [words(index === items.length - 1 ? ` ${last} ` : ', '), ...own];
  });
}
