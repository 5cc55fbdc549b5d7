import { MEASURES } from '../questions/answers.ts';
import type { Decision, Verdict } from '../rules/decision.ts';
import { enumerate, type Inline, number, say, verdictSign, words } from './blocks/inline.ts';
import { textOf } from './blocks/inline-text.ts';
import type { Path } from './blocks/path.ts';
import { checkNumbers } from './check-numbers.ts';
import { checkPart } from './check-part.ts';
import {
  type ArrangementAt,
  arrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  ofCoveredParts,
  worstFirst,
} from './checks-at.ts';
import { plainAscii } from './exports/plain-ascii.ts';
import { arrangementName } from './names.ts';
import { qualifier } from './qualifier.ts';
import { CLASS_WORDS, CLEARANCE_WORDS, PLATE_WORDS } from './wording/arrangement.ts';
import { CHECK_WORDS } from './wording/checks.ts';
import { MEASURE_WORDS } from './wording/measures.ts';
import { sentenceCase } from './wording/sentence-case.ts';
import { STAGE_WORDS } from './wording/stages.ts';

/** Symbols spelled out where that is asked for, before anybody measures how wide it is. */
const written = (sentence: readonly Inline[], decision: Decision, ascii: boolean): string => {
  const text = textOf(sentence, decision, { ascii });
  return ascii ? plainAscii(text) : text;
};

/** An arrangement in a list: by its name, and what became of it. */
export interface ArrangementRow {
  readonly id: string;
  readonly name: string;
  readonly passes: 'yes' | 'no' | 'open';
  readonly verdict: Verdict;
  /** where it dropped and by what; how it stands where it did not */
  readonly fate: string;
}

/** Every arrangement that the decision lists, in its order. */
export function arrangementRows(decision: Decision, ascii: boolean): readonly ArrangementRow[] {
  return decision.arrangements.map(({ id, passes, verdict, dropped }, index) => ({
    id,
    name: written(arrangementName(decision, id, ['arrangements', index, 'id']), decision, ascii),
    passes,
    verdict,
    fate:
      dropped === null
        ? passes === 'yes'
          ? id === decision.recommended
            ? 'recommended'
            : 'passes'
          : 'open'
        : `${STAGE_WORDS[dropped.stage].title.toLowerCase()}: ${CHECK_WORDS[dropped.check].name}`,
  }));
}

/** A check as one row of a table, its margin as a share of what is needed for a bar. */
export interface CheckRow {
  /** where it stands in the decision */
  readonly path: Path;
  readonly name: string;
  readonly verdict: Verdict;
  readonly need: string;
  readonly have: string;
  readonly margin: string;
  /** margin ÷ need, the worse end; null where there is no such number */
  readonly share: number | null;
  /** about the arrangement itself, or a part that it holds: what the choice rests on */
  readonly held: boolean;
}

/**
 * What only the seller or a trade can say enters no verdict and comes after what does; what is plainly not asked for comes
 * last: it is no matter of margin.
 */
const askedFirst = (checks: readonly CheckAt[]): readonly CheckAt[] => {
  const rank = ({ result: { advisory, categorical, verdict, need } }: CheckAt): number =>
    categorical === true && verdict === 'holds' && need === 0 ? 2 : advisory ? 1 : 0;
  return checks.toSorted((a, b) => rank(a) - rank(b));
};

/** The building is asked once: of a check of the shop the part at which it is worst stands for all. */
const shopOnce = (checks: readonly CheckAt[]): readonly CheckAt[] => {
  const shop = new Set(firstOfEach(checks.filter(({ result }) => result.stage === 'shop')));
  return checks.filter((each) => each.result.stage !== 'shop' || shop.has(each));
};

/** All checks of an arrangement, the worst verdict first, then the least margin. */
export function checkRows(decision: Decision, id: string, ascii: boolean): readonly CheckRow[] {
  const at = arrangementAt(decision, id);
  if (at === undefined) return [];
  const write = (sentence: readonly Inline[]): string => written(sentence, decision, ascii);
  const held = new Set(ofCoveredParts(at).map(({ result }) => result));
  return askedFirst(shopOnce(worstFirst(checksAt(at)))).map((each) => {
    const { result } = each;
    const { need, have, margin } = checkNumbers(each);
    const part = checkPart(decision, each);
    const aside = [part === null ? [] : write([part]), qualifier(decision, each) ?? []].flat().join(', ');
    return {
      path: each.path,
      name: `${sentenceCase(CHECK_WORDS[result.check].name)}${aside === '' ? '' : ` (${aside})`}`,
      verdict: result.verdict,
      need: write(need),
      have: write(have),
      margin: write(margin),
      held: held.has(result),
      share: result.categorical === true ? null : worseEnd(result.relativeMargin),
    };
  });
}

const worseEnd = (share: number | readonly [number | null, number | null] | null): number | null =>
  typeof share === 'number' || share === null ? share : share[0];

/** One line of a comparison: what is compared, and one cell for each arrangement. */
export interface ComparedRow {
  readonly title: string;
  readonly cells: readonly string[];
}

/** Arrangements side by side: how each stands, what it is made of, what it measures. */
export function comparedRows(
  decision: Decision,
  ids: readonly string[],
  ascii: boolean,
): readonly ComparedRow[] {
  const all = ids.map((id) => arrangementAt(decision, id)).filter((at) => at !== undefined);
  const write = (sentence: readonly Inline[]): string => written(sentence, decision, ascii);
  const nameOf = ({ arrangement, path }: ArrangementAt): string =>
    write(arrangementName(decision, arrangement.id, [...path, 'id']));
  return [
    { title: '', cells: all.map(nameOf) },
    { title: 'Verdict', cells: all.map(({ arrangement }) => write([verdictSign(arrangement.verdict)])) },
    { title: 'Kind', cells: all.map(({ arrangement }) => CLASS_WORDS[arrangement.class].title) },
    { title: 'Added', cells: all.map((at) => write(addedTo(at))) },
    ...MEASURES.map((measure) => ({
      title: MEASURE_WORDS[measure].title,
      cells: all.map(({ path }) =>
        write([
          number([...path, 'measures', measure], MEASURE_WORDS[measure].unit, {
            ifNull: MEASURE_WORDS[measure].ifNull ?? 'not worked out',
          }),
        ]),
      ),
    })),
  ];
}

/** What is added to make it fit. */
function addedTo({ arrangement, path }: ArrangementAt): readonly Inline[] {
  const added = [
    ...arrangement.clearance.map((kind) => [words(CLEARANCE_WORDS[kind])]),
    ...arrangement.plates.map((plate, index) => {
      const thickness = number([...path, 'plates', index, 'thickness'], 'mm');
      return say`${words(PLATE_WORDS[plate.why])}, ${thickness} thick`;
    }),
  ];
  return added.length === 0 ? [words('nothing')] : enumerate(added);
}
