import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, list, paragraph } from '../blocks/block.ts';
import { enumerate, say, strong, words } from '../blocks/inline.ts';
import { checkPart } from '../check-part.ts';
import {
  type ArrangementAt,
  arrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  worstFirst,
} from '../checks-at.ts';
import { explanationOf } from '../figures/explanations.ts';
import { arrangementName } from '../names.ts';
import { remediesLeft } from '../remedies-left.ts';
import { REMEDY_WORDS } from '../wording/remedies.ts';
import { STAGE_WORDS } from '../wording/stages.ts';
import { failure, flipsInWords } from './misses.ts';
import { settingOf } from './pieces.ts';

/** One arrangement that did not pass: where it dropped, every check that fails or is open, what can help. */
export function oneMiss(decision: Decision, id: string): readonly Block[] {
  const at = arrangementAt(decision, id);
  if (at === undefined) return [paragraph(say`That arrangement is not in this decision.`)];
  const { dropped } = at.arrangement;
  const name = strong(arrangementName(decision, id, [...at.path, 'id']));
  const where =
    dropped === null
      ? say`is not dropped`
      : say`dropped at ${words(STAGE_WORDS[dropped.stage].title.toLowerCase())}`;
  const against = worstFirst(checksAt(at).filter(({ result }) => !result.advisory));
  const failing = against.filter(({ result }) => result.verdict === 'fails');
  const open = against.filter(({ result }) => result.verdict === 'open');
  return [
    paragraph(say`${name}, judged with ${settingOf(at)}: ${where}.`),
    ...(failing.length === 0
      ? []
      : [
          paragraph(say`What fails, the worst first:`),
          told(decision, failing),
          ...drawn(decision, at, failing),
        ]),
    ...(open.length === 0 ? [] : [paragraph(say`What is open:`), told(decision, open)]),
    ...(failing.length + open.length === 0
      ? [paragraph(say`No check fails: too few of the hours are left.`)]
      : []),
    ...helps(decision, at, failing),
    ...wouldPass(decision, at),
  ];
}

/** The worst that a picture shows. */
function drawn(decision: Decision, at: ArrangementAt, failing: readonly CheckAt[]): readonly Block[] {
  const shown = failing.map((each) => explanationOf(decision, at, each)).find((each) => each !== null);
  return figureBlock(shown ?? null);
}

/** Each check once, at the part where it is worst; the other parts by their names. */
const told = (decision: Decision, checks: readonly CheckAt[]): Block =>
  list(
    firstOfEach(checks).map((worst) => {
      const others = checks
        .filter((each) => each !== worst && each.result.check === worst.result.check)
        .flatMap((each) => {
          const part = checkPart(decision, each);
          return part === null ? [] : [[part]];
        });
      const also = others.length === 0 ? [] : say`; also at ${enumerate(others)}`;
      return say`${failure(decision, worst, 'with its part')}${also}.`;
    }),
  );

/** The one number that would let it through; where there is none, that it takes more than one. */
function wouldPass(decision: Decision, at: ArrangementAt): readonly Block[] {
  if (at.arrangement.passes !== 'no') return [];
  const told = flipsInWords(decision, at);
  return [
    paragraph(
      told.length > 0
        ? told
        : say`No single number lets it through: more than one thing would have to change.`,
    ),
  ];
}

/** What can be changed, each once, the easiest of each check first. */
function helps(decision: Decision, at: ArrangementAt, failing: readonly CheckAt[]): readonly Block[] {
  const remedies = [...new Set(failing.flatMap((each) => remediesLeft(decision, at.arrangement, each)))];
  if (remedies.length === 0) return [];
  const named = remedies.map((remedy) => [words(REMEDY_WORDS[remedy])]);
  return [paragraph(say`What can help: ${enumerate(named, 'or')}.`)];
}
