import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { type Candidate, candidatesOf } from '../../rules/arranging/candidates.ts';
import { calmShop } from './calm-shop.ts';
import type { DrawnKey } from './drawn-answers.ts';
import { BANDS, type Level, lineOf, type Recipe, type Side } from './recipe.ts';
import type { Seeded } from './seeded.ts';
import { lastThatHolds, type Moved, moveTo, type Probe } from './walk.ts';

/** A shop in which one rule decides. */
export interface FoundCase<Found extends Probe = Probe> {
  /** the arrangement, by its id */
  readonly on: string;
  /** the rows that it is made of */
  readonly catalog: Catalog;
  readonly answers: Answers;
  readonly probe: Found;
  /** the answer that was moved; null: what was drawn does it */
  readonly moved: DrawnKey | null;
}

/** What is looked for. */
export interface CaseWanted<Found extends Probe> {
  readonly recipe: Recipe;
  readonly side: Side;
  readonly level: Level;
  /** where the rule stands on these answers and rows; null: it says nothing there */
  readonly probe: (answers: Answers, rows: Catalog, on: string) => Found | null;
}

/** More shops than these are not judged for one exercise. */
const MOST_PROBES = 500;
/** So many shops are drawn for an arrangement. */
const DRAWS = 2;
/** Of what rows alone bring about the one that suits the level best is taken, out of so many. */
const AMONG = 3;

/** The first case, in a drawn order, in which the rule decides as it is wanted to; null: none was found. */
export function findCase<Found extends Probe>(
  catalog: Catalog,
  want: CaseWanted<Found>,
  draw: Seeded,
): FoundCase<Found> | null {
  const { recipe, side, level } = want;
  const suiting = candidatesOf(catalog).filter((each) => recipe.suits?.(each, side, level) ?? true);
  const byRows: FoundCase<Found>[] = [];
  let left = MOST_PROBES;
  const counted: CaseWanted<Found> = {
    ...want,
    probe: (...of) => {
      left -= 1;
      return left < 0 ? null : want.probe(...of);
    },
  };
  for (const candidate of draw.shuffled(suiting)) {
    const found = tryOn(candidate, catalog, counted, draw);
    if (left < 0) break;
    if (found === null) continue;
    if (lineOf(recipe, side) !== 'rows' || suitsLevel(found.probe.share, level)) return found;
    byRows.push(found);
    if (byRows.length >= AMONG) break;
  }
  return nearestTo(byRows, level);
}

function suitsLevel(share: number | null, level: Level): boolean {
  const [least, most] = BANDS[level];
  return share !== null && share >= least && share <= most;
}

const isOffTheLine = (share: number | null): boolean => share !== null && share >= BANDS[3][0];

function nearestTo<Found extends Probe>(
  some: readonly FoundCase<Found>[],
  level: Level,
): FoundCase<Found> | null {
  const [least, most] = BANDS[level];
  const off = ({ probe }: FoundCase<Found>): number => Math.abs((probe.share ?? 0) - (least + most) / 2);
  return some.toSorted((a, b) => off(a) - off(b))[0] ?? null;
}

function tryOn<Found extends Probe>(
  candidate: Candidate,
  catalog: Catalog,
  { recipe, side, level, probe }: CaseWanted<Found>,
  draw: Seeded,
): FoundCase<Found> | null {
  const rows = rowsOf(candidate, catalog);
  const { id: on } = candidate;
  const line = lineOf(recipe, side);
  const suits = (share: number | null): boolean => line === 'yes or no' || suitsLevel(share, level);
  const at = (answers: Answers): Found | null => probe(answers, rows, on);
  const found = ({ answers, probe: of }: Moved<Found>, moved: DrawnKey | null): FoundCase<Found> => ({
    on,
    catalog: rows,
    answers,
    probe: of,
    moved,
  });
  for (let turn = 0; turn < DRAWS; turn += 1) {
    const calm = calmShop(candidate, draw, draw.oneOf(recipe.bases));
    const first = at(calm);
    if (first === null || !first.alone) continue;
    const { answers, probe: base } =
      recipe.tight === true && first.side === 'yes'
        ? lastThatHolds('longestTool', { answers: calm, probe: first }, rows, at)
        : { answers: calm, probe: first };
    if (base.side === side && suits(base.share)) return found({ answers, probe: base }, null);
    const byRows = line === 'rows' && base.side === side ? found({ answers, probe: base }, null) : null;
    if (base.side === 'no' && recipe.eitherSide !== true) {
      if (byRows !== null) return byRows;
      continue;
    }
    for (const key of draw.shuffled(recipe.moves)) {
      const walk = { side, most: BANDS[level][1], at };
      const moved =
        moveTo(key, answers, rows, { ...walk, suits }) ??
        (line === 'rows' && byRows === null
          ? moveTo(key, answers, rows, { ...walk, suits: isOffTheLine })
          : null);
      if (moved !== null) return found(moved, key);
    }
    if (byRows !== null) return byRows;
  }
  return null;
}

/** The catalog with nothing in it but the machine and the rotary of an arrangement. */
const rowsOf = ({ machine, rotary }: Candidate, catalog: Catalog): Catalog => ({
  ...catalog,
  machines: [machine.row],
  rotaries: rotary.row === null ? [] : [rotary.row],
});
