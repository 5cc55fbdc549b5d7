import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { assumed } from '../../src/questions/assumptions.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { type AnswersFile, readAnswers } from '../../src/questions/read-answers.ts';

function fileOf(text: string): AnswersFile {
  const read = readAnswers('a.yaml', text);
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value;
}

const read = (parts: string, units = 'mm', rest = ''): Answers =>
  fileOf(`format: fivesides-answers/1\nunits: ${units}\n${rest}parts:\n${parts}`).answers;

function partOf(keys: string, units = 'mm') {
  const [part] = read(`  - { name: A, ${keys} }`, units).parts;
  if (part === undefined) throw new Error('no part');
  return part;
}

describe("the contract's example", () => {
  const path = join(import.meta.dirname, '..', 'fixtures', 'contract.answers.yaml');
  const file = readAnswers(path);
  const answers = file.ok ? file.value.answers : undefined;

  test('is read whole, in base units', () => {
    expect(file.ok ? [] : file.problems.map(describeProblem)).toEqual([]);
    expect(answers).toMatchObject({
      format: 'fivesides-answers/1',
      units: 'mm',
      currency: 'EUR',
      tools: { shortest: 90, longest: 180, largestCutter: 20 },
      work: { threeAxisShare: 0.4, loading: 'by-hand', swap: 'keyed' },
      money: { interest: 0.06, residual: 30000 },
      control: { cam: 'threeAxis' },
      assume: {},
    });
    expect(answers?.parts[0]).toMatchObject({
      name: 'Lock gate hinge',
      size: [90, 60, 55],
      stands: 'upright',
      mass: 0.8,
      approaches: ['top', 'sides'],
      holding: { by: 'fixture', diameter: 100, height: 40, mass: 4 },
      drill: { diameter: 12, feed: 0.2, offset: 40 },
    });
    expect(answers?.shop.lifting[0]).toMatchObject({
      by: 'hoist',
      capacity: 500,
      rigging: 10,
      people: 'unknown',
    });
  });

  test('remembers its text and its units', () => {
    expect(file.ok && file.value.shownIn).toBe('mm');
    expect(file.ok && file.value.file).toBe(path);
    expect(file.ok && file.value.text).toContain('Lock gate hinge');
  });
});

describe('what is left out', () => {
  test('is unknown, or what the contract says it then is', () => {
    const answers = read('  - { name: A }');
    expect(answers).toEqual({ ...blankAnswers('unknown'), parts: [blankPart('A')] });
  });

  test('is the same as what is left empty, and as unknown', () => {
    const empty = read(
      '  - name: A\n    mass:\n    yearly:\n    drill:',
      'mm',
      'shop:\nwork: unknown\nmoney: {}\n',
    );
    expect(empty).toEqual(read('  - { name: A }'));
  });

  test('a block stands upright, unless somebody says that he does not know', () => {
    expect(partOf('shape: block').stands).toBe('upright');
    expect(partOf('shape: block, stands: unknown').stands).toBe('unknown');
    expect(partOf('shape: round').stands).toBe('unknown');
  });

  test('a drill that is there but not known is not the same as none', () => {
    expect(partOf('drill: none').drill).toBeNull();
    expect(partOf('drill: unknown').drill).toEqual({
      diameter: 'unknown',
      feed: 'unknown',
      offset: 'unknown',
    });
  });

  test('eccentricity that is not known is not zero', () => {
    expect(partOf('eccentricity: unknown').eccentricity).toBe('unknown');
  });

  test('measures that are not named follow in the usual order', () => {
    expect(read('  - { name: A }', 'mm', 'matters: [price, margin]\n').matters).toEqual([
      'price',
      'margin',
      'coverage',
      'viseStations',
      'payback',
      'floorArea',
      'swapHours',
    ]);
  });
});

describe('quantities', () => {
  test('in inches and in millimeters are the identical numbers', () => {
    const keys =
      'shape: block, size: [3.5, 2 1/4, 0.1], mass: 2, depthTop: [1, 2], cut: { diameter: 0.5, fz: 0.004 }';
    const written =
      'shape: block, size: [88.9, 57.15, 2.54], mass: 2 lb, depthTop: [25.4, 50.8], cut: { diameter: 12.7, fz: 0.1016 }';
    expect(partOf(keys, 'inch')).toEqual(partOf(written));
  });

  test('a range of one number is that number', () => {
    expect(partOf('tolerance: [0.05, 0.05]').tolerance).toBe(0.05);
    expect(partOf('tolerance: [0.02, 50 µm]').tolerance).toEqual([0.02, 0.05]);
  });

  test('bare feeds and cutting speeds are in in/min and ft/min in a file in inches', () => {
    expect(partOf('contour: { feed: 80 }', 'inch').contour.feed).toBe(2032);
    expect(partOf('contour: { feed: 80 }').contour.feed).toBe(80);
    expect(partOf('contour: { feed: 2032 mm/min }', 'inch').contour.feed).toBe(2032);
    expect(partOf('cut: { vc: 500 }', 'inch').cut).toMatchObject({ vc: 152.4 });
    expect(partOf('cut: { vc: 500 }').cut).toMatchObject({ vc: 500 });
    expect(partOf('cut: { vc: 150 m/min }', 'inch').cut).toMatchObject({ vc: 150 });
  });

  test('assumptions follow the units of the file', () => {
    expect(read('  - { name: A }', 'inch', 'assume: { approach: 1, brakeSafety: 2.5 }\n').assume).toEqual({
      approach: 25.4,
      brakeSafety: 2.5,
    });
  });

  test('assumptions that belong together are read by their names', () => {
    const given = 'assume: { swapMinutes: { keyed: 45 }, handLift: { reach: 20, coupling: poor } }\n';
    const { assume } = read('  - { name: A }', 'inch', given);
    expect(assume).toEqual({ swapMinutes: { keyed: 45 }, handLift: { reach: 508, coupling: 'poor' } });
    expect(assumed(assume)).toMatchObject({
      swapMinutes: { 'zero-point': 25, keyed: 45, trammed: 120 },
      handLift: { reach: 508, from: 750, lift: 250, coupling: 'poor' },
    });
    expect(read('  - { name: A }', 'mm', 'assume: { swapMinutes: {} }\n').assume).toEqual({});
  });
});
