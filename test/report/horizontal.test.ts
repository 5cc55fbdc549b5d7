import { describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { leaning } from '../../src/report/leaning.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_BUILT_IN,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from '../rules/example-shop.ts';
import { readText } from './markdown-text.ts';

const HOUSING = [{ along: [-230, 0], across: [-95, 95], top: 200 }] as const;

/** Invented: a horizontal mill with a single axis on its back, for work that is cut all around. */
const upright = decide(
  { ...EXAMPLE_ANSWERS, parts: [{ ...EXAMPLE_PART, size: [60, 60, 80], approaches: ['around'] }] },
  {
    ...EXAMPLE_CATALOG,
    rotaries: [{ ...EXAMPLE_ROTARY, class: 'single-axis', tilt: null, housing: HOUSING }],
    machines: [
      { ...EXAMPLE_MACHINE, spindle: 'horizontal', noseToTable: [50, 600], spindleToTable: [30, 600] },
    ],
  },
  { all: true },
);

/** The same with a table of its own that tilts about a level axis. */
const own = decide(
  EXAMPLE_ANSWERS,
  {
    ...EXAMPLE_CATALOG,
    machines: [
      {
        ...EXAMPLE_MACHINE,
        kind: 'five-axis',
        spindle: 'horizontal',
        table: null,
        noseToTable: 'unknown',
        builtIn: { ...EXAMPLE_BUILT_IN, leans: 'downward' },
      },
    ],
  },
  { all: true },
);

const textOf = (decision: Decision): string => readText(markdownReport(decision));

describe('A single axis on a horizontal mill', () => {
  const text = textOf(upright);

  it('is recommended by what it looks like: upright, on its back', () => {
    expect(upright.outcome).toBe('recommended');
    expect(text).toContain('Example mill with Example rotary (rotary axis upright)');
    expect(text).toContain('The rotary lies on its back, its faceplate up and its axis upright');
    expect(text).not.toContain('rotary axis along Y');
    expect(text).toContain('Rotary: Example rotary, single-axis rotary.');
  });

  it('has its place along X alone, and no housing to reach over', () => {
    expect(text).toMatch(/Place of the rotary axis, from the middle of the table: X 0 mm\./);
    expect(upright.cautions).not.toContain('loading-over-housing');
  });

  it('comes with the word that tilting ones were not looked at there', () => {
    expect(text).toContain(
      'The spindle of Example mill is horizontal: rotaries of one axis were looked at there, standing upright; tilting ones were not.',
    );
    expect(textOf(own)).not.toContain('tilting ones were not');
  });
});

describe('A table under a level tool', () => {
  it.each([
    ['downward', [-30, 110], 'As it tilts, the end of the work toward the spindle leans down.'],
    ['upward', [-30, 110], 'As it tilts, the end of the work toward the spindle leans up.'],
    ['downward', [-110, 30], 'As it tilts, the end of the work toward the spindle leans up.'],
  ] as const)('that leans %s from %j', (leans, tilt, said) => {
    const [arrangement] = own.arrangements;
    const [machine] = own.inputs.catalog.machines;
    if (arrangement === undefined || machine === undefined) throw new Error('no arrangement');
    const turned = { ...machine, builtIn: { ...EXAMPLE_BUILT_IN, leans, tilt } };
    const catalog = { ...own.inputs.catalog, machines: [turned] };
    expect(leaning(arrangement, { ...own, inputs: { ...own.inputs, catalog } })).toBe(said);
  });
});
