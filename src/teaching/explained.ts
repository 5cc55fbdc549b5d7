import type { Block } from '../report/blocks/block.ts';
import type { Decision } from '../rules/decision.ts';

/** Numbers and words that were worked out for an explanation: its sentences look them up by their path. */
export type Root = Decision & { readonly worked: unknown };

/** An explanation: blocks like those of a report, and what their numbers are looked up in. */
export interface Explained {
  readonly root: Root;
  readonly blocks: readonly Block[];
}

/** The decision of an example with what was worked out beside it, so that both can be looked up. */
export const rootOf = (decision: Decision, worked: unknown): Root => ({ ...decision, worked });

/** Where something stands that was worked out. */
export const at = (...path: readonly (string | number)[]): readonly (string | number)[] => [
  'worked',
  ...path,
];
