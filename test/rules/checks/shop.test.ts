import { describe, expect, test } from 'vitest';
import { EXAMPLE_HOIST } from '../../../src/rules/checks/example-means.ts';
import { easing, numbers, outcomeOf, said } from './said.ts';

const OWNED = { machine: 'example-mill' } as const;
const HOLDS_NOTHING = ['holds', null] as const;
const ONE_PHASE = { kVA: 40, volts: 230, phases: 1 } as const;

describe('a mill that stands in its bay already', () => {
  test.each(['bay', 'doorway', 'power', 'ceiling'] as const)('is not asked for %s', (id) => {
    const small = {
      bay: [1000, 1000],
      ceiling: 1000,
      doorway: { width: 1, height: 1 },
      power: ONE_PHASE,
    } as const;
    expect(said(id, { shop: { ...small, ...OWNED } })).toEqual(HOLDS_NOTHING);
    expect(said(id, { shop: { ...small, machine: 'another-mill' } })[0]).not.toBe('holds');
  });

  test('has its air, and only a rotary on it may want more', () => {
    const air = { flow: 10, bar: 5.5 } as const;
    expect(numbers('air', { shop: { ...OWNED, air } })).toEqual(['holds', 5, 5.5]);
    expect(said('air', { shop: { ...OWNED, air } })[1]).toBe('air pressure');
    expect(said('air', { shop: { air } })[1]).toBe('air flow');
    expect(said('air', { shop: { ...OWNED, air }, machine: { builtIn: {} } })).toEqual(HOLDS_NOTHING);
  });

  test('stands under its ceiling unless something makes it higher', () => {
    const shop = { ...OWNED, ceiling: 1000 } as const;
    expect(said('ceiling', { shop, heightened: 0 })).toEqual(HOLDS_NOTHING);
    expect(numbers('ceiling', { shop, heightened: 10 })).toEqual(['fails', 3010, 1000]);
  });
});

