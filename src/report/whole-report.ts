import type { Decision } from '../rules/decision.ts';
import type { Block } from './blocks/block.ts';
import { nothingAsksForFiveAxes } from './nothing-asks.ts';
import { acceptance } from './sections/acceptance.ts';
import { answers } from './sections/answers.ts';
import { arrangement } from './sections/arrangement.ts';
import { assumptions } from './sections/assumptions.ts';
import { bigger } from './sections/bigger.ts';
import { bothWays } from './sections/both-ways.ts';
import { byRotary } from './sections/by-rotary.ts';
import { cautions, documents } from './sections/cautions.ts';
import { checks } from './sections/checks.ts';
import { classes, routes } from './sections/classes.ts';
import { compared } from './sections/compared.ts';
import { envelope } from './sections/envelope.ts';
import { families } from './sections/families.ts';
import { features } from './sections/features.ts';
import { halfPage } from './sections/half-page.ts';
import { laterCost } from './sections/later-cost.ts';
import { lifting, liftingInShort } from './sections/lifting.ts';
import { misses, stoppers } from './sections/misses.ts';
import { money, moneyInShort } from './sections/money.ts';
import { nearestDrawn } from './sections/nearest-drawn.ts';
import { outcome } from './sections/outcome.ts';
import { ownMill } from './sections/own-mill.ts';
import { path } from './sections/path.ts';
import { preamble, title } from './sections/preamble.ts';
import { quoteSheetsForSellers } from './sections/quote-sheets.ts';
import { ranges, rangesInShort } from './sections/ranges.ts';
import { ranking } from './sections/ranking.ts';
import { rejected } from './sections/rejected.ts';
import { runAgain } from './sections/run-again.ts';
import { runnersUp } from './sections/runners-up.ts';
import { siteSheet } from './sections/site-sheet.ts';
import { sources } from './sections/sources.ts';
import { toDo } from './sections/to-do.ts';
import { unknowns, unknownsInFull } from './sections/unknowns.ts';

type Section = (decision: Decision) => readonly Block[];

/** First what to do and what it rests on, then how it came about, then what it was made from. */
const SECTIONS: readonly Section[] = [
  title,
  halfPage,
  preamble,
  outcome,
  toDo,
  runnersUp,
  compared,
  ranges,
  unknowns,
  unknownsInFull,
  cautions,
  path,
  stoppers,
  misses,
  nearestDrawn,
  byRotary,
  ranking,
  families,
  envelope,
  bigger,
  classes,
  routes,
  ownMill,
  arrangement,
  bothWays,
  laterCost,
  lifting,
  money,
  features,
  checks,
  rejected,
  siteSheet,
  quoteSheetsForSellers,
  acceptance,
  documents,
  answers,
  assumptions,
  sources,
  runAgain,
];

/** Everything that there is to say: for a reader who checks it line by line. */
export const wholeReport: Section = (decision) =>
  inOrder(nothingAsksForFiveAxes(decision) ? WITHOUT_ROTARY : SECTIONS, decision);

/** Where nothing asks for a rotary, nothing is said about rotaries. */
const WITHOUT_ROTARY: readonly Section[] = [
  title,
  preamble,
  outcome,
  cautions,
  families,
  documents,
  answers,
  assumptions,
  runAgain,
];

/** What fits on a terminal: the answer, what it takes, what it gives up, what is open, what can hurt. */
export const shortReport: Section = (decision) =>
  inOrder(
    [
      outcome,
      toDo,
      liftingInShort,
      moneyInShort,
      runnersUp,
      rangesInShort,
      stoppers,
      misses,
      unknowns,
      cautions,
    ],
    decision,
  );

/** What stands right behind the answer, because it is what has to be done next. */
const NEXT: Readonly<Record<Decision['outcome'], readonly Section[]>> = {
  recommended: [],
  none: [stoppers, misses],
  open: [unknowns, unknownsInFull],
};

function inOrder(sections: readonly Section[], decision: Decision): readonly Block[] {
  const isNext = (section: Section): boolean => NEXT[decision.outcome].includes(section);
  const after = sections.indexOf(outcome) + 1;
  const [opening, rest] = [sections.slice(0, after), sections.slice(after)];
  const ordered = [...opening, ...rest.filter(isNext), ...rest.filter((section) => !isNext(section))];
  return ordered.flatMap((section) => section(decision));
}
