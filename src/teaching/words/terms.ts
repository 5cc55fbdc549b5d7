import type { Term } from './term.ts';
import { ROTARY_TERMS } from './terms-rotary.ts';
import { SHOP_TERMS } from './terms-shop.ts';
import { WORK_TERMS } from './terms-work.ts';

/** The glossary, in three lists. */
const ALL = { ...ROTARY_TERMS, ...WORK_TERMS, ...SHOP_TERMS } as const;
export type TermId = keyof typeof ALL;
export const TERMS: Readonly<Record<TermId, Term>> = ALL;
export const TERM_IDS = Object.keys(ALL) as readonly TermId[];
