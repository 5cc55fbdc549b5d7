import type { Answers } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { raisedBy } from '../arranging/setting.ts';
import type { LaterCost } from '../decision.ts';
import { corners } from '../facts/corners.ts';
import { answered, bounded, type Value } from '../judging/value.ts';
import type { Judged } from './judged.ts';

/**
 * What clearance additions cost once the rotary is off again: the nose no longer comes as far down, so the
 * shortest tool needs the work in the vise raised by max(0, lowest nose + raised − shortest tool − vise bed).
 */
export function laterCost({ setUp }: Judged, answers: Answers, plates: Value): LaterCost | null {
  const raised = raisedBy(setUp.setting);
  if (raised === 0) return null;
  const shortest = answered(answers.tools.shortest, 'tools.shortest', NOT_SURE['tools.shortest']);
  const bed = answered(answers.work.vise.height, 'work.vise.height', NOT_SURE['work.vise.height']);
  const subplate = corners(
    [setUp.candidate.machine.noseBottom, shortest, bed],
    ([nose = 0, tool = 0, vise = 0]) => Math.max(0, nose + raised - tool - vise),
  );
  const price = { low: subplate.low > 0 ? plates.low : 0, high: subplate.high > 0 ? plates.high : 0 };
  return { raised, subplate: bounded(subplate), price: bounded(price) };
}
