import type { Anchor } from './counts.ts';
import { flatLoop } from './flat.ts';
import { compiledLogic } from './json-logic.ts';
import { customOperators, documented } from './json-rules.ts';
import { rankedMasks } from './masks.ts';
import { ownJudge, ownTables } from './own.ts';
import { everyTrace, everyTraceWithText, lazyTraces } from './plain.ts';

/** Every way of judging the same twelve checks, the slowest first. */
export const ANCHORS = {
  documented,
  customOperators,
  everyTraceWithText,
  compiledLogic,
  everyTrace,
  lazyTraces,
  flatLoop,
  rankedMasks,
  ownJudge,
  ownTables,
} as const satisfies Readonly<Record<string, Anchor>>;

export type AnchorName = keyof typeof ANCHORS;
