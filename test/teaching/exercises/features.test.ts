import { describe, expect, test } from 'vitest';
import { CHECK_IDS } from '../../../src/rules/checks/ids.ts';
import { CLASS_RULE_IDS } from '../../../src/rules/classes/rule-ids.ts';
import { FEATURE_IDS } from '../../../src/rules/features/ids.ts';
import { EXERCISE_SUBJECTS } from '../../../src/teaching/exercises/make-exercise.ts';
import { LEVELS } from '../../../src/teaching/exercises/recipe.ts';
import { expectAllSound } from './drawn.ts';

describe.each(FEATURE_IDS)('%s decides, in its ranges, and is solved from its sheet', (feature) => {
  test.each(LEVELS)('level %i', { timeout: 900_000 }, (level) => {
    expectAllSound(feature, level);
  });
});

test('every check, every rule of the class and every feature has exercises of its own', () => {
  const all = [...CHECK_IDS, ...CLASS_RULE_IDS, ...FEATURE_IDS];
  expect(all.filter((id) => !EXERCISE_SUBJECTS.includes(id))).toEqual([]);
});
