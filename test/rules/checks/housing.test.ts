import { describe, expect, test } from 'vitest';
import { numbers, outcomeOf, said } from './said.ts';

const HOLDS_NOTHING = ['holds', null] as const;
const SINGLE = { class: 'single-axis' } as const;

describe('the nose over a housing', () => {
  // tips over the part: ±64.08 mm along and across; at its sides ±55 mm along, −120 to −50 mm across
  const over = (box: object, noseDiameter: number, longest = 180) =>
    ({
      part: { size: [90, 60, 60], holding: { diameter: 100, height: 40 }, depthSide: 20, depthTop: 0 },
      rotary: {
        centerHeight: 150,
        faceOffset: 10,
        housing: [{ along: [-140, -70], across: [-130, 130], top: 150, ...box }],
      },
      machine: { noseDiameter },
      tools: { longest, largestCutter: 20 },
    }) as const;
  const met = (box: object, nose: number) => said('housing-clear', over(box, nose))[1];

  test.each([
    ['before it', { along: [-140, -70] }],
    ['behind it', { along: [70, 140] }],
  ])('counts once half of it stands over what is %s', (_where, box) => {
    expect([met(box, 11.8), met(box, 11.9)]).toEqual([null, 'top over housing 1']);
  });

  test.each([
    ['to one side', { along: [-140, 140], across: [70, 130] }],
    ['to the far side of the tips at the walls', { along: [-140, 140], across: [-200, -126] }],
  ])('and the same %s', (_where, box) => {
    expect([met(box, 11.8), met(box, 12.2)].map((what) => what !== null)).toEqual([false, true]);
  });

  test.each([
    { along: [-140, -70], across: [-130, 130] },
    { along: [70, 140], across: [-130, 130] },
    { along: [-140, 140], across: [70, 130] },
  ])('and not where it just touches %j', (box) => {
    // a radius of 50 mm and half the cutter: 60 mm; half a nose of 20 mm ends at 70 mm
    const at = (noseDiameter: number) => {
      const of = over(box, noseDiameter);
      return said('housing-clear', {
        ...of,
        part: { ...of.part, size: [60, 80, 60], approaches: ['top'] },
      })[1];
    };
    expect([at(20), at(20.001)]).toEqual([null, 'top over housing 1']);
  });

  test('surely over it on either side, so that it fails there', () => {
    for (const along of [
      [-140, -70],
      [70, 140],
    ])
      expect(said('housing-clear', over({ along, top: 900 }, 90))[0]).toBe('fails');
    for (const across of [
      [-130, -60],
      [60, 130],
    ])
      expect(said('housing-clear', over({ along: [-140, 140], across, top: 900 }, 90))[0]).toBe('fails');
  });

  test('what a shop does not know of its part is not the seller’s to say', () => {
    const of = over({ top: 340 }, 90);
    const found = outcomeOf('housing-clear', { ...of, part: { ...of.part, depthSide: [0, 60] } });
    expect(found).toMatchObject({ verdict: 'open', advisory: false });
  });

  test('not over a corner that it passes', () => {
    expect(met({ along: [-140, -70], across: [70, 130] }, 11.8)).toBeNull();
    expect(met({ along: [-140, -66], across: [200, 300] }, 90)).toBeNull();
    expect(met({ along: [-300, -200], across: [-60, 60] }, 90)).toBeNull();
  });

  test('a nose of which nobody knows the width may', () => {
    const found = outcomeOf('housing-clear', {
      ...over({ top: 900 }, 90),
      machine: { noseDiameter: 'unknown' },
    });
    expect(found).toMatchObject({ verdict: 'open', advisory: true });
  });

  test('a housing just lower than the tool is long clears it', () => {
    // 340 − 150 + 10 mm against a tip at 10 mm and the tool
    const box = { top: 340 };
    expect(numbers('housing-clear', over(box, 90, 190))).toEqual(['holds', 200, 200]);
    expect(numbers('housing-clear', over(box, 90, 189.9))).toEqual(['fails', 200, 199.9]);
  });

  test('where no outline is published the seller is asked', () => {
    expect(outcomeOf('housing-clear', { rotary: { housing: null } })).toMatchObject({
      verdict: 'open',
      advisory: true,
    });
    expect(outcomeOf('housing-clear', { rotary: { housing: [] } })).toMatchObject({
      verdict: 'holds',
      comparison: null,
    });
  });

  test('on its back a rotary has another outline', () => {
    const given = { ...over({ top: 900 }, 90), rotary: { ...over({ top: 900 }, 90).rotary, ...SINGLE } };
    const around = { ...given, part: { ...given.part, approaches: ['around'] } } as never as typeof given;
    expect(said('housing-clear', { ...around, machine: { spindle: 'horizontal' } })).toEqual(HOLDS_NOTHING);
  });
});
