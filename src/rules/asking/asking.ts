import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { type Standing, standingOf } from '../standing.ts';
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
}

/**
 * Which answers can still change the result, the one to ask for first first. Sound as far as the rules are: what is not
 * named leaves the result as it is, whatever it turns out to be.
 */
export function askingOf(answers: Answers, catalog: Catalog): Asking {
  const standing = standingOf(answers, catalog);
  const { outcome, ranking } = standing;
  const deciding = new Set(openTo(standing, answers));
  const known = narrowings(standing).filter(({ answer }) => deciding.delete(answer));
  const rest = [...deciding].map((answer) => ({ answer, touches: 0, drops: 0 }));
  const asked = [...known, ...rest];
  return {
    outcome,
    left: ranking.contenders.length,
    answers: asked.map((each) => ({ ...each, ordersOnly: each.drops <= HARDLY * each.touches })),
  };
}

/** A chance to be dropped that is none: what only orders the field counts as much. */
const HARDLY = 0.02;

/** Paths that somebody can still say something about, of the arrangements that may win. */
function openTo({ ranking, judged, outcome, world }: Standing, { matters }: Answers): readonly string[] {
  const contenders = new Set(ranking.contenders);
  const reading = judged.filter(({ id }) => contenders.has(id));
  return unknownsOf(reading, contenders, outcome === 'open', world, matters)
    .filter(({ ask }) => ask === 'you')
    .map(({ answer }) => answer);
}
