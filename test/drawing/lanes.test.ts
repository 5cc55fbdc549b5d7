import { expect, test } from 'vitest';
import { keysOf } from '../../src/drawing/keys.ts';
import { lanesOf } from '../../src/drawing/lanes.ts';
import { line } from '../../src/drawing/scene.ts';
import { measureOf, panelOf, sceneOf } from './scenes.ts';

const upright = (name: string, low: number, high: number) =>
  measureOf({ name, from: [0, low], to: [0, high], side: 'right' });

test('Measures that follow each other stand in one row, what overlaps them farther out', () => {
  const [a, b, both] = [upright('a', 0, 40), upright('b', 40, 90), upright('both', 0, 90)];
  expect(lanesOf([both, a, b], 10).right).toEqual([[a, b], [both]]);
});

test('A short measure keeps room for its letter', () => {
  const [short, next] = [upright('short', 40, 42), upright('next', 42, 90)];
  expect(lanesOf([short, next], 0).right).toEqual([[short, next]]);
  expect(lanesOf([short, next], 10).right).toEqual([[short], [next]]);
});

test('Letters go on after Z', () => {
  const dimensions = Array.from({ length: 28 }, (_, index) => upright(`measure ${index}`, 0, 1));
  const keys = keysOf(sceneOf(panelOf([line('axis', [0, 0], [1, 1])], { dimensions })));
  expect(keys.dimensions.map(([key]) => key).slice(7, 9)).toEqual(['H', 'J']);
  expect(keys.dimensions.map(([key]) => key).slice(22)).toEqual(['Y', 'Z', 'AA', 'AB', 'AC', 'AD']);
});
