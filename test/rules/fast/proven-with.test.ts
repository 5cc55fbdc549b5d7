import { expect, test } from 'vitest';
import { provenWith } from '../../../src/rules/fast/proven-with.ts';

const ranking = { winner: 'rowan+wren/tilt-along-x', contenders: ['rowan+wren/tilt-along-x'], steps: [] };

test('whoever is first wins where all were judged, or are surely behind', () => {
  expect(provenWith(0, ranking)).toEqual(ranking);
});

test('and only may win while one that was not judged may be better', () => {
  expect(provenWith(1, ranking)).toEqual({ ...ranking, winner: null });
});
