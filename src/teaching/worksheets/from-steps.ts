import type { CheckId } from '../../rules/checks/ids.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';

/**
 * The steps, numbered from 1, whose verdicts (`among`: of these checks alone) say whether a part is held by an arrangement;
 * `held`: 1 for yes, 0 for no. None where nothing is asked about it, or where what is asked does not come to that.
 */
export function stepsThatHold(
  { lesson, keys }: ReadyLesson,
  part: string,
  on: string,
  held: number,
  among: ReadonlySet<CheckId> | null = null,
): readonly number[] {
  const said = lesson.steps.flatMap(({ asked, on: own }, index) =>
    asked.kind === 'verdict' &&
    asked.part === part &&
    (own ?? lesson.on) === on &&
    among?.has(asked.check) !== false
      ? [{ number: index + 1, passes: PASSES.has(String(keys[index]?.value)) }]
      : [],
  );
  const all = said.every(({ passes }) => passes) ? 1 : 0;
  return all === held ? said.map(({ number }) => number) : [];
}

const PASSES: ReadonlySet<string> = new Set(['holds', 'holds if']);

/** Example: stepsText([1, 6, 7]) → 'steps 1, 6, 7'. */
export const stepsText = (steps: readonly number[]): string =>
  `${steps.length === 1 ? 'step' : 'steps'} ${steps.join(', ')}`;
