import { describe, expect, it } from 'vitest';
import { facedSide, housingSides } from '../../../src/rules/sides/housing.ts';
import { pointsBack } from '../../../src/rules/sides/points-back.ts';

const AT_THE_LEFT_END = [{ along: [-140, -70], across: [-130, 130], top: 150 }] as const;
const BOTH_ENDS = [...AT_THE_LEFT_END, { along: [70, 140], across: [-130, 130], top: 150 }] as const;
const BESIDE_A_CORNER = [{ along: [-140, -70], across: [40, 130], top: 150 }] as const;

describe('The sides on which a housing stands', () => {
  it.each([
    ['tilt-along-x', false, ['left']],
    ['tilt-along-x', true, ['right']],
    ['tilt-along-y', false, ['door']],
    ['tilt-along-y', true, ['column']],
  ] as const)('%s, turned %s: %j', (mounting, turned, sides) => {
    expect(housingSides(AT_THE_LEFT_END, { mounting, turned })).toEqual(sides);
  });

  it('are both of a cradle that is carried at both ends', () => {
    expect(housingSides(BOTH_ENDS, { mounting: 'tilt-along-y', turned: false })).toEqual(['door', 'column']);
  });

  it('are none where it stands off to a corner', () => {
    expect(housingSides(BESIDE_A_CORNER, { mounting: 'tilt-along-y', turned: false })).toEqual([]);
  });
});

describe('The faceplate of a level axis', () => {
  it.each([
    ['axis-along-x', false, 'right'],
    ['axis-along-x', true, 'left'],
    ['axis-along-y', false, 'column'],
    ['axis-along-y', true, 'door'],
  ] as const)('%s, turned %s, looks to the %s', (mounting, turned, side) => {
    expect(facedSide({ mounting, turned })).toBe(side);
  });
});

describe('A rotary is turned, never mirrored', () => {
  /** The turn that takes the rotary's u to its place on the machine must take its v there too. */
  it.each([
    ['tilt-along-x', false],
    ['tilt-along-x', true],
    ['tilt-along-y', false],
    ['tilt-along-y', true],
  ] as const)('%s, turned %s', (mounting, turned) => {
    const sign = (axis: 'x' | 'y') => (pointsBack(mounting, turned, axis) ? -1 : 1);
    const [u, v] =
      mounting === 'tilt-along-x'
        ? [
            { x: sign('x'), y: 0 },
            { x: 0, y: sign('y') },
          ]
        : [
            { x: 0, y: sign('y') },
            { x: sign('x'), y: 0 },
          ];
    expect(u.x * v.y - u.y * v.x).toBe(1);
  });
});
