import type { Dimension, Side } from '../../drawing/scene.ts';
import { say, words } from '../blocks/inline.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { measured } from './figure.ts';
import type { HeightCheck, StackSubject } from './stack-subject.ts';

/** Checks whose have is a floor: what is needed may not lie below it. */
const FLOORS: readonly HeightCheck[] = ['reach-low', 'table-clear'];

/** What a check of heights needs, what there is and what is left, counted from the tilt axis as the verdict counts. */
export function heightMeasures(
  { decision, view, checks, tightest }: StackSubject,
  check: HeightCheck,
  x: number,
  side: Side,
): readonly Dimension[] {
  const found = checks[check];
  if (found === undefined) return [];
  const { result, path } = found;
  const name = words(CHECK_WORDS[check].name);
  const tight = check === tightest;
  const lower = FLOORS.includes(check) ? result.have : result.need;
  const axis = [x, view.axis] as const;
  const margin =
    typeof lower !== 'number'
      ? []
      : measured(decision, {
          name: say`${name}, margin`,
          path: [...path, 'margin'],
          from: [x, view.axis + lower],
          side,
          tight,
        });
  return [
    ...measured(decision, { name: say`${name}, needed`, path: [...path, 'need'], from: axis, side }),
    ...measured(decision, { name: say`${name}, there is`, path: [...path, 'have'], from: axis, side }),
    ...margin,
  ];
}
