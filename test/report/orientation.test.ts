import { describe, expect, it } from 'vitest';
import type { HousingBox } from '../../src/catalog/catalog.ts';
import { markdownReport, textReport } from '../../src/report/index.ts';
import { orientation } from '../../src/report/orientation.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { expectClose } from '../close-to.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from '../rules/example-shop.ts';
import { readText } from './markdown-text.ts';

const AT_ONE_END: readonly HousingBox[] = [{ along: [-140, -90], across: [-130, 130], top: 150 }];

/** Invented: one tilting rotary with its tilt axis along Y; a short throat lets it stand one way round only. */
function decided(housing: readonly HousingBox[] | null, throat: number): Decision {
  const hold = { 'tilt-along-y': { keyWidth: 18, pitches: [80] } };
  const table = { ...EXAMPLE_MACHINE.table, size: [900, 500] } as typeof EXAMPLE_MACHINE.table;
  return decide(
    { ...EXAMPLE_ANSWERS, parts: [{ ...EXAMPLE_PART, tolerance: 0.5 }] },
    {
      ...EXAMPLE_CATALOG,
      rotaries: [{ ...EXAMPLE_ROTARY, hold, housing }],
      machines: [{ ...EXAMPLE_MACHINE, table, throat }],
    },
    { all: true },
  );
}

const first = ({ arrangements: [only] }: Decision) => {
  if (only === undefined) throw new Error('no arrangement');
  return only;
};

describe('Which way round the rotary stands', () => {
  const decision = decided(AT_ONE_END, 600);

  it('is said with its housing toward the door', () => {
    expect(orientation({ ...first(decision), turned: false }, decision)).toBe(
      'The rotary stands the way round that its catalog row draws it: its housing stands toward the operator’s door.',
    );
  });

  it('is said with its housing toward the column', () => {
    expect(orientation({ ...first(decision), turned: true }, decision)).toBe(
      'The rotary is turned end for end against its catalog row: its housing stands toward the column.',
    );
  });

  it('says what is not published', () => {
    const without = decided(null, 600);
    expect(orientation({ ...first(without), turned: true }, without)).toContain(
      'ask the seller which end has it',
    );
  });

  it('stands in the text and in the Markdown', () => {
    expect(decision.outcome).toBe('recommended');
    const said = orientation(first(decision), decision) ?? '';
    expect(textReport(decision, { width: 120, ascii: false }).replace(/\s+/g, ' ')).toContain(said);
    expect(readText(markdownReport(decision))).toContain(said);
  });
});

describe('Connectors behind the rotary', () => {
  it('do not stand at the bare end of the base', () => {
    // the base ends 280 mm behind the center, the housing 140 mm before it
    const found = first(decided(AT_ONE_END, 345));
    expect(found.turned).toBe(false);
    const column = found.checks.find(({ check }) => check === 'column');
    expect(column?.verdict).toBe('holds');
    // the tips reach √(90² + 60²)/2 + 10 mm to the front
    expectClose(Number(column?.need), 280 + Math.sqrt(90 ** 2 + 60 ** 2) / 2 + 10, { absolute: 1e-9 });
  });

  it('may be anywhere where no housing is drawn', () => {
    const found = first(decided(null, 345));
    expect(found.checks.find(({ check }) => check === 'column')?.verdict).toBe('fails');
  });
});

describe('Loading over the housing', () => {
  it('is a caution where the housing stands toward the door', () => {
    expect(decided(AT_ONE_END, 345).cautions).toContain('loading-over-housing');
  });

  it('is none where it stands elsewhere', () => {
    const beside: readonly HousingBox[] = [{ along: [-140, 140], across: [135, 180], top: 150 }];
    expect(decided(beside, 345).cautions).not.toContain('loading-over-housing');
  });
});
