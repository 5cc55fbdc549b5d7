import type { Decision, Stability } from '../../rules/decision.ts';
import { type Block, type Cell, details, heading, paragraph, table } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import { BAR_HEADING, rangeBar } from '../range-bar.ts';
import { unitOfValue, valueName } from '../value-name.ts';

/** An answer that may move, and where it stands in the decision. */
interface Place {
  readonly range: Stability;
  readonly index: number;
}

/** How far each answer may move, the tightest first; where no end was found, it is named by itself. */
export function ranges(decision: Decision): readonly Block[] {
  const title = heading(2, say`How far each answer may move`);
  const why = whyNone(decision);
  if (why !== null) return [title, paragraph(why)];
  const places = tightestFirst(decision.stability);
  const bounded = places.filter(({ range }) => hasEnd(range));
  const free = places.filter(({ range }) => !hasEnd(range));
  return [
    title,
    paragraph(LEAD),
    ...(bounded.length === 0 ? [] : [rangesTable(decision, bounded.slice(0, MOST_AT_ONCE))]),
    ...(bounded.length <= MOST_AT_ONCE
      ? []
      : [
          details(say`The others, which have more room`, [
            rangesTable(decision, bounded.slice(MOST_AT_ONCE)),
          ]),
        ]),
    ...(free.length === 0
      ? []
      : [
          details(say`Answers that have room on either side, with no end found`, [
            paragraph(say`${enumerate(free.map((place) => nameOf(decision, place)))}.`),
          ]),
        ]),
  ];
}

/** More rows than these are folded away. */
const MOST_AT_ONCE = 20;

const MOST_IN_SHORT = 5;

/** The tightest of them; nothing where there is none. */
export function rangesInShort(decision: Decision): readonly Block[] {
  const bounded = tightestFirst(decision.stability).filter(({ range }) => hasEnd(range));
  if (whyNone(decision) !== null || bounded.length === 0) return [];
  const shown = bounded.slice(0, MOST_IN_SHORT);
  return [
    heading(2, say`How far each answer may move`),
    paragraph(shown.length === bounded.length ? LEAD : say`${LEAD} The whole report has all of them.`),
    rangesTable(decision, shown),
  ];
}

const LEAD = say`The recommendation stays the same while one of these answers lies between its two ends and all others are
  as they are. The tightest come first. An answer was moved down to half of what it is and up to twice as much (from zero, as
  far as “not sure” goes), no farther than its question takes; where no end was found on the way, none stands here. The
  ends were looked for in steps of a fiftieth and may be too near; a gap between them narrower than that may have been
  missed. Where “or more” or “or less” stands behind an end, the search was given up there: it may stay well beyond.`;

/** Why there is nothing to say; null where there is. */
function whyNone({ recommended, stability }: Decision): readonly Inline[] | null {
  if (recommended === null)
    return say`Nothing is recommended as things stand, so there is nothing that an answer could change by moving.`;
  if (stability.length > 0) return null;
  return say`No answer is a number that could be moved, or how far was not worked out.`;
}

const rangesTable = (decision: Decision, places: readonly Place[]): Block =>
  table(
    [
      [say`Answer`, 'left'],
      [say`Now`, 'right'],
      [say`From`, 'right'],
      [say`To`, 'right'],
      [[words(BAR_HEADING)], 'left'],
    ],
    places.map((place) => rowOf(decision, place)),
  );

function rowOf(decision: Decision, { range, index }: Place): readonly Cell[] {
  const unit = unitOfValue(decision, range.answer);
  const at = (key: keyof Stability, ifNull: string): Cell => [
    number(['stability', index, key], unit, { ifNull }),
  ];
  return [
    nameOf(decision, { range, index }),
    at('at', 'not known'),
    [...at('low', 'none found'), ...(range.givenUp.includes('low') ? say` or less` : [])],
    [...at('high', 'none found'), ...(range.givenUp.includes('high') ? say` or more` : [])],
    [words(rangeBar(range))],
  ];
}

const nameOf = (decision: Decision, { range, index }: Place): readonly Inline[] =>
  valueName(decision, range.answer, ['stability', index, 'answer']);

const hasEnd = ({ low, high }: Stability): boolean => low !== null || high !== null;

/** By the room to the nearer end, as a share of the answer; of an answer of zero, the room itself. */
const tightestFirst = (stability: Decision['stability']): readonly Place[] =>
  stability
    .map((range, index) => ({ range, index }))
    .sort((a, b) => roomOf(a.range) - roomOf(b.range) || a.index - b.index);

function roomOf({ at, low, high }: Stability): number {
  const less = low === null ? Number.POSITIVE_INFINITY : at - low;
  const more = high === null ? Number.POSITIVE_INFINITY : high - at;
  const room = Math.min(less, more);
  return Number.isFinite(room) ? room / (Math.abs(at) || 1) : Number.MAX_VALUE;
}
