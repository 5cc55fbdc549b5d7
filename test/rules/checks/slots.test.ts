import { describe, expect, test } from 'vitest';
import type { Interval } from '../../../src/quantities/interval.ts';
import { gapsOf } from '../../../src/rules/judging/outcome.ts';
import { termEnds } from '../../../src/rules/judging/term.ts';
import { expectClose } from '../../close-to.ts';
import { easing, numbers, outcomeOf, said } from './said.ts';

describe('bolts and keys over the slots', () => {
  const over = (
    bolts: readonly number[] | 'unknown',
    slots: { readonly count?: unknown; readonly pitch?: unknown; readonly width?: unknown },
    more: object = {},
  ) =>
    ({
      rotary: { hold: { 'tilt-along-x': { keyWidth: 18, pitches: bolts } } },
      machine: { table: { slots: { count: 5, width: 18, pitch: 80, ...slots } } },
      ...more,
    }) as never;

  test('as many spaces as there are slots, less one', () => {
    expect(numbers('slot-match', over([160], { count: 2 }))).toEqual(['fails', 80, 0.5]);
    expect(said('slot-match', over([160], { count: 3 }))[0]).toBe('holds');
    expect(said('slot-match', over([80], { count: 2 }))[0]).toBe('holds');
    expect(numbers('slot-match', over([80], { count: 1 }))).toEqual(['fails', Number.POSITIVE_INFINITY, 0.5]);
  });

  test('one pair of bolt holes that fits is enough', () => {
    expect(said('slot-match', over([63, 100, 240], {}))[0]).toBe('holds');
    expect(numbers('slot-match', over([63, 90], {}))).toEqual(['fails', 10, 0.5]);
  });

  test('half a millimeter does, more does not, to either side', () => {
    const at = (bolts: number) => said('slot-match', over([bolts], {}))[0];
    expect([159.4, 159.5, 160.5, 160.6].map(at)).toEqual(['fails', 'holds', 'holds', 'fails']);
    const key = (width: number) => said('slot-match', over([80], { width }));
    expect([17.4, 17.5, 18.5, 18.6].map((width) => key(width)[0])).toEqual([
      'fails',
      'holds',
      'holds',
      'fails',
    ]);
    expect(key(14)[1]).toBe('keys in the slots');
    expect(said('slot-match', over([90], {}))[1]).toBe('bolts over the slots');
  });

  test('what nobody says may fit', () => {
    expect(said('slot-match', over('unknown', {}))[0]).toBe('open');
    expect(said('slot-match', over([160], { count: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', over([160], { pitch: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', over([160], { width: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', { rotary: { hold: 'unknown' } })[0]).toBe('open');
    expect(said('slot-match', { machine: { table: { slots: { along: 'unknown' } } } })[0]).toBe('open');
  });

  test('an adapter plate as thick as it has to be', () => {
    expect(easing('slot-match', over([63], {}, { plates: 30 }))).toEqual(['adapter-plate', 30]);
    expect(easing('slot-match', over([80], { width: 14 }, { plates: 30 }))).toEqual(['adapter-plate', 30]);
    expect(said('slot-match', over([63], {}, { plates: 29 }))[0]).toBe('fails');
  });

  const asked = (given: Parameters<typeof outcomeOf>[1]) => {
    const found = outcomeOf('slot-match', given);
    expect(found).toMatchObject({ verdict: 'open', advisory: true });
    return gapsOf(found).map(({ path }) => path);
  };

  test('the seller is asked for what is not stated, by its place', () => {
    const hold = 'rotaries[example-rotary].hold.tilt-along-x';
    const keys = { keyWidth: 'unknown', pitches: [80] } as const;
    expect(asked({ rotary: { hold: { 'tilt-along-x': keys } } })).toEqual([`${hold}.keyWidth`]);
    expect(asked(over('unknown', {}))).toEqual([`${hold}.pitches`]);
    expect(asked({ rotary: { hold: 'unknown' } })).toEqual([expect.stringContaining(hold)]);
    expect(asked({ machine: { table: { slots: { along: 'unknown' } } } })).toEqual([
      'machines[example-mill].table.slots.along',
    ]);
  });

  /** The ends of the misfit of bolts over slots while both pitches lie in ranges. */
  function misfitOver(slots: Interval, bolts: Interval): Interval {
    const { comparison, of } = outcomeOf('slot-match', over([63], {}));
    const [bolted] = comparison?.need.terms(of) ?? [];
    if (bolted === undefined) throw new Error('no bolts');
    return termEnds(bolted, { count: { low: 5, high: 5 }, slots, bolts });
  }

  const misfit = (bolts: number, slots: number): number =>
    Math.min(...[1, 2, 3, 4].map((spaces) => Math.abs(bolts - spaces * slots)));
  const only = (value: number): Interval => ({ low: value, high: value });

  test.each([
    [75, 85],
    [100, 115],
    [60, 70],
    [45, 200],
    [150, 170],
    [300, 400],
  ])('over pitches from %d to %d mm the misfit is what a fine grid finds', (low, high) => {
    const grid = Array.from({ length: 40_001 }, (_, at) => low + ((high - low) * at) / 40_000);
    for (const [found, values] of [
      [misfitOver({ low, high }, only(160)), grid.map((slots) => misfit(160, slots))],
      [misfitOver(only(80), { low, high }), grid.map((bolts) => misfit(bolts, 80))],
    ] as const) {
      // between two points of the grid four spaces move by 16 µm at most
      expectClose(found.low, Math.min(...values), { absolute: 0.02 });
      expectClose(found.high, Math.max(...values), { absolute: 0.02 });
    }
  });
});
