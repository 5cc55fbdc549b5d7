import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { CheckId } from '../checks/ids.ts';
import type { Unknown } from '../decision.ts';
import { runningOf, type Standing } from '../standing.ts';
import { unknownsOf } from '../weighing/unknowns.ts';
import { narrowings } from './narrowing.ts';

/** An answer that is not known, and that can still change the result. */
export interface DecidingAnswer {
  /** its path. Example: 'shop.ceiling' */
  readonly answer: string;
  /** arrangements that may win and that it bears on */
  readonly touches: number;
  /** how many of them it is expected to drop, a share of one each */
  readonly drops: number;
  /** it can hardly drop any of them, only move their order */
  readonly ordersOnly: boolean;
}

/** What is worth asking while so much is known. */
export interface Asking {
  readonly outcome: Standing['outcome'];
  /** arrangements that may win */
  readonly left: number;
  /** what is expected to narrow the field most comes first; none: no answer can change the result */
  readonly answers: readonly DecidingAnswer[];
  /**
   * Checks that are open where one of these may win. An open check names what it hangs on most: where that stays open,
   * another answer that it reads may decide it.
   */
  readonly openChecks: readonly CheckId[];
}

/**
 * Which answers can still change the result, the one to ask for first first. Sound as far as the rules are: what is not
 * named leaves the result as it is, whatever it turns out to be.
 */
export function askingOf(answers: Answers, catalog: Catalog): Asking {
  const standing = runningOf(answers, catalog);
  const { outcome, ranking } = standing;
  const unknowns = unknownsIn(standing, answers);
  const deciding = new Set(unknowns.filter(({ ask }) => ask === 'you').map(({ answer }) => answer));
  const open = unknowns.filter(({ decides }) => decides).flatMap(({ checks }) => checks);
  const known = narrowings(standing).filter(({ answer }) => deciding.delete(answer));
  const rest = [...deciding].map((answer) => ({ answer, touches: 0, drops: 0 }));
  const asked = [...known, ...rest];
  return {
    outcome,
    left: ranking.contenders.length,
    answers: asked.map((each) => ({ ...each, ordersOnly: each.drops <= HARDLY * each.touches })),
    openChecks: [...new Set(open)],
  };
}

/** A chance to be dropped that is none: what only orders the field counts as much. */
const HARDLY = 0.02;

/** What is not known of the arrangements that may win. */
export function unknownsIn(
  { ranking, judged, outcome, world }: Standing,
  { matters }: Answers,
): readonly Unknown[] {
  const contenders = new Set(ranking.contenders);
  const reading = judged.filter(({ id }) => contenders.has(id));
  return unknownsOf(reading, contenders, outcome === 'open', world, matters);
}
