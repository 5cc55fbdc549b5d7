import type { Measure } from '../../questions/answers.ts';
import type { Decision, RankStep } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, words } from '../blocks/inline.ts';
import { arrangementName } from '../names.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';

/** More names than this in one sentence are not read; the decision file has them all. */
const MOST_NAMES = 6;

/** Where the ranking does not count all of a measure. */
const CAPPED: Readonly<Partial<Record<Measure, string>>> = {
  viseStations: ', counted up to the number that is wanted',
};

/** The order of what matters, a sentence a step. */
export function ranking(decision: Decision): readonly Block[] {
  if (decision.ranking.length === 0) return [];
  const band = number(['inputs', 'assume', 'band'], 'share');
  const order = enumerate(
    decision.inputs.answers.matters.map((measure) => words(MEASURE_WORDS[measure].title)),
  );
  return [
    heading(2, say`How the rest were ranked`),
    paragraph(
      say`What matters, in the order that was given: ${order}. At each step those stay that are within ${band} of the
        best, and the next measure decides among them. A best of zero, or one that is not known, lets only exact ties
        stay.`,
    ),
    list(
      decision.ranking.flatMap((step, index) => (saysNothing(step) ? [] : [stepLine(decision, step, index)])),
    ),
    ...passedOver(decision),
  ];
}

/** A measure that is not worked out, and on which nobody dropped. */
const saysNothing = ({ best, drops }: RankStep): boolean => best === null && drops.length === 0;

/** Measures that have no number: better said than skipped. */
function passedOver({ ranking: steps }: Decision): readonly Block[] {
  const silent = steps.filter(saysNothing).map(({ measure }) => [words(MEASURE_WORDS[measure].title)]);
  if (silent.length === 0) return [];
  return [
    paragraph(say`Passed over, because no number of it is worked out for any of them: ${enumerate(silent)}.`),
  ];
}

function stepLine(decision: Decision, step: RankStep, index: number): readonly Inline[] {
  const { title, means, unit, better } = MEASURE_WORDS[step.measure];
  const best = number(['ranking', index, 'best'], unit);
  const stays = named(decision, step, index, 'stays');
  const drops = named(decision, step, index, 'drops');
  const left = step.stays.length === 1 ? say`Only ${stays} stays` : say`${stays} stay`;
  const gone =
    step.drops.length === 0
      ? say`none drops out`
      : say`${drops} ${words(step.drops.length === 1 ? 'drops' : 'drop')} out`;
  return say`${strong([words(title)])} (${words(means)}${words(CAPPED[step.measure] ?? '')}; ${words(better)} is better): the best is ${best}. ${left}; ${gone}.`;
}

function named(
  decision: Decision,
  step: RankStep,
  index: number,
  which: 'stays' | 'drops',
): readonly Inline[] {
  const names = step[which].map((id, place) =>
    arrangementName(decision, id, ['ranking', index, which, place]),
  );
  const shown = names.length > MOST_NAMES ? [...names.slice(0, MOST_NAMES), say`others`] : names;
  return enumerate(shown);
}
