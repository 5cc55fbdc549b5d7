import { test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import { expectClose } from '../close-to.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-shop.ts';

/** So strong that only what a test weakens is tight. */
const STRONG = {
  ...EXAMPLE_ROTARY,
  swing: 2000,
  faceplate: 700,
  centerHeight: 400,
  tiltClearRadius: 2000,
  payload: { level: 2000, tilted: 2000 },
  tiltMoment: 9000,
  brakeTorque: { rotary: 90000, tilt: 90000 },
  inertia: 900,
  accuracy: { rotary: 1, tilt: 1 },
  base: { along: 100, across: 100, centerAlong: 50, centerAcross: 50 },
};
const LARGE = {
  ...EXAMPLE_MACHINE,
  travel: [4000, 2000, 1000],
  table: { ...EXAMPLE_MACHINE.table, size: [4500, 2000], load: 9000 },
  noseToTable: [300, 1300],
  throat: 3000,
  spindleDrive: { power: 300, torque: 900, speed: 90000, taper: 'unknown' },
} as const;

const marginOf = (rotary: object, machine: object = {}, part: object = {}, tools: object = {}): number => {
  const decision = decide(
    {
      ...EXAMPLE_ANSWERS,
      parts: [{ ...EXAMPLE_PART, tolerance: 0.5, cut: 'light', ...part }],
      tools: { ...EXAMPLE_ANSWERS.tools, ...tools },
      money: { ...EXAMPLE_ANSWERS.money, budget: 1e9 },
    },
    {
      ...EXAMPLE_CATALOG,
      rotaries: [{ ...STRONG, ...rotary }],
      machines: [{ ...LARGE, ...machine } as typeof EXAMPLE_MACHINE],
    },
  );
  const winner = decision.arrangements.find(({ id }) => id === decision.recommended);
  return Number(winner?.measures.margin);
};

test('a need is short of its limit by a share of itself', () => {
  // the diagonal of 90 × 60 mm is 108.2 mm, the fixture 100 mm; a swing of 110 mm leaves 1.68 %
  expectClose(marginOf({ swing: 110, faceplate: 109.5 }), 109.5 / Math.hypot(90, 60) - 1, { percent: 0.001 });
});

test('a height is short by a share of the Z travel, not of a need that may be near zero', () => {
  // top at 40 + 40 + 55 mm, 25 mm and a 700 mm tool: 860 mm; the nose at 1270 − 400 mm; 10 of 1000 mm are left
  const tall = marginOf({ faceplate: 300 }, { noseToTable: [270, 1270] }, {}, { longest: 700 });
  expectClose(tall, 0.01, { percent: 0.001 });
});

test('a check that holds only with a measure, or is a yes or no, is no margin', () => {
  const before = marginOf({ swing: 110, faceplate: 109.5 });
  expectClose(marginOf({ swing: 110, faceplate: 100 }), 110 / Math.hypot(90, 60) - 1, { percent: 0.001 });
  expectClose(marginOf({ swing: 110, faceplate: 109.5, tilt: [-90, 90] }), before, { percent: 0.001 });
});
