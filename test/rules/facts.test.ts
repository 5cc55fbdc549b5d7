import { describe, expect, test } from 'vitest';
import type { BuiltIn } from '../../src/catalog/catalog.ts';
import { column } from '../../src/rules/checks/machine/column.ts';
import { housingClear } from '../../src/rules/checks/machine/housing-clear.ts';
import { travelY } from '../../src/rules/checks/machine/travel-y.ts';
import { brakeRotary } from '../../src/rules/checks/work/brake-rotary.ts';
import { cutFacts } from '../../src/rules/facts/cut-facts.ts';
import { hoursNow } from '../../src/rules/facts/hours.ts';
import { known } from '../../src/rules/judging/value.ts';
import { expectClose } from '../close-to.ts';
import { EXAMPLE_PART, EXAMPLE_ROTARY, judgeExample } from './example-shop.ts';

test('hours: 400 parts in 12 lots, 4 setups of 35 min, 18 min of cutting, 3 min of handling a setup: 228 h', () => {
  expect(hoursNow(EXAMPLE_PART)).toMatchObject({ low: 228, high: 228 });
});

describe('an assumed cut is of a 20 mm cutter with four teeth, in plastic: 750 N/mm² whatever the chip', () => {
  const force = (cut: 'light' | 'medium' | 'heavy', largest = 20): number =>
    cutFacts(cut, 'plastic', known(largest, 'tools.largestCutter'), 'cut', 'material').force.low;

  // half of it wide: one tooth cuts, 0.1 mm thick at most, 10 mm deep
  test('heavy', () => expectClose(force('heavy'), 750 * 10 * 0.1, { percent: 1e-6 }));
  // a quarter wide, 60°: one tooth, 0.1·sin 60°
  test('medium', () =>
    expectClose(force('medium'), 750 * 10 * 0.1 * Math.sin(Math.PI / 3), { percent: 1e-6 }));
  // a tenth wide: cos φ = 0.8, so sin φ = 0.6, 5 mm deep
  test('light', () => expectClose(force('light'), 750 * 5 * 0.06, { percent: 1e-6 }));
  test('a smaller largest cutter', () => expectClose(force('heavy', 10), 750 * 5 * 0.1, { percent: 1e-6 }));
});

test('a drill turns the rotary axis only as far as that is tilted', () => {
  // plastic, 20 mm, 0.2 mm/rev: ½·750·10·0.2·sin 59° N at 400 mm, held twice over
  const thrust = 0.5 * 750 * 10 * 0.2 * Math.sin((59 * Math.PI) / 180);
  const drilled = {
    material: 'plastic',
    cut: 'light',
    drill: { diameter: 20, feed: 0.2, offset: 400 },
  } as const;
  const level = judgeExample(brakeRotary, { part: { ...drilled, approaches: ['top', 'sides'] } });
  const slanted = judgeExample(brakeRotary, { part: { ...drilled, approaches: ['top', { slant: 30 }] } });
  expectClose(level.need.low, (2 * thrust * 400) / 1000, { percent: 1e-6 });
  expectClose(slanted.need.low, (2 * thrust * 200) / 1000, { percent: 1e-6 });
});

describe('which way the work leans', () => {
  const part = { size: [60, 80, 60], approaches: ['sides'], holding: { diameter: 60, height: 40 } } as const;

  test('a built-in table leans as stated, the other way where its greater tilt is the negative one', () => {
    const { hold: _, housing: __, ...rest } = EXAMPLE_ROTARY;
    const reaching = (leans: BuiltIn['leans'], tilt: readonly [number, number]) => {
      const reach = { x: [-400, 400], y: [-130, 60], noseToFace: [60, 600] } as const;
      const slots = { width: 14, pitch: 63 };
      const builtIn = {
        ...rest,
        faceOffset: 10,
        tilt,
        tiltAxis: 'along-x',
        leans,
        reach,
        removable: false,
        slots,
      } as const;
      return judgeExample(travelY, { part, tools: { largestCutter: 20 }, machine: { builtIn } as never })
        .verdict;
    };
    // at 90° the tips lie 50 to 120 mm on the side of the lean
    expect(reaching('toward-door', [-20, 110])).toBe('holds');
    expect(reaching('toward-column', [-20, 110])).toBe('fails');
    expect(reaching('toward-column', [-110, 20])).toBe('holds');
    expect(reaching('toward-door', [-110, 20])).toBe('fails');
  });

  test('turned round it leans toward the column, and comes further to the rear', () => {
    const base = { along: 100, across: 100, centerAlong: 50, centerAcross: 50 };
    const given = {
      part,
      tools: { largestCutter: 20 },
      rotary: { faceplate: 60, faceOffset: 10, base },
    } as const;
    // toward the door: base and connectors 200 mm behind tips at 120 mm to the front
    expectClose(judgeExample(column, given).need.low, 320, { absolute: 1e-9 });
    // turned: the work itself reaches 110 mm to the rear of tips that begin at 50 mm; base and connectors 200 mm
    expectClose(judgeExample(column, { ...given, place: { turned: true } }).need.low, 150, {
      absolute: 1e-9,
    });
    // a tall part reaches behind base and connectors: its edge, 50 and 290 mm from the axis, on its way back
    const tall = { ...given, part: { ...part, size: [60, 80, 240] }, place: { turned: true } } as const;
    expectClose(judgeExample(column, tall).need.low, Math.hypot(50, 290) - 50, { absolute: 1e-9 });
  });
});

test('the nose reaches over a housing by half its own width', () => {
  const part = { size: [90, 60, 60], approaches: ['sides'], holding: { diameter: 100, height: 40 } } as const;
  const over = (from: number) =>
    judgeExample(housingClear, {
      part,
      rotary: { faceOffset: 10, housing: [{ along: [from, from + 40], across: [-130, 130], top: 600 }] },
      machine: { noseDiameter: 90 },
      tools: { largestCutter: 20 },
    }).verdict;
  // tips reach 45 + 10 mm along the tilt axis, the nose 45 mm further
  expect(over(99)).toBe('fails');
  expect(over(101)).toBe('holds');
});
