import type { Decision } from '../rules/decision.ts';
import { type Block, figureBlock, heading, paragraph } from './blocks/block.ts';
import { say, words } from './blocks/inline.ts';
import { type TextLook, textLines } from './exports/text-blocks.ts';
import { marginsChart } from './figures/margins-chart.ts';
import { picturedArrangement } from './figures/pictured.ts';
import { tradeOffChart } from './figures/trade-off-chart.ts';
import { bigger } from './sections/bigger.ts';
import { bothWays } from './sections/both-ways.ts';
import { cautions } from './sections/cautions.ts';
import { classes, kindsInShort, routes } from './sections/classes.ts';
import { envelope } from './sections/envelope.ts';
import { features, optionsInShort } from './sections/features.ts';
import { inShort } from './sections/in-short.ts';
import { lifting } from './sections/lifting.ts';
import { misses, stoppers } from './sections/misses.ts';
import { money } from './sections/money.ts';
import { oneMiss } from './sections/one-miss.ts';
import { ownMill } from './sections/own-mill.ts';
import { path } from './sections/path.ts';
import { ranges } from './sections/ranges.ts';
import { ranking } from './sections/ranking.ts';
import { runnersUp } from './sections/runners-up.ts';
import { theShop } from './sections/the-shop.ts';
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
const overviewLines: Lines = (decision, look) =>
  lines(
    [inShort, runnersUp, toDo, stoppers, misses, unknowns, cautions].flatMap((section) => section(decision)),
    decision,
    look,
  );

/** Sections one below the other. Where there is nothing to say of them, why. */
const screen =
  (sections: readonly ((decision: Decision) => readonly Block[])[]): Lines =>
  (decision, look) => {
    const blocks = sections.flatMap((section) => section(decision));
    // the first heading would say again what stands over the screen
    const [first, ...rest] = blocks;
    if (first === undefined) return lines([nothingToSay(decision)], decision, look);
    return lines(first.kind === 'heading' ? rest : blocks, decision, look);
  };

const nothingToSay = ({ outcome }: Decision): Block => {
  const where = words(
    outcome === 'open' ? 'The answer names what to find out first.' : 'The answer says why.',
  );
  return paragraph(
    say`Nothing is recommended as things stand, so there is nothing to say here yet. ${where}`,
  );
};

/** Which kind of rotary suits and which way to five axes, with what speaks for and against each. */
const kindsLines: Lines = screen([kindsInShort, classes, routes, ownMill]);

/** What to order with the recommendation, the needed first. */
const optionsLines: Lines = screen([optionsInShort, features]);

/** Whether the building takes it, and how the rotary is lifted. */
const shopLines: Lines = screen([theShop, lifting]);

/** What it costs, what it brings, and when it has paid for itself. */
const moneyLines: Lines = screen([money]);

/** What was given up against the next best, and at which step of the ranking. */
const tradeOffLines: Lines = screen([runnersUp, unbeaten, bothWays, ranking, bigger]);

/** What nothing beats, drawn; beside the report it stands with the comparison. */
function unbeaten(decision: Decision): readonly Block[] {
  return figureBlock(tradeOffChart(decision));
}

/** How far each answer may move while the recommendation stays. */
const rangesLines: Lines = screen([ranges]);

/** How many arrangements came to each stage, and how those that were left were ranked. */
const stagesLines: Lines = (decision, look) =>
  lines(
    [path, ranking, margins, envelope].flatMap((section) => section(decision)),
    decision,
    look,
  );

/** What each check of the recommendation, or of what comes nearest to one, leaves over. */
function margins(decision: Decision): readonly Block[] {
  const at = picturedArrangement(decision);
  const chart = at === undefined ? null : marginsChart(decision, at);
  return chart === null ? [] : [heading(2, say`How tight each check is`), ...figureBlock(chart)];
}

/** One arrangement that did not pass: what fails, by how much, what can help. */
export const missLines = (decision: Decision, id: string, look: TextLook): readonly string[] =>
  lines(oneMiss(decision, id), decision, look);

/** Views of the result that are read as text. */
export const TEXT_VIEWS = {
  overview: overviewLines,
  kinds: kindsLines,
  options: optionsLines,
  shop: shopLines,
  money: moneyLines,
  'trade-offs': tradeOffLines,
  ranges: rangesLines,
  stages: stagesLines,
} as const satisfies Readonly<Record<string, Lines>>;
export type TextView = keyof typeof TEXT_VIEWS;

export const isTextView = (name: string): name is TextView => Object.hasOwn(TEXT_VIEWS, name);
