import type { Decision, RunnerUp } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, words } from '../blocks/inline.ts';
import { arrangementAt } from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';

/** What else would do, where it fell behind, and what the recommendation gives up against it. */
export function runnersUp(decision: Decision): readonly Block[] {
  if (decision.recommended === null) return [];
  const title = heading(2, say`Runners-up, and what was given up`);
  if (decision.runnersUp.length === 0) {
    return [title, paragraph(say`No other arrangement passes, so nothing was given up for this one.`)];
  }
  return [title, list(decision.runnersUp.map((runnerUp, index) => line(decision, runnerUp, index)))];
}

function line(decision: Decision, runnerUp: RunnerUp, index: number): readonly Inline[] {
  const name = say`${strong(arrangementName(decision, runnerUp.id, ['runnersUp', index, 'id']))}${priceOf(decision, runnerUp)}`;
  const lost =
    runnerUp.lostOn === null
      ? say`was level to the end and comes second by name only`
      : say`fell behind on ${words(MEASURE_WORDS[runnerUp.lostOn].title.toLowerCase())}`;
  if (runnerUp.gives.length === 0) return say`${name} ${lost}. Against it nothing is given up.`;
  const gives = runnerUp.gives.map(({ measure }, place) => {
    const { title, unit } = MEASURE_WORDS[measure];
    const value = (whose: 'winner' | 'other'): Inline =>
      number(['runnersUp', index, 'gives', place, whose], unit);
    return say`${words(title.toLowerCase())} ${value('winner')} instead of ${value('other')}`;
  });
  return say`${name} ${lost}. What is given up against it: ${enumerate(gives)}.`;
}

function priceOf(decision: Decision, { id }: RunnerUp): readonly Inline[] {
  const at = arrangementAt(decision, id);
  if (at === undefined || at.arrangement.measures.price === null) return [];
  return say`, at ${number([...at.path, 'measures', 'price'], 'money')},`;
}
