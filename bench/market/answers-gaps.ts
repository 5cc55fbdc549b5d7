import type { Answers } from '../../src/questions/answers.ts';
import type { Chance } from '../interviews/chance.ts';
import { replaced } from './replaced.ts';

/** What is always said, and what nobody can leave open. */
const STAYS =
  /^(?:format|units|currency|matters|assume|parts\.\d+\.(?:name|must|cut\.interrupted|contourCut\.interrupted)|shop\.lifting\.\d+\.by)(?:\.|$)/;
/** Kinds that are known as a whole, or not at all. */
const WHOLE = /^(?:parts\.\d+\.approaches|shop\.lifting)$/;
/** Counted in whole numbers, or meaning one thing: a range of them says little. */
const NO_RANGE =
  /(?:teeth|legs|people|phases|volts|setups|lots|quantity|years|visesWanted|switchesPerWeek|reach|from|lift|vise\.\w+|plates|parts\.\d+\.mass)$/;

/** The same answers, with this share of them not known, or known only as a range. */
export function withAnswerGaps(answers: Answers, share: number, chance: Chance): Answers {
  if (share === 0) return answers;
  return replaced(answers, (path, value) => {
    if (STAYS.test(path)) return value;
    const isKind = typeof value === 'string' || typeof value === 'boolean';
    const isLeaf = WHOLE.test(path) || isKind || typeof value === 'number';
    // an approach by its name is no kind of its own
    if (!isLeaf || (isKind && path.includes('.approaches.'))) return undefined;
    if (!chance.happens(share)) return undefined;
    const asRange = typeof value === 'number' && value > 0 && !NO_RANGE.test(path) && chance.happens(0.6);
    return asRange ? around(path, value) : 'unknown';
  });
}

/** A range that the number lies in. */
function around(path: string, value: number): readonly [number, number] {
  if (/slant|undercut/.test(path)) return [value - 3, value + 3];
  const most = /fill|threeAxisShare/.test(path) ? 1 : Number.POSITIVE_INFINITY;
  return [Number((value * 0.9).toPrecision(6)), Math.min(most, Number((value * 1.1).toPrecision(6)))];
}
