import { describe, expect, test } from 'vitest';
import { creeping, type Found, farthest, throughChanges } from '../../../src/rules/stability/outward.ts';
import { roundedInward } from '../../../src/rules/stability/rounded-inward.ts';

const upTo =
  (limit: number) =>
  (from: number, to: number): boolean =>
    Math.max(from, to) <= limit;

/** Of the same value everywhere but at one place, where nobody can say of a piece; from an end on it goes. */
const changingAt =
  (place: number, end: number) =>
  (from: number, to: number, known: number): Found<number> => {
    const [low, high] = [Math.min(from, to), Math.max(from, to)];
    if (low > end) return { is: 'goes', known };
    const isOpen = (low < place && place < high) || (low <= end && end < high);
    return { is: isOpen ? 'open' : 'stays', known: known + 1 };
  };

describe('from a value toward an end', () => {
  test('as far as it stays, found to a fiftieth of what was reached', () => {
    const found = farthest({ at: 100, end: 5000 }, upTo(730));
    expect(found).toBeLessThanOrEqual(730);
    expect(found).toBeGreaterThan(730 * 0.96);
  });

  test('the end itself where it stays all the way, and no step where it stays nowhere', () => {
    expect(farthest({ at: 100, end: 180 }, () => true)).toBe(180);
    expect(farthest({ at: 100, end: 25 }, () => true)).toBe(25);
    expect(farthest({ at: 100, end: 180 }, () => false)).toBe(100);
  });

  test('from zero, and toward a zero that is never reached, it comes to an end', () => {
    expect(farthest({ at: 0, end: 600 }, upTo(41))).toBeGreaterThan(39);
    expect(farthest({ at: 4, end: 0 }, (_, to) => to > 0)).toBeGreaterThan(0);
  });
});

describe('where others change on the way', () => {
  test('a place where nobody can say is passed when both of its sides stay', () => {
    expect(throughChanges({ at: 100, end: 900 }, 400, 0, changingAt(217, 1000))).toBe(400);
  });

  test('where it goes, that is where it ends, to a fiftieth', () => {
    const found = throughChanges({ at: 100, end: 900 }, 400, 0, changingAt(217, 300));
    expect(found).toBeLessThanOrEqual(300);
    expect(found).toBeGreaterThan(300 * 0.96);
  });

  test('a place is not passed where the middle of its hair goes', () => {
    const look = (from: number, to: number, known: number): Found<number> => {
      const [low, high] = [Math.min(from, to), Math.max(from, to)];
      const window = low < 202 && high > 199;
      if (!window) return { is: 'stays', known };
      return { is: low >= 199 && high <= 202 ? 'goes' : 'open', known };
    };
    expect(throughChanges({ at: 100, end: 900 }, 400, 0, look)).toBeLessThanOrEqual(199);
  });

  test('told apart by room to spare alone, a piece is said by its middle and its far end', () => {
    const tried: number[] = [];
    const look = (from: number, to: number, known: number): Found<number> => {
      if (from === to) tried.push(from);
      return { is: from === to ? 'stays' : 'by margin', known };
    };
    expect(throughChanges({ at: 100, end: 900 }, 200, 0, look)).toBe(200);
    // no farther apart than a twentieth
    const gaps = tried.toSorted((a, b) => a - b).map((each, index, all) => each / (all[index - 1] ?? 100));
    expect(Math.max(...gaps)).toBeLessThan(1.06);
  });

  test('onward from an end it goes on only where the next point stays', () => {
    expect(creeping({ at: 100, end: 400 }, 150, 0, changingAt(217, 149))).toBe(150);
    expect(creeping({ at: 100, end: 400 }, 150, 0, changingAt(217, 1000))).toBe(400);
  });
});

describe('an end in few digits', () => {
  test('is never farther than it was found', () => {
    expect(roundedInward(213.97, 180, false)).toBe(213);
    expect(roundedInward(0.04123, 0.05, false)).toBe(0.0413);
    expect(roundedInward(151300, 172000, false)).toBe(152000);
  });

  test('is the answer where nothing is left between', () => {
    expect(roundedInward(180.4, 180.2, false)).toBe(180.2);
    expect(roundedInward(0, 25, false)).toBe(0);
    expect(roundedInward(80, 80, false)).toBe(80);
  });

  test('is whole where only whole numbers make sense', () => {
    expect(roundedInward(2.9, 2, true)).toBe(2);
    expect(roundedInward(4.1, 6, true)).toBe(5);
  });
});
