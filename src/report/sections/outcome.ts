import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, verdictSign, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { arrangementName, partName } from '../names.ts';
import { nothingAsksForFiveAxes } from '../nothing-asks.ts';
import { valueName } from '../value-name.ts';
import { OUTCOME_WORDS } from '../wording/verdicts.ts';
import { worthFindingSentence } from '../worth-finding.ts';
import { contenders } from './contenders.ts';
import { pieces, wayRound } from './pieces.ts';
import { tightest } from './tightest.ts';

type Line = readonly Inline[];

/** More names than this in one sentence are not read; the rest stand further down. */
const MOST_NAMES = 5;

/** The answer in plain words, before anything else. */
export function outcome(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  const said = at === undefined ? withoutRecommendation(decision) : recommendation(decision, at);
  return [heading(2, say`The answer`), ...said];
}

function recommendation(decision: Decision, at: ArrangementAt): readonly Block[] {
  const { arrangement, path } = at;
  const name = strong(arrangementName(decision, arrangement.id, ['recommended']));
  const coverage = number([...path, 'measures', 'coverage'], 'share');
  const price = number([...path, 'measures', 'price'], 'money', { ifNull: 'an amount that is not known' });
  const all = number([...path, 'money', 'capital', 'total'], 'money', {
    ifNull: 'an amount that is not known',
  });
  const budget =
    typeof decision.inputs.answers.money.budget === 'number'
      ? say`, of a budget of ${number(['inputs', 'answers', 'money', 'budget'], 'money')},`
      : [];
  return [
    paragraph(
      say`${name} is recommended. It costs ${price} to buy, ${all} with rigging and training${budget} and holds the work that makes up ${coverage} of the
        yearly five-axis hours.`,
    ),
    list([
      ...pieces(decision, at),
      ...wayRound(decision, at),
      ...coverageLines(decision, at),
      ...conditionLine(at),
      ...nextBest(decision),
      ...decidingLine(decision),
    ]),
    ...tightest(decision, at),
  ];
}

function conditionLine({ arrangement }: ArrangementAt): readonly Line[] {
  if (arrangement.verdict !== 'holds if') return [];
  return [say`It ${verdictSign('holds if')} what is listed under “What has to be done” is done.`];
}

/** Families that it does not hold, by name: nobody should find out after the order. */
function coverageLines(decision: Decision, { arrangement, path }: ArrangementAt): readonly Line[] {
  const names = (wanted: readonly string[]): readonly Inline[] =>
    enumerate(
      Object.entries(arrangement.parts)
        .filter(([, verdict]) => wanted.includes(verdict))
        .map(([name]) => partName(decision, name, [...path, 'parts', name])),
    );
  const held = names(['holds', 'holds if']);
  const failing = names(['fails']);
  const open = names(['open']);
  return [
    ...(held.length === 0 ? [] : [say`Parts that it holds: ${held}.`]),
    ...(failing.length === 0 ? [] : [say`Parts that it does not hold: ${failing}.`]),
    ...(open.length === 0 ? [] : [say`Parts that are still open: ${open}.`]),
  ];
}

function nextBest(decision: Decision): readonly Line[] {
  const next = decision.runnersUp[0];
  if (next === undefined) return [];
  const name = arrangementName(decision, next.id, ['runnersUp', 0, 'id']);
  const at = arrangementAt(decision, next.id);
  if (at === undefined) return [say`Next best: ${name}.`];
  const price = number([...at.path, 'measures', 'price'], 'money', { ifNull: 'a price that is not known' });
  const coverage = number([...at.path, 'measures', 'coverage'], 'share');
  return [say`Next best: ${name}, at ${price}, with ${coverage} of the hours.`];
}

/** What is not known and could still turn the result. */
function decidingLine(decision: Decision): readonly Line[] {
  const deciding = decidingNames(decision);
  return deciding.length === 0 ? [] : [say`Not known, and it could change this: ${enumerate(deciding)}.`];
}

const decidingNames = (decision: Decision): readonly Line[] =>
  limited(
    decision.unknowns.flatMap((unknown, index) =>
      unknown.decides ? [valueName(decision, unknown.answer, ['unknowns', index, 'answer'])] : [],
    ),
  );

const limited = (names: readonly Line[]): readonly Line[] =>
  names.length > MOST_NAMES ? [...names.slice(0, MOST_NAMES), say`others`] : names;

function withoutRecommendation(decision: Decision): readonly Block[] {
  if (nothingAsksForFiveAxes(decision)) return [paragraph(noNeed(decision))];
  const first = paragraph(say`${strong([words(OUTCOME_WORDS[decision.outcome])])} ${sentenceOf(decision)}`);
  return [first, ...contenders(decision)];
}

/** No rotary was missed here: none is needed. */
function noNeed(decision: Decision): Line {
  const names = enumerate(
    decision.threeAxis.map((name, index) => partName(decision, name, ['threeAxis', index])),
  );
  return say`${strong([words('Nothing in the parts mix asks for five axes.')])} Every family is cut from the top alone
    (${names}), and a three-axis machine does that. No rotary is recommended, because none is needed; name the sides
    that are cut if there are others.`;
}

function sentenceOf(decision: Decision): Line {
  const count = number(['count'], '');
  if (decision.outcome === 'none') {
    const none =
      decision.market === null
        ? say`All ${count} arrangements were judged`
        : say`None of ${count} arrangements passes`;
    return say`${none}; the nearest misses say what stopped each, and by how much.`;
  }
  const worth = worthFindingSentence(decision);
  const judged =
    decision.market === null
      ? say`${count} arrangements were judged.`
      : say`Of ${count} arrangements ${number(['market', 'looked'], '')} were judged one by one; “How it was decided” says
          what became of the others.`;
  return worth.length === 0 ? judged : say`${judged} ${worth}`;
}
