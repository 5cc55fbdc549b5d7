import { MEASURES, type Measure } from '../../questions/answers.ts';
import { type Ranked, scoresOn, throughout } from './scores.ts';

/** Measures on which arrangements beat each other; *margin* orders but does not dominate. */
export const DOMINATING: readonly Measure[] = MEASURES.filter((measure) => measure !== 'margin');

/** Does a beat b on every measure, at least as good everywhere and better somewhere, for every value? */
export function dominates(measures: readonly Measure[], a: Ranked, b: Ranked): boolean {
  let better = false;
  for (const measure of measures) {
    const [mine, its] = [scoresOn(measure, a), scoresOn(measure, b)];
    if (!throughout(mine, its, (x, y) => x.low >= y.high)) return false;
    if (throughout(mine, its, (x, y) => x.low > y.high)) better = true;
  }
  return better;
}

/** May a turn out to beat b on every measure? */
function mayDominate(measures: readonly Measure[], a: Ranked, b: Ranked): boolean {
  let better = false;
  for (const measure of measures) {
    const [mine, its] = [scoresOn(measure, a), scoresOn(measure, b)];
    if (throughout(mine, its, (x, y) => x.high < y.low)) return false;
    if (!throughout(mine, its, (x, y) => x.high <= y.low)) better = true;
  }
  return better;
}

/**
 * Those that no other surely beats on every measure, whatever the unknowns are: only they are ranked, so that
 * what another beats neither wins by its margin nor changes who does. Of each it is noted whether it may
 * still turn out to be beaten.
 */
export function unbeaten(running: readonly Ranked[]): readonly Ranked[] {
  const sure = running.filter(({ surely }) => surely);
  const free = running.filter(
    (each) => !sure.some((other) => other !== each && dominates(DOMINATING, other, each)),
  );
  return free.map((each) => ({
    ...each,
    perhapsBeaten: free.some((other) => other !== each && mayDominate(DOMINATING, other, each)),
  }));
}
