import { describe, expect, test } from 'vitest';
import type { ExampleGiven } from '../../../src/rules/checks/example.ts';
import { easing, numbers, outcomeOf, said } from './said.ts';

/** A part 60 mm wide, machined 10 mm deep from its sides, on a faceplate of 250 mm; nose 90 mm, gap 10 mm. */
const work = (part: object = {}, more: ExampleGiven = {}): ExampleGiven => ({
  part: {
    size: [60, 60, 60],
    depthSide: 10,
    approaches: ['sides'],
    lowestSideFeature: 0,
    holding: { diameter: 60, height: 20 },
    ...part,
  },
  ...more,
  rotary: { faceplate: 250, ...more.rotary },
  machine: { noseDiameter: 90, ...more.machine },
  tools: { longest: 180, ...more.tools },
});
const need = (...of: Parameters<typeof work>) => numbers('tool-length', work(...of))[1];

describe('how long a tool has to be beside the faceplate', () => {
  test('as far as the edge is from the tip, and a gap', () => {
    expect(need()).toBe(115);
    expect(need({ eccentricity: 5 })).toBe(120);
    expect(need({ depthSide: 0 })).toBe(105);
    expect(need({ size: [60, 100, 60] })).toBe(115);
    expect(need({ size: [100, 60, 60] })).toBe(115);
    expect(need({ shape: 'round', diameter: 60, length: 60, stands: 'upright' })).toBe(115);
  });

  test('the nose passes the faceplate once it is half its width and a gap above it', () => {
    const fixture = (height: number) => need({ holding: { diameter: 60, height } });
    expect([fixture(54.9), fixture(55)]).toEqual([115, 20]);
    expect(need({ lowestSideFeature: 35 })).toBe(20);
    expect(need({ lowestSideFeature: 34.9 })).toBe(115);
  });

  test('and the fixture the same, as high as the lowest feature is above it', () => {
    const low = (lowestSideFeature: number) =>
      need({ lowestSideFeature, holding: { diameter: 60, height: 60 } });
    expect([low(54.9), low(55)]).toEqual([20, 0]);
    expect(need({ holding: { diameter: 80, height: 60 } })).toBe(30);
  });

  test('never less than nothing', () => {
    expect(need({ holding: { diameter: 10, height: 20 } }, { rotary: { faceplate: 10 } })).toBe(0);
    expect(need({ holding: { diameter: 20, height: 20 } }, { rotary: { faceplate: 10 } })).toBe(0);
    expect(need({ holding: { diameter: 22, height: 20 } }, { rotary: { faceplate: 10 } })).toBe(1);
  });

  test('without a faceplate only the fixture stands there', () => {
    expect(need({}, { rotary: { faceplate: null } })).toBe(20);
  });

  test('only where a side is machined', () => {
    expect(said('tool-length', work({ approaches: ['top'] }))).toEqual(['holds', null]);
    expect(said('tool-length', work({ approaches: ['top', { slant: 30 }] }))).toEqual(['holds', null]);
    for (const approaches of [['around'], ['sides'], ['top', 'sides']])
      expect(said('tool-length', work({ approaches }))[1]).toBe('gauge length beside the faceplate');
  });
});

