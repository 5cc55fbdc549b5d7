import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { checkPart } from '../check-part.ts';
import {
  type ArrangementAt,
  arrangementAt,
  type CheckAt,
  ofCoveredParts,
  tightestChecks,
} from '../checks-at.ts';
import { explanationOf } from '../figures/explanations.ts';
import { arrangementName, partName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
import { MEASURE_TO_TAKE_WORDS } from '../wording/measures-to-take.ts';
import { sentenceCase } from '../wording/sentence-case.ts';
import { outcome } from './outcome.ts';
import { pieces } from './pieces.ts';

type Line = readonly Inline[];

const SHOWN = 3;

/** The answer on one screen: what is recommended, where it is tightest, what it gives up; then what it is made of. */
export function inShort(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  // the screen has its title already
  if (at === undefined) return outcome(decision).filter(({ kind }) => kind !== 'heading');
  const checks = tightestChecks(at, SHOWN);
  return [
    paragraph(recommendation(decision, at)),
    ...(checks.length === 0
      ? []
      : [paragraph(say`Where it is tightest:`), list(checks.map((each) => checkLine(decision, each)))]),
    paragraph(say`What it gives up, and what it asks for:`),
    list([...notHeld(decision, at), nextBest(decision), ...condition(at)]),
    ...drawn(decision, at, checks),
    heading(2, say`What it is made of`),
    list(pieces(decision, at)),
  ];
}

/** The tightest check in its picture. */
function drawn(decision: Decision, at: ArrangementAt, [first]: readonly CheckAt[]): readonly Block[] {
  const figure = first === undefined ? null : explanationOf(decision, at, first);
  return figure === null ? [] : [paragraph(say`The tightest of it, drawn:`), ...figureBlock(figure)];
}

function recommendation(decision: Decision, { arrangement, path }: ArrangementAt): Line {
  const name = strong(arrangementName(decision, arrangement.id, ['recommended']));
  const coverage = number([...path, 'measures', 'coverage'], 'share');
  const price = number([...path, 'measures', 'price'], 'money', { ifNull: 'an amount that is not known' });
  const budget =
    typeof decision.inputs.answers.money.budget === 'number'
      ? say`, of a budget of ${number(['inputs', 'answers', 'money', 'budget'], 'money')}`
      : [];
  return say`${name} is recommended. It costs ${price}${budget}, and holds ${coverage} of the yearly five-axis hours.`;
}

function checkLine(decision: Decision, each: CheckAt): Line {
  const { result, path } = each;
  const { need, have, margin } = checkNumbers(each);
  const name = words(sentenceCase(CHECK_WORDS[result.check].name));
  const part = checkPart(decision, each);
  const where = part === null ? [] : say` (${part})`;
  const share = number([...path, 'relativeMargin'], 'share');
  return say`${name}${where}: needed ${need}, there is ${have}, margin ${margin} (${share})`;
}

function notHeld(decision: Decision, { arrangement, path }: ArrangementAt): readonly Line[] {
  const names = (verdict: string): Line =>
    enumerate(
      Object.entries(arrangement.parts)
        .filter(([, own]) => own === verdict)
        .map(([name]) => partName(decision, name, [...path, 'parts', name])),
    );
  const [failing, open] = [names('fails'), names('open')];
  return [
    failing.length === 0 ? say`It holds every part that is known.` : say`It does not hold ${failing}.`,
    ...(open.length === 0 ? [] : [say`Still open: ${open}.`]),
  ];
}

/** What the next best would have had more of. */
function nextBest(decision: Decision): Line {
  const [next] = decision.runnersUp;
  if (next === undefined) return say`No other arrangement passes.`;
  const at = arrangementAt(decision, next.id);
  const price =
    at === undefined || at.arrangement.measures.price === null
      ? []
      : say`, at ${number([...at.path, 'measures', 'price'], 'money')}`;
  const name = say`${arrangementName(decision, next.id, ['runnersUp', 0, 'id'])}${price}`;
  const gives = next.gives.map(({ measure }, place) => {
    const { title, unit } = MEASURE_WORDS[measure];
    const value = (whose: 'winner' | 'other'): Inline =>
      number(['runnersUp', 0, 'gives', place, whose], unit);
    return say`${words(title.toLowerCase())} ${value('winner')} instead of ${value('other')}`;
  });
  return gives.length === 0
    ? say`Against the next best, ${name}, it gives up nothing.`
    : say`Against the next best, ${name}: ${enumerate(gives)}.`;
}

/** What has to be done before it holds; what that is for and what it costs stands further down. */
function condition(at: ArrangementAt): readonly Line[] {
  const measures = new Set(
    ofCoveredParts(at).flatMap(({ result }) =>
      result.verdict === 'holds if' && result.easing !== null ? [result.easing.measure] : [],
    ),
  );
  if (measures.size === 0) return [];
  const titles = [...measures].map((each) => [words(MEASURE_TO_TAKE_WORDS[each].title.toLowerCase())]);
  return [say`It ${verdictSign('holds if')} this is seen to: ${enumerate(titles)}.`];
}
