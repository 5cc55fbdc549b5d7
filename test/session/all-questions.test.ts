import { describe, expect, test } from 'vitest';
import { allQuestions } from '../../src/session/all-questions.ts';
import { begun, go, oneBlock, WORLD } from './talk.ts';

describe('the list of all questions', () => {
  const lines = allQuestions(oneBlock().session, WORLD);
  const stateOf = (title: string) => lines.find((line) => line.title === title)?.state;

  test('names every question of the shop and of each part, in the order in which they are asked', () => {
    expect(lines).toHaveLength(WORLD.survey(oneBlock().session.kept).items.length);
    expect(lines[0]).toMatchObject({ part: null, title: 'Units' });
    expect(lines.filter(({ part }) => part === 'Lock gate hinge').length).toBeGreaterThan(20);
  });

  test('says how each stands', () => {
    expect([stateOf('Tolerance'), stateOf('Diameter')]).toEqual(['answered', 'does not apply']);
    const fresh = allQuestions(begun().session, WORLD);
    expect(fresh[0]?.state).toBe('open');
    const unsure = go(oneBlock(), { type: 'find', text: 'tolerance' }, { type: 'not-sure' });
    expect(allQuestions(unsure.session, WORLD).find(({ title }) => title === 'Tolerance')?.state).toBe(
      'not sure',
    );
  });
});
