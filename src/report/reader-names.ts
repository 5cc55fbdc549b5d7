import { CHECK_WORDS } from './wording/checks.ts';
import { MEASURE_WORDS } from './wording/measures.ts';
import { STAGE_WORDS } from './wording/stages.ts';

/** What checks, stages and measures are called in a sentence. Example: readerNames(['swing']) → ['swing'] */
export const readerNames = (ids: readonly string[]): readonly string[] => ids.map((id) => NAMES[id] ?? id);

const lowerTitles = (words: Readonly<Record<string, { readonly title: string }>>) =>
  Object.fromEntries(Object.entries(words).map(([id, { title }]) => [id, title.toLowerCase()]));

const NAMES: Readonly<Record<string, string>> = {
  ...lowerTitles(STAGE_WORDS),
  ...lowerTitles(MEASURE_WORDS),
  netPresentValue: 'net present value',
  ...Object.fromEntries(Object.entries(CHECK_WORDS).map(([id, { name }]) => [id, name])),
};
