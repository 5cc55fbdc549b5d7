import { describe, test } from 'vitest';
import { CLASS_RULE_IDS } from '../../../src/rules/classes/rule-ids.ts';
import { LEVELS } from '../../../src/teaching/exercises/recipe.ts';
import { expectAllSound, ofShare } from './drawn.ts';

describe.each(ofShare(CLASS_RULE_IDS, 3, 4))(
  '%s decides, in its ranges, and is solved from its sheet',
  (rule) => {
    test.each(LEVELS)('level %i', { timeout: 900_000 }, (level) => {
      expectAllSound(rule, level);
    });
  },
);
