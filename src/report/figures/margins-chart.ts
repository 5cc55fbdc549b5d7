import type { Bar, BarForm } from '../../drawing/bars.ts';
import { roundLength } from '../../drawing/round-length.ts';
import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { Bounded, Decision, Verdict } from '../../rules/decision.ts';
import { type Inline, joined, number, say, verdictSign, words } from '../blocks/inline.ts';
import { numberText } from '../blocks/value-text.ts';
import { checkPart } from '../check-part.ts';
import {
  type ArrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  ofCoveredParts,
  worstFirst,
} from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { VERDICT_WORDS } from '../wording/verdicts.ts';
import { drawnText, type Figure } from './figure.ts';

const FORMS: Readonly<Record<Verdict, BarForm>> = {
  holds: 'met',
  'holds if': 'conditional',
  open: 'undecided',
  fails: 'missed',
};

/** As much again as is needed: what has more left over is named and not drawn, or the tight ones would be too short to see. */
const MOST = 1;
/** A range that goes farther down is drawn without an end. */
const LEAST = -1;
const STEPS = [-3, -2, -1, -0.5, 0, 0.5, 1];

type Ends = readonly [low: number | null, high: number | null];

/** A number from zero, a range from its one end to the other. */
const endsOf = (share: Bounded): Ends => (typeof share === 'number' ? [0, share] : (share ?? [null, null]));

/** The end that is worst for us. */
const worst = (share: Bounded): number => (typeof share === 'number' ? share : share?.[0]) ?? -Infinity;

/**
 * What each check of an arrangement leaves over as a share of what it needs, at the part where it is worst, the tightest
 * first, and last what somebody has to be asked: of the parts that it holds, or of all where it does not surely pass. Null where no check has such a number.
 */
export function marginsChart(decision: Decision, at: ArrangementAt): Figure | null {
  const asked = at.arrangement.passes === 'yes' ? ofCoveredParts(at) : checksAt(at);
  const found = firstOfEach(worstFirst(asked)).filter(({ result }) => isMeasured(result));
  const unbounded = found.filter(({ result }) => isUnbounded(result.relativeMargin));
  const bounded = found.filter((each) => !unbounded.includes(each));
  const plenty = bounded.filter(({ result }) => worst(result.relativeMargin) > MOST);
  const drawn = bounded
    .filter((each) => !plenty.includes(each))
    .toSorted(
      (a, b) =>
        Number(a.result.advisory) - Number(b.result.advisory) ||
        compare(worst(a.result.relativeMargin), worst(b.result.relativeMargin)),
    );
  if (drawn.length === 0) return null;
  const rows = drawn.map((each) => barOf(decision, each));
  const least = Math.min(...rows.flatMap(({ from, to }) => [from ?? 0, to ?? 0]));
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const said = say`What each check of ${name} leaves over, as a share of what it needs, the tightest first. ${joined(
    drawn.map((each) => rowTold(decision, each)),
  )}.`;
  const named = (checks: readonly CheckAt[]): readonly Inline[] =>
    joined(checks.map((each) => nameOf(decision, each)));
  return {
    words: said,
    scene: {
      name: 'margins',
      title: drawnText(say`What each check of ${name} leaves over`, decision),
      description: drawnText(said, decision),
      panels: [
        {
          title: 'Right of the line is left over, left of it is missing',
          shapes: [],
          marks: [],
          dimensions: [],
          labels: [],
          bars: {
            rows,
            ticks: stepsFrom(least).map((step) => ({ at: step, text: formatQuantity(step, 'share') })),
          },
        },
      ],
      toScale: false,
      notDrawn: [
        ...(plenty.length === 0
          ? []
          : [
              drawnText(say`More than as much again is left over, so not drawn: ${named(plenty)}.`, decision),
            ]),
        ...(unbounded.length === 0
          ? []
          : [drawnText(say`Nothing bounds it, so not drawn: ${named(unbounded)}.`, decision)]),
      ],
    },
  };
}

/** Numbers on the axis, from the first that is no more than the least. */
function stepsFrom(least: number): readonly number[] {
  if (least < -3) return [-roundLength(-least), 0, 1];
  const first = STEPS.findLastIndex((step) => step <= least);
  return STEPS.slice(Math.min(first, STEPS.indexOf(0)));
}

/** A yes or no is no matter of margin, nor is what is not asked for. */
const isMeasured = ({ categorical, verdict, need, have }: CheckAt['result']): boolean =>
  categorical !== true && !(verdict === 'holds' && (need === null || have === null));

const isUnbounded = (share: Bounded): boolean =>
  share === null || (typeof share === 'object' && share[0] === null && share[1] === null);

/** Plain subtraction would make NaN of two infinities. */
const compare = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

function barOf(decision: Decision, each: CheckAt): Bar {
  const { result } = each;
  const [from, to] = endsOf(result.relativeMargin);
  const path = [...each.path, 'relativeMargin'];
  return {
    name: drawnText(nameOf(decision, each), decision),
    text: numberText(number(path, 'share'), decision),
    word: VERDICT_WORDS[result.verdict].word,
    form: FORMS[result.verdict],
    path,
    // beyond the chart a range goes on without an end
    from: from !== null && from < LEAST ? null : from,
    to: to === null || to > MOST ? null : to,
  };
}

function nameOf(decision: Decision, each: CheckAt): readonly Inline[] {
  const name = words(CHECK_WORDS[each.result.check].name);
  const part = checkPart(decision, each);
  const aside = [...(part === null ? [] : [part]), ...(each.result.advisory ? [words('to be asked')] : [])];
  return aside.length === 0 ? [name] : say`${name} (${joined(aside, ', ')})`;
}

const rowTold = (decision: Decision, each: CheckAt): readonly Inline[] =>
  say`${nameOf(decision, each)}: ${number([...each.path, 'relativeMargin'], 'share')} (${verdictSign(each.result.verdict)})`;
