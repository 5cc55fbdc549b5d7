import { describe, expect, it } from 'vitest';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { markdownReport, textReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_MACHINE, EXAMPLE_PART } from '../rules/example-shop.ts';
import { readText } from './markdown-text.ts';

interface Given {
  readonly part?: Partial<Part>;
  readonly answers?: Partial<Answers>;
  readonly machine?: Partial<typeof EXAMPLE_MACHINE>;
}

const decided = ({ part = {}, answers = {}, machine = {} }: Given): Decision =>
  decide(
    { ...EXAMPLE_ANSWERS, parts: [{ ...EXAMPLE_PART, tolerance: 0.5, ...part }], ...answers },
    { ...EXAMPLE_CATALOG, machines: [{ ...EXAMPLE_MACHINE, ...machine }] },
    { all: true },
  );

const LOOK = { width: 100, ascii: false };
const textOf = (decision: Decision, options = {}) => textReport(decision, LOOK, options).replace(/\s+/g, ' ');
const paperOf = (decision: Decision) => readText(markdownReport(decision));

describe('A mix that no family of which asks for five axes', () => {
  const decision = decided({ part: { approaches: ['top'] } });

  it('is said to be one, by text and paper, and misses nothing', () => {
    expect(decision.outcome).toBe('none');
    expect(decision.nearestMisses).toEqual([]);
    for (const said of [textOf(decision), paperOf(decision)]) {
      expect(said).toContain('Nothing in the parts mix asks for five axes.');
      expect(said).not.toMatch(/nearest miss/i);
      expect(said).not.toContain('What stopped most of them');
    }
  });

  it('is none once a side is cut', () => {
    expect(textOf(decided({}))).not.toContain('Nothing in the parts mix asks');
  });
});

describe('A feature that a part asks for', () => {
  const off = {
    part: { eccentricity: 20 },
    answers: { work: { ...EXAMPLE_ANSWERS.work, loading: 'by-hand' } },
  } as const;
  const lines = (price: number | 'standard' | undefined): string => {
    const { rotatingWorkOffset: _own, ...others } = EXAMPLE_MACHINE.features;
    const features = price === undefined ? others : { ...others, rotatingWorkOffset: price };
    const decision = decided({ ...off, machine: { features } });
    const text = markdownReport({ ...decision, recommended: decision.arrangements[0]?.id ?? null });
    return text
      .split('\n')
      .filter((each) => /carries the work offset around|rotating work offset at/.test(each))
      .join('\n');
  };

  it.each([
    [4200, 'can be ordered'],
    ['standard', 'comes with it'],
    [undefined, 'not offered'],
  ] as const)('at %s: %s', (price, words) => {
    expect(lines(price)).toContain(words);
  });

  it('has no zeros and ones among what went in', () => {
    const rows = markdownReport(decided(off))
      .split('\n')
      .filter((each) => /can be ordered/.test(each));
    expect(rows.join('\n')).toMatch(/standard: no/);
    expect(rows.join('\n')).not.toMatch(/(needed|offered|standard) [01]\b/);
  });
});

describe('The paper', () => {
  const decision = decided({ answers: { matters: [...EXAMPLE_ANSWERS.matters] } });
  const paper = paperOf(decision);

  it('says how coverage, vise stations and floor area come about', () => {
    expect(paper).toContain('How coverage, vise stations and floor area are worked out');
    expect(paper).toContain('hours of the families that hold or hold if ÷ hours of all five-axis families');
    expect(paper).toContain('⌊(free + gap) ÷ (vise width + gap)⌋');
    expect(paper).toContain('2400 mm × 2100 mm');
  });

  it('has a line for each rotary', () => {
    expect(paper).toContain('What became of each rotary');
    expect(decision.byRotary.map(({ rotary }) => rotary)).toEqual(
      EXAMPLE_CATALOG.rotaries.map(({ id }) => id),
    );
    const sum = decision.byRotary.reduce(
      (all, { left, dropped }) => all + left + Object.values(dropped).reduce((a, b) => a + (b ?? 0), 0),
      0,
    );
    expect(sum).toBe(decision.count);
  });

  it('says that a size of cut is taken as not interrupted', () => {
    expect(paper).toContain('a size of cut: its numbers are assumed, and that it is not interrupted');
  });

  it('does not claim that an answer was not given', () => {
    expect(paper).not.toContain('taken unless another is given');
  });

  it('names the measures that it passes over in the ranking', () => {
    const passedOver = decision.ranking.filter(({ best, drops }) => best === null && drops.length === 0);
    expect(paper.includes('Passed over, because no number')).toBe(passedOver.length > 0);
  });
});

describe('Text with every arrangement', () => {
  const decision = decided({ part: { size: [900, 60, 55] } });

  it('has a line for each', () => {
    const [, text = ''] = textOf(decision, { all: true }).split(/EVERY ARRANGEMENT|IN SHORT/);
    expect(text.match(/: (dropped at|recommended|passes|open|does not pass)/g)).toHaveLength(decision.count);
    expect(textOf(decision)).not.toContain('EVERY ARRANGEMENT');
  });
});
