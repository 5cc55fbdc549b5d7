import { test } from 'vitest';
import { LEVELS } from '../../../src/teaching/exercises/recipe.ts';
import { expectAllSound } from './drawn.ts';

test.each(LEVELS)(
  'one check decides a whole case, and it is solved from its sheet: level %i',
  { timeout: 900_000 },
  (level) => {
    expectAllSound('whole-case', level);
  },
);
