/** Other words for the same, in which headings are written. */
const SAME: Readonly<Record<string, string>> = {
  weight: 'mass',
  centre: 'center',
  maximum: 'max',
  minimum: 'min',
  dia: 'diameter',
  diam: 'diameter',
  ø: 'diameter',
  travels: 'travel',
  no: 'number',
  nr: 'number',
};

/** Words that change nothing about what a column is. */
const NOISE = new Set(['max', 'the', 'of', 'a', 'an', 'approx', 'nominal', 'rated']);

/** The words of a heading in lower case, without signs. Example: 'Max. weight' → ['max', 'mass']. */
export const headingWords = (text: string): readonly string[] =>
  text
    .slice(0, 200)
    .replace(/ø/gi, ' ø ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}+]+/gu, ' ')
    .trim()
    .split(' ')
    .filter((word) => word !== '')
    .map((word) => SAME[word] ?? word);

/** The same in whatever order. Example: 'Travel X' and 'X travel' have the same key. */
export const wordsKey = (words: readonly string[]): string => words.toSorted().join(' ');

/** Without words that change nothing; all of them where nothing else is there. */
export function tellingWords(words: readonly string[]): readonly string[] {
  const telling = words.filter((word) => !NOISE.has(word));
  return telling.length === 0 ? words : telling;
}