describe('what helps where the tools are too short', () => {
  const short = { tools: { longest: 100 } } as const;

  test('a longer tool, if it is to be had and the nose comes high enough', () => {
    // 125 + 10 + 25 over the tilt axis, that is 310 mm over the table
    const nose = (top: number) =>
      easing('tool-length', work({}, { ...short, machine: { noseToTable: [100, top] } }));
    expect(nose(310)).toEqual(['buy-longer-tool', 115]);
    expect(nose(309)).toEqual(['raise-fixture', 55]);
  });

  test('over a fixture wider than the faceplate the nose has to come higher', () => {
    const wide = { holding: { diameter: 300, height: 20 } };
    const nose = (top: number) =>
      said('tool-length', work(wide, { machine: { noseToTable: [100, top] }, tools: { longest: 100 } }))[0];
    // 150 + 10 + 25; the fixture's own edge is not passed by raising it
    expect([nose(335), nose(334)]).toEqual(['holds if', 'fails']);
    const bare = (top: number) =>
      said(
        'tool-length',
        work(wide, { rotary: { faceplate: null }, machine: { noseToTable: [100, top] }, ...short }),
      )[0];
    expect([bare(335), bare(334)]).toEqual(['holds if', 'fails']);
  });

  test('no tool longer than can ordinarily be bought', () => {
    const plate = (faceplate: number) => easing('tool-length', work({}, { ...short, rotary: { faceplate } }));
    expect(plate(620)).toEqual(['buy-longer-tool', 300]);
    expect(plate(622)).toEqual(['raise-fixture', 55]);
  });

  test('a fixture raised by what the nose still lacks', () => {
    const raised = (lowestSideFeature: number, faceplate = 700) =>
      easing('tool-length', work({ lowestSideFeature }, { ...short, rotary: { faceplate } }));
    expect(raised(10)).toEqual(['raise-fixture', 45]);
    expect(raised(34)).toEqual(['raise-fixture', 21]);
  });

  test('raising does not help over the edge of the fixture itself', () => {
    const wide = { holding: { diameter: 240, height: 20 } };
    // 120 + 10 − 20 mm
    const tools = (longest: number) =>
      easing('tool-length', work(wide, { rotary: { faceplate: 700 }, tools: { longest } }))[0];
    expect(tools(110)).toBe('raise-fixture');
    expect(tools(109)).toBe(null);
  });

  test('without a faceplate there is none to raise it over', () => {
    const wide = { holding: { diameter: 640, height: 20 } };
    expect(said('tool-length', work(wide, { ...short, rotary: { faceplate: null } }))[0]).toBe('fails');
  });
});

describe('an undercut', () => {
  const undercut = (angle: number, part: object = {}, more: ExampleGiven = {}) =>
    work({ approaches: [{ undercut: angle }], holding: { diameter: 60, height: 10 }, ...part }, more);
  const tan = (angle: number) => Math.tan((angle * Math.PI) / 180);
  const cos = (angle: number) => Math.cos((angle * Math.PI) / 180);
  const cutter = { tools: { largestCutter: 20 } } as const;

  test('passes the edge of the faceplate on a slope, with half the cutter beside it', () => {
    const found = outcomeOf('tool-length', undercut(120, {}, cutter));
    expect(found.comparison).toMatchObject({
      what: 'height of the fixture for an undercut',
      secondary: true,
    });
    expect(found.need.low).toBeCloseTo(105 * tan(30) + 10 / cos(30), 9);
    expect(found.have.low).toBe(10);
  });

  test('its lowest feature stands so much higher', () => {
    const found = outcomeOf('tool-length', undercut(120, { lowestSideFeature: 7 }, cutter));
    expect(found.need.low).toBeCloseTo(105 * tan(30) + 10 / cos(30) - 7, 9);
  });

  test('wants no fixture where the part stands over the edge, or high above it', () => {
    const plate = (faceplate: number) =>
      outcomeOf('tool-length', undercut(120, {}, { ...cutter, rotary: { faceplate } }));
    expect(plate(40).need).toMatchObject({ low: 0, high: 0 });
    expect(plate(42).need.low).toBeCloseTo(tan(30) + 10 / cos(30), 9);
    expect(outcomeOf('tool-length', undercut(120, { lowestSideFeature: 300 }, cutter)).need.low).toBe(0);
  });

  test('wants the fixture raised', () => {
    const [measure, amount] = easing('tool-length', undercut(120, {}, cutter));
    expect([measure, amount]).toEqual(['raise-fixture', 72.169]);
    expect(
      outcomeOf('tool-length', undercut(120, { holding: { diameter: 60, height: 72.2 } }, cutter)).verdict,
    ).toBe('holds');
  });

  test('beside sides it wants it raised for both, before a longer tool is bought', () => {
    const both = (angle: number) =>
      easing(
        'tool-length',
        undercut(
          angle,
          { approaches: ['sides', { undercut: angle }] },
          { tools: { largestCutter: 20, longest: 100 } },
        ),
      );
    expect(both(100)).toEqual(['raise-fixture', 55]);
    expect(both(120)).toEqual(['raise-fixture', 72.169]);
  });

  test('asks nothing without a faceplate, nor where nothing tilts', () => {
    expect(said('tool-length', undercut(120, {}, { rotary: { faceplate: null } }))).toEqual(['holds', null]);
    expect(
      said('tool-length', undercut(120, {}, { rotary: { class: 'single-axis' }, mounting: 'axis-along-x' })),
    ).toEqual(['holds', null]);
  });
});
