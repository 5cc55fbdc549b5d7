import { describe, test } from 'vitest';
import { LEVELS } from '../../../src/teaching/exercises/recipe.ts';
import { checksOfShare, drawn, expectSound, SEEDS } from './drawn.ts';

describe.each(checksOfShare(2, 4))('%s decides, in its ranges, and can be gone through', (check) => {
  test.each(LEVELS)('level %i', { timeout: 900_000 }, (level) => {
    for (const seed of SEEDS) expectSound(drawn(check, seed, level));
  });
});
