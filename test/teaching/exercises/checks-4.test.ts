import { describe, test } from 'vitest';
import { LEVELS } from '../../../src/teaching/exercises/recipe.ts';
import { checksOfShare, expectAllSound } from './drawn.ts';

describe.each(checksOfShare(3, 4))('%s decides, in its ranges, and is solved from its sheet', (check) => {
  test.each(LEVELS)('level %i', { timeout: 900_000 }, (level) => {
    expectAllSound(check, level);
  });
});
