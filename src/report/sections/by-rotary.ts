import { CHECK_IDS } from '../../rules/checks/ids.ts';
import type { Decision, RotaryCount } from '../../rules/decision.ts';
import { type Block, heading, paragraph, table } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import { machineName, rotaryName } from '../names.ts';
import { nothingAsksForFiveAxes } from '../nothing-asks.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

/** One line a rotary or built-in table: on how many machines and mountings it is left, and what dropped the rest. */
export function byRotary(decision: Decision): readonly Block[] {
  if (decision.byRotary.length === 0 || nothingAsksForFiveAxes(decision)) return [];
  return [
    heading(2, say`What became of each rotary`),
    paragraph(
      say`Each was tried on every machine, in every way that it can be mounted. A check is counted where it was the one
        that dropped an arrangement.`,
    ),
    table(
      [
        [say`Rotary`, 'left'],
        [say`Tried`, 'right'],
        [say`Left`, 'right'],
        [say`Dropped by`, 'left'],
      ],
      decision.byRotary.map((each, index) => [
        nameOf(decision, each.rotary, index),
        [number(['byRotary', index, 'count'], '')],
        [number(['byRotary', index, 'left'], '')],
        droppedBy(each, index),
      ]),
    ),
  ];
}

function nameOf(decision: Decision, id: string, index: number): readonly Inline[] {
  const path = ['byRotary', index, 'rotary'];
  const machine = id.replace(/\/built-in$/, '');
  return machine === id
    ? rotaryName(decision, id, path)
    : say`table of ${machineName(decision, machine, path)}`;
}

/** The check that dropped most comes first. */
function droppedBy({ dropped }: RotaryCount, index: number): readonly Inline[] {
  const checks = CHECK_IDS.filter((id) => dropped[id] !== undefined).toSorted(
    (a, b) => (dropped[b] ?? 0) - (dropped[a] ?? 0),
  );
  return enumerate(
    checks.map((id) => say`${words(CHECK_WORDS[id].name)} ${number(['byRotary', index, 'dropped', id], '')}`),
  );
}
