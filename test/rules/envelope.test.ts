import { describe, expect, test } from 'vitest';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART, EXAMPLE_ROTARY } from './example-shop.ts';

/** A family whose swing is its fixture's and whose hours are its cycle's. */
const family = (name: string, swing: number, hours: number, more: Partial<Part> = {}): Part => ({
  ...EXAMPLE_PART,
  name,
  size: [30, 40, 20],
  holding: { ...EXAMPLE_PART.holding, diameter: swing },
  yearly: { quantity: hours, lots: 1, setups: 1, setupMinutes: 0, cycleMinutes: 60, handlingMinutes: 0 },
  ...more,
});

const envelope = (parts: readonly Part[], swings: readonly number[] = [100, 200, 300, 400]) => {
  const rotaries = swings.map((swing) => ({
    ...EXAMPLE_ROTARY,
    id: `swing-${swing}`,
    swing,
    price: swing * 100,
  }));
  const answers: Answers = { ...EXAMPLE_ANSWERS, parts };
  return decide(answers, { ...EXAMPLE_CATALOG, rotaries }).envelope;
};

describe('the coverage curve', () => {
  const parts = [family('small', 90, 60), family('middle', 150, 37), family('large', 390, 3)];

  test('goes up family by family, smallest swing first', () => {
    const { curve } = envelope([...parts].reverse());
    expect(curve.map(({ part, swing, share }) => [part, swing, share])).toEqual([
      ['small', 90, 0.6],
      ['middle', 150, 0.97],
      ['large', 390, 1],
    ]);
  });

  test('its knee leaves out what adds less than the share, and says what the rest would cost', () => {
    const { knee, curve, atKnee, forAll } = envelope(parts);
    expect(knee).toBe(150);
    expect(curve.map(({ beyondKnee }) => beyondKnee)).toEqual([false, false, true]);
    expect(atKnee).toMatchObject({ id: 'swing-200', swing: 200, price: 20000 });
    expect(forAll).toMatchObject({ id: 'swing-400', swing: 400, price: 40000 });
  });

  test('a family that must be held is inside, however few its hours', () => {
    const must = [
      family('small', 90, 60),
      family('middle', 150, 37),
      family('large', 390, 3, { must: true }),
    ];
    expect(envelope(must).knee).toBe(390);
  });

  test('a family that adds just the share sets the size', () => {
    expect(envelope([family('small', 90, 95), family('large', 390, 5)]).knee).toBe(390);
    expect(envelope([family('small', 90, 96), family('large', 390, 4)]).knee).toBe(90);
  });

  test('the part may be wider than its fixture', () => {
    const wide = family('wide', 90, 10, { size: [120, 160, 20], eccentricity: 10 });
    expect(envelope([wide]).curve[0]?.swing).toBe(220);
  });

  test('an unknown that decides it leaves no knee', () => {
    const unsure = family('small', 90, 60, { holding: { ...EXAMPLE_PART.holding, diameter: [80, 120] } });
    expect(envelope([unsure, family('large', 390, 3)])).toMatchObject({ knee: null, atKnee: null });
  });

  test('no table large enough is said', () => {
    expect(envelope(parts, [100]).atKnee).toBeNull();
  });
});
