import { describe, expect, it } from 'vitest';
import { jsonReport } from '../../src/report/index.ts';
import { DECISIONS, steering } from './decisions.ts';
import { fixtureDecision } from './fixture.ts';
import { STEERS } from './steers.ts';

/** The fields of the contract, in its order. */
const FIELDS = [
  'format',
  'inputs',
  'outcome',
  'recommended',
  'arrangements',
  'stages',
  'classes',
  'features',
  'stability',
  'unknowns',
  'cautions',
];
const OF_ARRANGEMENT = [
  'id',
  'machine',
  'rotary',
  'class',
  'mounting',
  'place',
  'clearance',
  'plates',
  'verdict',
  'parts',
  'measures',
  'checks',
  'undominated',
  'flips',
];
const OF_CHECK = [
  'check',
  'part',
  'verdict',
  'need',
  'have',
  'unit',
  'margin',
  'inputs',
  'formula',
  'source',
];

/** Keys with the same keys behind them in another order. */
const shuffled = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(shuffled);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, each]) => [key, shuffled(each)]),
  );
};

const inOrder = (keys: readonly string[], wanted: readonly string[]): readonly string[] =>
  keys.filter((key) => wanted.includes(key));

describe.each(DECISIONS)('The JSON of %s', (_what, decision) => {
  it('is the decision and nothing else', () => {
    expect(JSON.parse(jsonReport(decision))).toEqual(JSON.parse(JSON.stringify(decision)));
  });

  it('has the fields of the contract in their order', () => {
    const json = JSON.parse(jsonReport(decision));
    expect(inOrder(Object.keys(json), FIELDS)).toEqual(FIELDS);
    for (const arrangement of json.arrangements) {
      expect(inOrder(Object.keys(arrangement), OF_ARRANGEMENT)).toEqual(OF_ARRANGEMENT);
      for (const check of arrangement.checks) expect(inOrder(Object.keys(check), OF_CHECK)).toEqual(OF_CHECK);
    }
  });

  it('ends with one line break', () => {
    expect(jsonReport(decision)).toMatch(/\}\n$/);
  });
});

describe('The JSON', () => {
  it('has the same order of keys wherever a list of fields is fixed', () => {
    const keysOf = (text: string) => {
      const json = JSON.parse(text);
      return [
        Object.keys(json),
        Object.keys(json.arrangements[0]),
        Object.keys(json.arrangements[0].checks[0]),
      ];
    };
    const decision = fixtureDecision();
    expect(keysOf(jsonReport(shuffled(decision) as typeof decision))).toEqual(keysOf(jsonReport(decision)));
  });

  it('writes what nothing bounds as null', () => {
    const decision = {
      ...fixtureDecision(),
      count: Number.POSITIVE_INFINITY,
      hours: { a: [1, Number.POSITIVE_INFINITY] as const },
    };
    expect(JSON.parse(jsonReport(decision))).toMatchObject({ count: null, hours: { a: [1, null] } });
  });

  it('escapes what could steer a terminal, and reads back as it was', () => {
    const text = jsonReport(fixtureDecision({ name: steering }));
    expect(text).not.toMatch(STEERS);
    expect(JSON.parse(text).inputs.catalog.rotaries[0].name).toBe(steering('Wren'));
  });
});
