import type { Answers, Part } from '../../src/questions/answers.ts';
import { needsTilt } from '../../src/questions/parts/needs-tilt.ts';
import { chanceOf } from './chance.ts';

/**
 * The same shop, in which most parts that are tilted get a large hole off the axis, and some are not centered: what
 * is usually not so, and is not asked before it can matter. The shops of the promise have neither.
 */
export function withHoles(truth: Answers, seed: number): Answers {
  const { between, pick, happens } = chanceOf(seed + HOLES);
  const changed = (part: Part): Part => ({
    ...part,
    drill:
      needsTilt(part) && happens(0.7)
        ? { diameter: between(8, 25), feed: pick([0.1, 0.2, 0.3]), offset: between(10, 80, 10) }
        : null,
    eccentricity: happens(0.3) ? between(5, 40, 5) : 0,
  });
  return { ...truth, parts: truth.parts.map(changed) };
}

/** Other chances than those that made the shop. */
const HOLES = 100_000;
