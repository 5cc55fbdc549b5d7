import { describe, expect, test } from 'vitest';
import type { ExampleGiven } from '../../../src/rules/checks/example.ts';
import { judgeExample } from '../example-shop.ts';
import { checkOf, numbers, said } from './said.ts';

const WORK = {
  part: { size: [60, 80, 60], approaches: ['sides'], holding: { diameter: 60, height: 40 } },
  tools: { largestCutter: 20 },
} as const;

/** A part with a radius of 50 mm on a rotary with hardly any base; the housing stands to the front. */
const given = (mounting: ExampleGiven['mounting'], turned = false, rotary: object = {}): ExampleGiven => ({
  ...WORK,
  rotary: {
    faceplate: 100,
    faceOffset: 10,
    base: { along: 40, across: 40, centerAlong: 20, centerAcross: 20 },
    housing: [turned ? REAR : FRONT],
    ...rotary,
  },
  machine: { throat: 1000 },
  ...(mounting === undefined ? {} : { mounting }),
  place: { turned },
});
const FRONT = { along: [-500, -400], across: [-500, -400], top: 50 } as const;
const REAR = { along: [400, 500], across: [400, 500], top: 50 } as const;
const need = (...of: Parameters<typeof given>) => numbers('column', given(...of))[1];

describe('what the work asks for behind the foremost tip', () => {
  test('tilting toward the door it comes to the rear by its radius', () => {
    // tips 110 mm up in the stack, and half the cutter
    expect(need('tilt-along-x')).toBe(50 + 120);
  });

  test('turned end for end it leans to the rear', () => {
    // √(50² + 110²), the tips begin 50 mm behind the axis
    expect(need('tilt-along-x', true)).toBe(70.83);
  });

  test('tilting to a side it turns over its radius', () => {
    expect([need('tilt-along-y'), need('tilt-along-y', true)]).toEqual([100, 100]);
  });

  const ONE_AXIS = { class: 'single-axis' };

  test.each([false, true])('on a level axis along X too, turned: %s', (turned) => {
    const around = given('axis-along-x', turned, ONE_AXIS);
    expect(numbers('column', { ...around, part: { ...around.part, approaches: ['around'] } })[1]).toBe(110);
  });

  test('on one along Y it stands out over fixture and length, or not at all', () => {
    const along = (turned: boolean) => {
      const of = given('axis-along-y', turned, ONE_AXIS);
      return numbers('column', { ...of, part: { ...of.part, approaches: ['around'] } })[1];
    };
    // to the rear 40 + 60 mm, its tips from 40 mm on; to the front up to 110 mm, and 10 mm of base behind the faceplate
    expect([along(false), along(true)]).toEqual([60, 120]);
  });

  test.each([
    ['along-x', 'toward-door', 210],
    ['along-x', 'toward-column', 71.803],
    ['along-y', 'toward-left', 150],
    ['along-y', 'toward-right', 150],
  ] as const)(
    'on a table of the machine with its tilt axis %s, leaning %s: no base',
    (tiltAxis, leans, value) => {
      const machine = { throat: 1000, builtIn: { tiltAxis, leans } } as const;
      expect(numbers('column', { ...WORK, machine })[1]).toBe(value);
    },
  );
});

describe('what base and connectors ask for', () => {
  const base = { along: 420, across: 260, centerAlong: 140, centerAcross: 130 };
  const reach = (rotary: object, mounting: ExampleGiven['mounting'] = 'tilt-along-x') =>
    need(mounting, false, { base, ...rotary });

  test('where no housing is drawn plugs may leave from the base', () => {
    expect([reach({ housing: null }), reach({ housing: [] })]).toEqual([130 + 150 + 120, 130 + 150 + 120]);
  });

  test('where one is, from that alone, and the base stands where it stands', () => {
    expect(reach({})).toBe(130 + 120);
    const behind = { along: [-140, -70], across: [-100, 100], top: 150 };
    expect(reach({ housing: [behind] })).toBe(100 + 150 + 120);
    expect(reach({ housing: [FRONT, behind] })).toBe(100 + 150 + 120);
    expect(reach({ housing: [behind] }, 'tilt-along-y')).toBe(280 + 50);
  });

  test('with as much room for them as the shop assumes', () => {
    const found = judgeExample(checkOf('column'), given('tilt-along-x', false, { base, housing: null }), {
      connectorRoom: 50,
    });
    expect(found.need).toMatchObject({ low: 300, high: 300 });
  });

  test('under a level tool no column stands at the end of Y', () => {
    expect(said('column', { machine: { spindle: 'horizontal', throat: 1 } })).toEqual(['holds', null]);
    expect(said('column', { machine: { throat: 1 } })[0]).toBe('fails');
  });
});
