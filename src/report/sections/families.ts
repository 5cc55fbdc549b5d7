import type { Decision, Verdict } from '../../rules/decision.ts';
import { type Block, type Cell, heading, paragraph, table } from '../blocks/block.ts';
import { enumerate, type Inline, joined, number, say, verdictSign, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt, checksAt, firstOfEach, worstFirst } from '../checks-at.ts';
import { partName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { failure } from './misses.ts';

/** More reasons than this in one cell are not read; the checks have them all. */
const MOST_CHECKS = 3;

/** Which families the recommendation holds, which not and why, and which are three-axis work anyway. */
export function families(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  const judged = Object.keys(decision.hours).filter((name) => !decision.threeAxis.includes(name));
  const rows = judged.map((name): readonly Cell[] => [
    [partName(decision, name, ['hours', name])],
    [number(['hours', name], 'h')],
    ...(at === undefined ? [] : [verdictCell(at, name), reasons(decision, at, name)]),
  ]);
  if (rows.length === 0 && decision.threeAxis.length === 0) return [];
  return [
    heading(2, say`Families of parts`),
    ...(rows.length === 0 ? [] : [table([...columns(at !== undefined)], rows)]),
    ...threeAxis(decision),
  ];
}

function columns(withVerdict: boolean): readonly (readonly [Cell, 'left' | 'right'])[] {
  const first = [
    [say`Family`, 'left'],
    [say`Hours a year`, 'right'],
  ] as const;
  if (!withVerdict) return first;
  return [...first, [say`On the recommendation`, 'left'], [say`What it hangs on`, 'left']];
}

const verdictOf = ({ arrangement }: ArrangementAt, name: string): Verdict | undefined =>
  Object.hasOwn(arrangement.parts, name) ? arrangement.parts[name] : undefined;

function verdictCell(at: ArrangementAt, name: string): Cell {
  const verdict = verdictOf(at, name);
  return verdict === undefined ? [] : [verdictSign(verdict)];
}

/** The checks that make the verdict what it is; a failing one with its numbers. */
function reasons(decision: Decision, at: ArrangementAt, name: string): readonly Inline[] {
  const verdict = verdictOf(at, name);
  if (verdict === undefined || verdict === 'holds') return [];
  const own = checksAt(at).filter(
    ({ result }) => result.part === name && result.verdict === verdict && !result.advisory,
  );
  const shown = firstOfEach(worstFirst(own));
  if (verdict === 'holds if')
    return enumerate(shown.map(({ result }) => words(CHECK_WORDS[result.check].name)));
  const told = joined(shown.slice(0, MOST_CHECKS).map((each) => failure(decision, each, 'alone')));
  return shown.length > MOST_CHECKS ? say`${told}; and others` : told;
}

function threeAxis(decision: Decision): readonly Block[] {
  if (decision.threeAxis.length === 0) return [];
  const names = enumerate(
    decision.threeAxis.map((name, index) => partName(decision, name, ['threeAxis', index])),
  );
  return [
    paragraph(say`Cut from the top alone, and so three-axis work that no rotary has to hold: ${names}.`),
  ];
}
