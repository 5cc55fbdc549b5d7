import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { CheckId } from '../checks/ids.ts';
import type { Unknown } from '../decision.ts';
import { isSameResult, runningOf, type Standing, standingOfFew } from '../standing.ts';
import type { Judged } from '../weighing/judged.ts';
import { marginGaps } from '../weighing/margin-gaps.ts';
import { unknownsOf } from '../weighing/unknowns.ts';
import { answersIn, type Bearing, bearingsOn } from './bearing.ts';
import { hedged, unnamed } from './hedged.ts';
import { inTheirOrder } from './in-their-order.ts';
import { likely } from './likely.ts';
import { narrowings } from './narrowing.ts';

/** An answer that is not known, and that can still change the result. */
export interface DecidingAnswer {
  /** its path without indices. Example: 'shop.ceiling' */
  readonly answer: string;
  /** arrangements that may win and that it bears on */
  readonly touches: number;
  /** how many of them it is expected to drop, a share of one each */
  readonly drops: number;
  /** it can drop none of them, only move their order */
  readonly ordersOnly: boolean;
}

/** What is worth asking while so much is known. */
export interface Asking {
  readonly outcome: Standing['outcome'];
  /** arrangements that may win, of those that were looked at */
  readonly left: number;
  /** of so many that may pass only a few were looked at; null: all of them were */
  readonly outOf: number | null;
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
 * named leaves the result as it is, whatever it turns out to be. `unasked`: paths of what nobody was asked yet, which may
 * be anything even where something is taken for it meanwhile. What matters most is asked once one is sure to pass and is
 * not the only one that may win: before, nothing is put in order.
 */
export function askingOf(answers: Answers, catalog: Catalog, unasked: readonly string[] = []): Asking {
  const waiting = new Set(unasked);
  const guarded = hedged(answers, waiting);
  const few = standingOfFew(guarded, catalog);
  const byFew = few === null ? null : worthAsking(few, guarded, catalog, waiting);
  if (few !== null && byFew !== null && asks(byFew, unasked)) return { ...byFew, outOf: few.of };
  const standing = runningOf(guarded, catalog);
  const byAll = worthAsking(standing, guarded, catalog, waiting);
  if (byAll !== null && asks(byAll, unasked)) return { ...byAll, outOf: null };
  const { outcome } = standing;
  const left = standing.ranking.contenders.length;
  // what is taken where nobody was asked gives the same, or is asked after all
  const names = unnamed(waiting);
  const plain = names.length === 0 ? standing : runningOf(answers, catalog, idsOf(standing.running));
  if (isSameResult(plain, standing)) return { ...(byAll ?? { ...NOTHING, outcome, left }), outOf: null };
  const ordering = names.map((answer) => orders(answer, left));
  return { ...NOTHING, outcome: 'open', left, outOf: null, answers: ordering };
}

/** Is one of these answers asked for, or a detail of what is? Where nobody says what is open, all are taken to be. */
const asks = ({ answers }: Pick<Asking, 'answers'>, unasked: readonly string[]): boolean =>
  unasked.length === 0 || answers.some(({ answer }) => unasked.some((open) => isWithin(answer, open)));

const isWithin = (path: string, other: string): boolean =>
  path === other || path.startsWith(`${other}.`) || other.startsWith(`${path}.`);

/** What can still change the result, by how these stand; null: nothing, as far as they show. */
function worthAsking(
  standing: Standing,
  answers: Answers,
  catalog: Catalog,
  waiting: ReadonlySet<string>,
): Omit<Asking, 'outOf'> | null {
  const { field, outcome, ranking } = standing;
  const found = outcome === 'open' ? decidingIn(standing, answers, catalog) : NOTHING;
  if (waiting.has('matters') && field.length > 1 && field.some(({ surely }) => surely)) {
    const matters = orders('matters', field.length);
    return { ...found, outcome: 'open', left: field.length, answers: [matters, ...found.answers] };
  }
  return found.answers.length === 0 ? null : { ...found, outcome, left: ranking.contenders.length };
}

const NOTHING: Pick<Asking, 'answers' | 'openChecks'> = { answers: [], openChecks: [] };

const orders = (answer: string, touches: number): DecidingAnswer => ({
  answer,
  touches,
  drops: 0,
  ordersOnly: true,
});

const idsOf = (all: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(all.map(({ id }) => id));

/** The same catalog under another name: what is kept for the one does not push out what is kept for the other. */
const twins = new WeakMap<Catalog, Catalog>();

function twinOf(catalog: Catalog): Catalog {
  const twin = twins.get(catalog) ?? { ...catalog };
  twins.set(catalog, twin);
  return twin;
}

function decidingIn(
  standing: Standing,
  answers: Answers,
  catalog: Catalog,
): Pick<Asking, 'answers' | 'openChecks'> {
  const contenders = mayWin(standing);
  const bearings = bearingsOf(contenders, standing);
  const all = [...bearings.values()].flat();
  const touched = touchedBy([...bearings.values()]);
  if (touched.size === 0) return NOTHING;
  const usually = runningOf(likely(answers), twinOf(catalog), idsOf(contenders));
  const drops = narrowings({ contenders, usually, bearings }, answers);
  const found = [...touched].map(([answer, { touches, ordersOnly }]) => ({
    answer,
    touches,
    drops: drops.get(answer) ?? 0,
    ordersOnly,
  }));
  return {
    answers: inTheirOrder(found, answers).toSorted((a, b) => b.drops - a.drops),
    openChecks: [...new Set(all.flatMap(({ check }) => (check === null ? [] : [check])))],
  };
}

/** By the id of the arrangement; where nothing else tells them apart, what their room to spare hangs on. */
function bearingsOf(
  contenders: readonly Judged[],
  standing: Standing,
): ReadonlyMap<string, readonly Bearing[]> {
  const bearings = new Map(contenders.map((each) => [each.id, bearingsOn(each, standing)]));
  if (contenders.length < 2 || [...bearings.values()].some((each) => each.length > 0)) return bearings;
  return new Map(
    contenders.map((each) => [
      each.id,
      answersIn(marginGaps(each)).map((answer) => ({ answer, on: 'margin', check: null })),
    ]),
  );
}

interface Touched {
  readonly touches: number;
  readonly ordersOnly: boolean;
}

/** By the answer: on how many arrangements it bears, and whether none of them may pass or fail by it. */
function touchedBy(all: readonly (readonly Bearing[])[]): ReadonlyMap<string, Touched> {
  const touched = new Map<string, Touched>();
  for (const bearings of all) {
    const passing = new Set(bearings.flatMap(({ answer, on }) => (on === 'passing' ? [answer] : [])));
    for (const answer of new Set(bearings.map((each) => each.answer))) {
      const { touches, ordersOnly } = touched.get(answer) ?? { touches: 0, ordersOnly: true };
      touched.set(answer, { touches: touches + 1, ordersOnly: ordersOnly && !passing.has(answer) });
    }
  }
  return touched;
}

function mayWin({ ranking, judged }: Standing): readonly Judged[] {
  const contenders = new Set(ranking.contenders);
  return judged.filter(({ id }) => contenders.has(id));
}

/** What is not known of the arrangements that may win. */
export function unknownsIn(standing: Standing, { matters }: Answers): readonly Unknown[] {
  const { ranking, outcome, world } = standing;
  return unknownsOf(mayWin(standing), new Set(ranking.contenders), outcome === 'open', world, matters);
}
