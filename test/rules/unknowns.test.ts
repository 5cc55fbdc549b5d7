import { describe, expect, test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART, EXAMPLE_ROTARY } from './example-shop.ts';

const PART = { ...EXAMPLE_PART, tolerance: 0.5 };
const found = (answers: object, rotary: object = {}) =>
  decide(
    { ...EXAMPLE_ANSWERS, parts: [PART], ...answers },
    { ...EXAMPLE_CATALOG, rotaries: [{ ...EXAMPLE_ROTARY, ...rotary }] },
  );

describe('what is unknown', () => {
  test('an answer that leaves the result open decides, and says which checks it leaves open', () => {
    const { outcome, unknowns } = found({ parts: [{ ...PART, size: [90, 60, [20, 400]] }] });
    expect(outcome).toBe('open');
    const height = unknowns.find(({ answer }) => answer === 'parts[Example].size[2]');
    expect(height).toMatchObject({ decides: true, ask: 'you' });
    expect(height?.checks).toContain('reach-high');
  });

  test('an answer that changes no verdict is not named', () => {
    const { outcome, unknowns } = found({ parts: [{ ...PART, depthTop: [0, 10] }] });
    expect(outcome).toBe('recommended');
    expect(unknowns).toEqual([]);
  });

  test('what the catalog leaves out goes to the seller and does not decide', () => {
    const { outcome, unknowns } = found({}, { tiltMoment: 'unknown' });
    expect(outcome).toBe('recommended');
    expect(unknowns).toEqual([
      {
        answer: 'rotaries[example-rotary].tiltMoment',
        decides: false,
        ask: 'seller',
        checks: ['tilt-moment'],
      },
    ]);
  });

  test('even beside an answer that does decide, in the same result', () => {
    const { outcome, unknowns } = found(
      { parts: [{ ...PART, size: [90, 60, [20, 400]] }] },
      { brakeTorque: { rotary: 'unknown', tilt: 900 } },
    );
    expect(outcome).toBe('open');
    const brake = unknowns.find(({ answer }) => answer === 'rotaries[example-rotary].brakeTorque.rotary');
    expect(brake).toMatchObject({ decides: false, ask: 'seller' });
  });

  test('a catalog value without which nothing can be said decides', () => {
    const { outcome, unknowns } = found({}, { swing: 'unknown' });
    expect(outcome).toBe('open');
    expect(unknowns[0]).toMatchObject({
      answer: 'rotaries[example-rotary].swing',
      decides: true,
      ask: 'seller',
    });
  });

  test('hours decide where families are held in part', () => {
    const large = { ...PART, name: 'Large', size: [400, 300, 55] as const };
    const unsure = { ...large, yearly: { ...PART.yearly, quantity: [10, 5000] } };
    const { outcome, unknowns } = found({ parts: [PART, unsure] });
    expect(outcome).toBe('open');
    expect(unknowns[0]).toMatchObject({ answer: 'parts[Large].yearly.quantity', decides: true });
  });

  test('a budget that nobody names does not decide', () => {
    const money = { ...EXAMPLE_ANSWERS.money, budget: 'unknown' };
    const { outcome, unknowns } = found({ money });
    expect(outcome).toBe('recommended');
    expect(unknowns).toEqual([{ answer: 'money.budget', decides: false, ask: 'you', checks: ['budget'] }]);
  });
});
