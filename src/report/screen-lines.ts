import type { Decision } from '../rules/decision.ts';
import type { Block } from './blocks/block.ts';
import { type TextLook, textLines } from './exports/text-blocks.ts';
import { cautions } from './sections/cautions.ts';
import { envelope } from './sections/envelope.ts';
import { inShort } from './sections/in-short.ts';
import { misses, stoppers } from './sections/misses.ts';
import { oneMiss } from './sections/one-miss.ts';
import { path } from './sections/path.ts';
import { ranking } from './sections/ranking.ts';
import { runnersUp } from './sections/runners-up.ts';
import { toDo } from './sections/to-do.ts';
import { unknowns } from './sections/unknowns.ts';

type Lines = (decision: Decision, look: TextLook) => readonly string[];

/** Blocks as lines of a screen. A chart that is drawn elsewhere stands beside a list that says the same. */
const lines = (blocks: readonly Block[], decision: Decision, look: TextLook): readonly string[] =>
  textLines(
    blocks.filter(({ kind }) => kind !== 'flowchart'),
    decision,
    look,
  );

/** The recommendation, its tightest checks, what it gives up, what it takes; what is open, what can hurt. */
export const overviewLines: Lines = (decision, look) =>
  lines(
    [inShort, runnersUp, toDo, stoppers, misses, unknowns, cautions].flatMap((section) => section(decision)),
    decision,
    look,
  );

/** How many arrangements came to each stage, and how those that were left were ranked. */
export const stagesLines: Lines = (decision, look) =>
  lines(
    [path, ranking, envelope].flatMap((section) => section(decision)),
    decision,
    look,
  );

/** One arrangement that did not pass: what fails, by how much, what can help. */
export const missLines = (decision: Decision, id: string, look: TextLook): readonly string[] =>
  lines(oneMiss(decision, id), decision, look);