describe('air', () => {
  test('the higher of both pressures is needed', () => {
    const pressure = (machine: number, rotary: number) =>
      outcomeOf('air', {
        machine: { air: { flow: 0, bar: machine } },
        rotary: { air: { bar: rotary } },
        shop: { air: { flow: 300, bar: 7 } },
      }).need;
    expect(pressure(6, 5)).toMatchObject({ low: 6, high: 6 });
    expect(pressure(4, 5)).toMatchObject({ low: 5, high: 5 });
  });

  test('a table of the machine’s own has the air of the machine', () => {
    const shop = { air: { flow: 300, bar: 6 } } as const;
    expect(
      numbers('air', {
        machine: { builtIn: {}, air: { flow: 100, bar: 6 } },
        rotary: { air: { bar: 9 } },
        shop,
      }),
    ).toEqual(['holds', 6, 6]);
  });

  test('nobody says what there is: told, and held against nothing', () => {
    expect(outcomeOf('air', { shop: { air: { flow: 'unknown', bar: 'unknown' } } })).toMatchObject({
      verdict: 'open',
      advisory: true,
    });
    expect(outcomeOf('air', { shop: { air: { flow: [50, 200], bar: 7 } } })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
  });
});

describe('power', () => {
  test('a converter is as large as the machine', () => {
    expect(said('power', { shop: { power: ONE_PHASE } })).toEqual(['holds if', 'phases']);
    expect(easing('power', { shop: { power: ONE_PHASE } })).toEqual(['phase-converter', 28]);
  });

  test('a transformer too, and no voltage is compared where a converter makes it', () => {
    const other = { kVA: 40, volts: 480, phases: 3 } as const;
    expect(said('power', { shop: { power: other } })).toEqual(['holds if', 'voltage']);
    expect(easing('power', { shop: { power: other } })).toEqual(['transformer', 28]);
    const single = { power: { kVA: 5, volts: 230, phases: 1 } } as const;
    expect(said('power', { machine: single, shop: { power: { kVA: 40, volts: 230, phases: 1 } } })[0]).toBe(
      'holds',
    );
    expect(said('power', { machine: single, shop: { power: { kVA: 40, volts: 110, phases: 1 } } })).toEqual([
      'holds if',
      'voltage',
    ]);
  });

  test('a tenth to either side does, more does not', () => {
    const at = (volts: number) => said('power', { shop: { power: { kVA: 40, volts, phases: 3 } } })[0];
    expect([359, 360, 440, 441].map(at)).toEqual(['holds if', 'holds', 'holds', 'holds if']);
  });

  test('a voltage that may be right is not one that is wrong', () => {
    const at = (volts: readonly [number, number]) =>
      said('power', { shop: { power: { kVA: 40, volts, phases: 3 } } })[0];
    expect(at([380, 420])).toBe('holds');
    expect(outcomeOf('power', { shop: { power: { kVA: 40, volts: [300, 500], phases: 3 } } })).toMatchObject({
      easing: 'transformer',
      mayHoldPlainly: true,
    });
  });

  test('what is free is an electrician’s to say', () => {
    const silent = { kVA: 'unknown', volts: 400, phases: 3 } as const;
    expect(outcomeOf('power', { shop: { power: silent } }).advisory).toBe(true);
    expect(outcomeOf('power', { shop: { power: { kVA: [20, 40], volts: 400, phases: 3 } } })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
  });
});

describe('the floor', () => {
  const G = 9.80665;

  test('a machine with a table of its own carries no rotary besides', () => {
    const { need } = outcomeOf('floor-load', {
      part: { mass: 1, holding: { mass: 4 } },
      machine: { builtIn: {}, mass: 3600, footprint: [2000, 1000, 2500] },
      rotary: { mass: 500 },
    });
    expect(need.low).toBeCloseTo((3605 * G) / 2000, 9);
  });

  test('a rotary on a mill stands on it', () => {
    const { need } = outcomeOf('floor-load', {
      part: { mass: 1, holding: { mass: 4 } },
      machine: { mass: 3600, footprint: [2000, 1000, 2500] },
      rotary: { mass: 500 },
    });
    expect(need.low).toBeCloseTo((4105 * G) / 2000, 9);
  });

  test('a footprint or a mass that nobody publishes may press anyhow', () => {
    const footprint = outcomeOf('floor-load', { machine: { footprint: ['unknown', 2000, 2500] } });
    expect(footprint.need).toMatchObject({ low: 0, high: Number.POSITIVE_INFINITY });
    const mass = outcomeOf('floor-load', { machine: { mass: 'unknown' } });
    expect(mass.need.low).toBeGreaterThan(0);
    expect(mass.need.high).toBe(Number.POSITIVE_INFINITY);
    expect(mass.verdict).toBe('open');
  });

  test('a rating that few know is held against nothing', () => {
    expect(outcomeOf('floor-load', { shop: { floorRating: 'unknown' } }).advisory).toBe(true);
    expect(outcomeOf('floor-load', { shop: { floorRating: [1, 20] } })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
  });
});

describe('doorway and bay', () => {
  test('it goes in with either side ahead, the narrower one', () => {
    const at = (shipping: readonly [number, number, number]) =>
      numbers('doorway', { machine: { shipping }, shop: { doorway: { width: 2100, height: 4000 } } });
    expect(at([2000, 3000, 2500])).toEqual(['holds', 2100, 2100]);
    expect(at([3000, 2000, 2500])).toEqual(['holds', 2100, 2100]);
    expect(at([3000, 2001, 2500])).toEqual(['fails', 2101, 2100]);
  });

  test('the bay takes the machine either way round, with room on every side', () => {
    const machine = {
      footprint: [2000, 1000, 2500],
      service: { left: 100, right: 200, front: 300, rear: 400 },
    } as const;
    expect(numbers('bay', { machine, shop: { bay: [1700, 2300] } })[0]).toBe('holds');
    expect(numbers('bay', { machine, shop: { bay: [2300, 1700] } })[0]).toBe('holds');
    expect(numbers('bay', { machine, shop: { bay: [2299, 5000] } })[0]).toBe('holds');
    expect(numbers('bay', { machine, shop: { bay: [2299, 2299] } })).toEqual(['fails', 2300, 2299]);
    expect(numbers('bay', { machine, shop: { bay: [1699, 5000] } })).toEqual(['fails', 1700, 1699]);
  });
});

describe('lifting', () => {
  test.each([
    ['lift', { capacity: 50 }],
    ['hook-height', { hookHeight: 100 }],
  ] as const)('%s asks nothing of a table that stays in its machine', (id, hoist) => {
    const shop = { lifting: [{ ...EXAMPLE_HOIST, ...hoist }] } as const;
    expect(said(id, { machine: { builtIn: {} }, shop, swaps: 144 })).toEqual(HOLDS_NOTHING);
    expect(said(id, { shop, swaps: 144 })[0]).toBe('fails');
  });

  test('no hoist, no hook', () => {
    expect(said('hook-height', { shop: { lifting: [] }, swaps: 144 })).toEqual(HOLDS_NOTHING);
  });
});

describe('the budget', () => {
  test('one that nobody names enters no verdict, one that is not sure does', () => {
    expect(outcomeOf('budget', { money: { budget: 'unknown' } })).toMatchObject({
      verdict: 'open',
      advisory: true,
    });
    expect(outcomeOf('budget', { money: { budget: [100, 1e6] } })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
    expect(outcomeOf('budget', { money: { budget: [0, 1e6] } })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
  });
});
