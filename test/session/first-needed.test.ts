import { expect, test } from 'vitest';
import { firstNeeded } from '../../src/session/first-needed.ts';
import { begun, go, screen, type Talk, WORLD } from './talk.ts';

const needed = ({ session }: Talk) => firstNeeded(WORLD.survey(session.kept));
const find = (text: string) => ({ type: 'find', text }) as const;
const START = ['mm', 'none', 'Hinge'] as const;

test('says what a part still has to be told before anything is judged', () => {
  expect(needed(begun())).toBe('a part needs a shape and a size first');
  expect(needed(go(begun(), ...START))).toBe('a part needs a shape and a size first');
  expect(needed(go(begun(), ...START, 'block'))).toBe('a part needs a size first');
  expect(needed(go(begun(), ...START, find('size'), '90 x 60 x 55'))).toBe(
    'a part needs a shape first, block or round',
  );
  expect(needed(go(begun(), ...START, 'not sure', '90 x 60 x 55'))).toBe(
    'a part that may be a block or round needs its size both ways first',
  );
});

test('counts the part that has been told most', () => {
  const two = go(begun(), ...START, 'block', { type: 'go', to: { at: 'parts' } }, 'add', 'Latch');
  expect(needed(two)).toBe('a part needs a size first');
});

test('is said where a result is asked for', () => {
  const asked = go(begun(), ...START, { type: 'go', to: { at: 'result' } });
  expect(screen(asked).error?.why).toBe('There is no result yet: a part needs a shape and a size first.');
});
