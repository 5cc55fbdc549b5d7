import { expect, test } from 'vitest';
import { viseStations } from '../../src/rules/arranging/vise-stations.ts';
import { CHECKS } from '../../src/rules/checks/index.ts';
import { evaluateSide } from '../../src/rules/judging/side.ts';
import { noseAtBottom, noseAtTop } from '../../src/rules/sides/nose.ts';
import { expectClose } from '../close-to.ts';
import { exampleWorld, judgeExample } from './example-shop.ts';

/** Facts of the trade: common practice, no source. */

const noses = (raised: number) => {
  const [of] = exampleWorld({ raised }).cases;
  if (of === undefined) throw new Error('no case');
  return { top: evaluateSide(noseAtTop, of).low, bottom: evaluateSide(noseAtBottom, of).low };
};

test('a clearance addition moves both ends of the nose travel by the same amount and adds no travel', () => {
  const [without, with75] = [noses(0), noses(75)];
  expectClose(with75.top - without.top, 75, { absolute: 1e-9 });
  expectClose(with75.bottom - without.bottom, 75, { absolute: 1e-9 });
  expectClose(with75.top - with75.bottom, without.top - without.bottom, { absolute: 1e-9 });
});

test('a block of 1 × 2.5 × 3 in stands inside a 5 in envelope, whichever way up', () => {
  const swing = CHECKS.find(({ id }) => id === 'swing');
  if (swing === undefined) throw new Error('no check of the swing');
  const inch = 25.4;
  const sides = [1, 2.5, 3].map((side) => side * inch) as [number, number, number];
  for (const size of [sides, [sides[1], sides[2], sides[0]], [sides[0], sides[2], sides[1]]] as const) {
    const outcome = judgeExample(swing, {
      part: { size: [...size] as [number, number, number], holding: { diameter: 0 } },
      rotary: { swing: 5 * inch },
    });
    expect(outcome.verdict).toBe('holds');
  }
});

test('two 6 in vises stand on a built-in faceplate of 500 mm, not on one of 450 mm', () => {
  const stations = (faceplate: number): number | undefined => {
    const [of] = exampleWorld({ work: { vise: { width: 152, length: 450 } } }).cases;
    if (of === undefined) throw new Error('no case');
    const plate = {
      low: faceplate,
      high: faceplate,
      path: 'faceplate',
      gaps: [],
      forSeller: false,
      forOthers: false,
    };
    const ground = {
      ...of,
      machine: { ...of.machine, builtIn: true },
      rotary: { ...of.rotary, faceplate: plate },
    };
    return viseStations(ground, [{ cases: [ground], sure: true }])?.low;
  };
  expect(stations(500)).toBe(2);
  expect(stations(450)).toBe(1);
});

test('an adapter plate under the rotary lowers the nose above the tilt axis by its thickness', () => {
  const [of] = exampleWorld({ plates: 30 }).cases;
  if (of === undefined) throw new Error('no case');
  expectClose(noses(0).top - evaluateSide(noseAtTop, of).low, 30, { absolute: 1e-9 });
});
