import type { Decision, Remedy } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, joined, number, say, strong, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { checkPart } from '../check-part.ts';
import {
  type ArrangementAt,
  arrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  worstFirst,
} from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import { nothingAsksForFiveAxes } from '../nothing-asks.ts';
import { qualifier } from '../qualifier.ts';
import { remediesLeft } from '../remedies-left.ts';
import { unitOfValue, valueName } from '../value-name.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { REMEDY_WORDS } from '../wording/remedies.ts';
import { sentenceCase } from '../wording/sentence-case.ts';
import { STAGE_WORDS } from '../wording/stages.ts';
import { settingOf } from './pieces.ts';

/** More reasons than this are not read; the decision file has them all. */
const MOST_CHECKS = 3;
/** Of one check; the first is the easiest. */
const MOST_REMEDIES = 2;

/** What came closest without passing: what stopped it, by how much, and what would let it through. */
export function misses(decision: Decision): readonly Block[] {
  const items = decision.nearestMisses.map((id, index) => missLine(decision, id, index));
  if (items.length === 0) return [];
  return [heading(2, say`Nearest misses`), list(items)];
}

function missLine(decision: Decision, id: string, index: number): readonly Inline[] {
  const name = strong(arrangementName(decision, id, ['nearestMisses', index]));
  const at = arrangementAt(decision, id);
  if (at === undefined) return say`${name}.`;
  const why = failures(decision, at, MOST_CHECKS);
  return say`${name}, judged with ${settingOf(at)}: ${why}${flipsInWords(decision, at)}`;
}

/** What stopped an arrangement, the check that dropped it first, each with what it needs and is short by. */
export function failures(decision: Decision, at: ArrangementAt, most: number): readonly Inline[] {
  const { dropped } = at.arrangement;
  const stopping = firstOfEach(worstFirst(stoppingChecks(decision, at)));
  const isFirst = ({ result }: CheckAt): boolean => result.check === dropped?.check;
  const own = stopping.filter(isFirst);
  // it may have dropped at parts that need not be held: what it dropped at is told all the same
  const first = own.length > 0 ? own : firstOfEach(worstFirst(failing(at).filter(isFirst)));
  const ordered = [...first, ...stopping.filter((each) => !isFirst(each))];
  const stage =
    dropped === null ? [] : say`dropped at ${words(STAGE_WORDS[dropped.stage].title.toLowerCase())}; `;
  if (ordered.length === 0) return say`${stage}it does not cover enough of the hours.`;
  const told = joined(ordered.slice(0, most).map((each) => failure(decision, each, 'with its part')));
  const rest = words(ordered.length > most ? '; and others.' : '.');
  return say`${stage}${told}${rest}${whatHelps(decision, at, ordered.slice(0, most))}`;
}

const failing = (at: ArrangementAt): readonly CheckAt[] =>
  checksAt(at).filter(({ result }) => !result.advisory && result.verdict === 'fails');

/** What can be changed about the checks that are told, each remedy once. */
function whatHelps(decision: Decision, at: ArrangementAt, told: readonly CheckAt[]): readonly Inline[] {
  const remedies = new Set(
    told.flatMap((each) => remediesLeft(decision, at.arrangement, each).slice(0, MOST_REMEDIES)),
  );
  if (remedies.size === 0) return [];
  // what is too small for the work and too large for the building
  const isBoth = remedies.has('larger-machine') && remedies.has('smaller-machine');
  if (isBoth) remedies.delete('smaller-machine');
  const inWords = (remedy: Remedy): string =>
    isBoth && remedy === 'larger-machine' ? 'another machine' : REMEDY_WORDS[remedy];
  return say` What can help: ${enumerate(
    [...remedies].map((remedy) => [words(inWords(remedy))]),
    'or',
  )}.`;
}

/**
 * The checks that stand in the way: its own, and those of parts that must be held. Only where none of these
 * fails is it the parts that it does not cover, because then too few hours are left.
 */
function stoppingChecks(decision: Decision, at: ArrangementAt): readonly CheckAt[] {
  const musts = decision.inputs.answers.parts.filter(({ must }) => must).map(({ name }) => name);
  const against = checksAt(at).filter(
    ({ result }) => !result.advisory && (result.verdict === 'fails' || result.verdict === 'open'),
  );
  const hard = against.filter(({ result }) => result.part === null || musts.includes(result.part));
  const fails = ({ result }: CheckAt): boolean => result.verdict === 'fails';
  return [hard.filter(fails), against.filter(fails), against].find((checks) => checks.length > 0) ?? [];
}

/** One failing or open check with its numbers; alone where the row says already which part it is about. */
export function failure(decision: Decision, at: CheckAt, said: 'with its part' | 'alone'): readonly Inline[] {
  const { check, verdict } = at.result;
  const name = words(CHECK_WORDS[check].name);
  const part = said === 'with its part' ? checkPart(decision, at) : null;
  const where = part === null ? [name] : say`${name} at ${part}`;
  const { need, have, short } = checkNumbers(at);
  const counted = qualifier(decision, at);
  const qualified = counted === null ? [] : say` (${words(counted)})`;
  const numbers = say`${where}${qualified} ${verdictSign(verdict)}: needed ${need}, there is ${have}`;
  return verdict === 'open' || short.length === 0 ? numbers : say`${numbers}, short by ${short}`;
}

/** The smallest single changes that would have let it through. */
export function flipsInWords(decision: Decision, { arrangement, path }: ArrangementAt): readonly Inline[] {
  if (arrangement.flips.length === 0) return [];
  const told = arrangement.flips.map(({ change }, index) => {
    const at = [...path, 'flips', index];
    const unit = unitOfValue(decision, change);
    const from = number([...at, 'from'], unit);
    return say`${valueName(decision, change, [...at, 'change'])} at ${number([...at, 'to'], unit)} instead of ${from}`;
  });
  return say` It would pass with ${enumerate(told, 'or')}.`;
}

/** The checks that stopped most, where nothing passes: what to change first. */
export function stoppers(decision: Decision): readonly Block[] {
  if (decision.outcome !== 'none' || nothingAsksForFiveAxes(decision)) return [];
  const all = decision.stages.flatMap((stage, index) =>
    Object.entries(stage.dropped).map(([check, count]) => ({
      check,
      count: count ?? 0,
      index,
    })),
  );
  const most = all.sort((a, b) => b.count - a.count).filter(({ count }) => count > 0);
  if (most.length === 0) return [];
  const items = most.slice(0, MOST_CHECKS).map(({ check, index }) => {
    const { name, sentence } = CHECK_WORDS[check as keyof typeof CHECK_WORDS];
    return say`${strong([words(sentenceCase(name))])} stopped ${number(['stages', index, 'dropped', check], '')}. ${words(sentence)}`;
  });
  return [paragraph(say`What stopped most of them:`), list(items), paragraph(oneLimit(decision))];
}

/** What a single change of the rules would gain: where to begin, or that one change is not enough. */
function oneLimit({ singleLimits }: Decision): readonly Inline[] {
  if (singleLimits.length === 0)
    return say`No single one of them stands alone: whatever one check is dropped, nothing passes.`;
  const told = singleLimits.map(({ check }, index) => {
    const count = number(['singleLimits', index, 'lets'], '');
    return say`${words(CHECK_WORDS[check].name)} (alone it stops ${count})`;
  });
  return say`If only one thing can be changed, begin with ${enumerate(told, 'or')}.`;
}
