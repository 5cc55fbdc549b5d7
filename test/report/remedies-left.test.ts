import { describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { remediesLeft } from '../../src/report/remedies-left.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement, Decision } from '../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from '../rules/example-shop.ts';
import { readText } from './markdown-text.ts';

const LOW = { kind: 'lowered-table', adds: 75, price: 3200, height: 0 } as const;
const SPACER = { kind: 'column-spacer', adds: 200, price: 8600, height: 200 } as const;

interface Given {
  readonly clearance?: typeof EXAMPLE_MACHINE.clearance;
  readonly top?: number;
  readonly pitches?: readonly number[];
  readonly tolerance?: number;
  readonly probe?: number | 'standard' | undefined;
}

function decided({ clearance = [], top = 610, pitches = [80], tolerance = 0.5, probe }: Given): Decision {
  const hold = { 'tilt-along-x': { keyWidth: 18, pitches } };
  const features = { ...EXAMPLE_MACHINE.features };
  delete features.spindleProbe;
  return decide(
    { ...EXAMPLE_ANSWERS, parts: [{ ...EXAMPLE_PART, tolerance }] },
    {
      ...EXAMPLE_CATALOG,
      rotaries: [{ ...EXAMPLE_ROTARY, hold }],
      machines: [
        {
          ...EXAMPLE_MACHINE,
          noseToTable: [100, top],
          clearance,
          features: probe === undefined ? features : { ...features, spindleProbe: probe },
        },
      ],
    },
    { all: true },
  );
}

const only = ({ arrangements: [first] }: Decision): Arrangement => {
  if (first === undefined) throw new Error('no arrangement');
  return first;
};

function remedies(decision: Decision, check: string): readonly string[] {
  const arrangement = only(decision);
  const index = arrangement.checks.findIndex((each) => each.check === check);
  const result = arrangement.checks[index];
  if (result === undefined) throw new Error(`no ${check}`);
  expect(result.verdict).toBe('fails');
  return remediesLeft(decision, arrangement, { result, path: ['arrangements', 0, 'checks', index] });
}

describe('What can help', () => {
  it('names no addition that the machine does not offer', () => {
    expect(remedies(decided({ top: 300 }), 'reach-high')).toEqual(['shorter-tools', 'lower-fixture']);
  });

  it('names additions that are offered and not in use', () => {
    // the lowered table alone does not suffice and is not taken
    const decision = decided({ top: 250, clearance: [LOW] });
    expect(only(decision).clearance).toEqual([]);
    expect(remedies(decision, 'reach-high')).toContain('lowered-table');
    expect(remedies(decision, 'reach-high')).not.toContain('column-spacer');
  });

  it('names no addition that is in use', () => {
    const decision = decided({ top: 250, clearance: [LOW] });
    const used = { ...only(decision), clearance: ['lowered-table'] as const };
    const index = used.checks.findIndex(({ check }) => check === 'reach-high');
    const result = used.checks[index];
    if (result === undefined) throw new Error('no check');
    expect(remediesLeft(decision, used, { result, path: [] })).not.toContain('lowered-table');
  });

  it('names no probe where one was looked at already, or is not offered', () => {
    for (const probe of [6800, 'standard', undefined] as const)
      expect(remedies(decided({ tolerance: 0.001, probe }), 'index-accuracy')).not.toContain('spindle-probe');
  });

  it('stands beside the setting that was judged', () => {
    const text = readText(markdownReport(decided({ top: 300 })));
    expect(text).toContain('judged with no additions or plates');
    expect(text).not.toContain('a lowered table');
  });
});

describe('Additions and plates that were tried', () => {
  const decision = decided({ pitches: [63], top: 420, clearance: [SPACER, LOW] });
  const text = readText(markdownReport(decision));

  it('say what stops each, checks of the arrangement itself too', () => {
    expect(decision.outcome).toBe('recommended');
    const [first] = only(decision).tried;
    expect(first).toMatchObject({ clearance: [], plates: [] });
    expect(first?.stops).toContainEqual({ check: 'slot-match', part: null });
    expect(first?.stops).toContainEqual({ check: 'reach-high', part: 'Example' });
    expect(text).toContain('T-slots');
    expect(text).toContain('reach above the work (Example)');
  });

  it('mark the one that is taken', () => {
    const { clearance, plates, tried } = only(decision);
    const taken = tried.filter(
      (each) =>
        each.clearance.join() === clearance.join() &&
        each.plates.join() === plates.map(({ thickness }) => thickness).join(),
    );
    expect(taken.map(({ stops }) => stops)).toEqual([[]]);
    expect(text.match(/taken(?=\n|$)/g)?.length ?? 0).toBeGreaterThanOrEqual(1);
  });
});

describe('Numbers that need to be told how they are counted', () => {
  it('accuracy says whether the centers were found by hand or probed', () => {
    const byHand = readText(markdownReport(decided({ tolerance: 0.5 })));
    expect(byHand).toContain('The faces come out true to each other (centers found by hand)');
    const probed = readText(markdownReport(decided({ tolerance: 0.5, probe: 'standard' })));
    expect(probed).toContain('The faces come out true to each other (centers probed)');
  });

  it('heights say from which axis', () => {
    const text = readText(markdownReport(decided({})));
    expect(text).toContain('The spindle gets high enough above the work (above the tilt axis)');
  });
});
