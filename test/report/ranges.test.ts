import { describe, expect, test } from 'vitest';
import { BLANK_MEANS } from '../../src/questions/lifting/means.ts';
import { markdownReport, textReport } from '../../src/report/index.ts';
import { rangeBar, withoutBar } from '../../src/report/range-bar.ts';
import { TEXT_VIEWS } from '../../src/report/screen-lines.ts';
import { ranges } from '../../src/report/sections/ranges.ts';
import type { Decision, Stability } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';
import { blockText } from './section-text.ts';

const HINGE = 'parts[Lock gate hinge]';

/** Made by hand: out of order, with ends that are missing. */
const STABILITY: readonly Stability[] = [
  { answer: 'tools.longest', at: 180, low: 150, high: 214, givenUp: [] },
  { answer: 'money.budget', at: 180000, low: 141000, high: null, givenUp: [] },
  { answer: `${HINGE}.depthTop`, at: 30, low: 0, high: 32, givenUp: [] },
  { answer: 'shop.ceiling', at: 3600, low: null, high: null, givenUp: [] },
  { answer: 'tools.shortest', at: 90, low: null, high: 96, givenUp: [] },
];

const decided = (change: Partial<Decision> = {}): Decision => ({
  ...fixtureDecision(),
  stability: STABILITY,
  ...change,
});

const LOOK = { width: 80, ascii: false };

describe('the bar of a range', () => {
  test('the mark stands where the answer does', () => {
    expect(rangeBar({ at: 182, low: 150, high: 214 })).toBe('(---------o---------)');
    expect(rangeBar({ at: 150, low: 150, high: 214 })).toBe('o-------------------)');
    expect(rangeBar({ at: 214, low: 150, high: 214 })).toBe('(-------------------o');
  });

  test('an answer near an end is not on it', () => {
    expect(rangeBar({ at: 150.1, low: 150, high: 214 })).toBe('(o------------------)');
    expect(rangeBar({ at: 213.9, low: 150, high: 214 })).toBe('(------------------o)');
  });

  test('a side without an end is dotted', () => {
    expect(rangeBar({ at: 90, low: null, high: 96 })).toBe('..........o---------)');
    expect(rangeBar({ at: 90, low: 80, high: null })).toBe('(---------o..........');
    expect(rangeBar({ at: 90, low: null, high: null })).toBe('..........o..........');
  });

  test('every bar is known again at the end of a line, to be left out where it is read aloud', () => {
    const ends = [null, 90, 60] as const;
    for (const low of ends)
      for (const high of [null, 90, 120])
        expect(withoutBar(`budget ${rangeBar({ at: 90, low, high })}`)).toBe('budget');
  });
});

test('read aloud there are no bars, and no heading over them', () => {
  const lines = TEXT_VIEWS.ranges(decided(), LOOK).map(withoutBar);
  expect(lines.join('\n')).toMatch(/longest tool +180 mm +150 mm +214 mm$/m);
  expect(lines.join('\n')).not.toMatch(/Where it stands|-{3}|\.{3}/);
  const narrow = TEXT_VIEWS.ranges(decided(), { width: 40, ascii: false }).map(withoutBar);
  expect(narrow.join('\n')).not.toMatch(/Where it stands|-{3}|\.{3}/);
});

describe('how far each answer may move', () => {
  test('the tightest come first, with both ends in words', () => {
    const lines = blockText(ranges(decided()), decided()).replaceAll('\u202f', ' ').split('\n');
    const rows = lines.filter((line) => /[-.]{9}/.test(line));
    expect(rows.map((line) => line.split(' | ').slice(0, 4))).toEqual([
      ['depth from the top (Lock gate hinge)', '30 mm', '0 mm', '32 mm'],
      ['shortest tool', '90 mm', 'none found', '96 mm'],
      ['longest tool', '180 mm', '150 mm', '214 mm'],
      ['budget', '180 000 EUR', '141 000 EUR', 'none found'],
    ]);
  });

  test('an end at which the search was given up says that there may be more', () => {
    const [longest, ...rest] = STABILITY;
    if (longest === undefined) throw new Error('no range');
    const given = decided({ stability: [{ ...longest, givenUp: ['low', 'high'] }, ...rest] });
    expect(blockText(ranges(given), given).replaceAll('\u202f', ' ')).toContain(
      '180 mm | 150 mm or less | 214 mm or more',
    );
  });

  test('where no end was found it is named apart', () => {
    expect(blockText(ranges(decided()), decided())).toContain(
      'Answers that have room on either side, with no end found\nceiling.',
    );
  });

  test('inches are read as inches', () => {
    const inch = { ...fixtureDecision({ shownIn: 'inch' }), stability: STABILITY };
    expect(blockText(ranges(inch), inch)).toContain('180 mm (7.087 in)');
  });

  test('without a recommendation, and without ranges, it says why there are none', () => {
    const open = { ...fixtureDecision({ outcome: 'open' }), stability: [] };
    expect(blockText(ranges(open), open)).toContain('Nothing is recommended as things stand');
    const none = decided({ stability: [] });
    expect(blockText(ranges(none), none)).toContain('or how far was not worked out');
  });
});

describe('where it stands', () => {
  test('in the report, and in its own view', () => {
    expect(markdownReport(decided())).toContain('## How far each answer may move');
    const view = TEXT_VIEWS.ranges(decided(), LOOK).join('\n');
    expect(view).toMatch(/longest tool +180 mm +150 mm +214 mm +\(-+o-+\)/);
    expect(view).toContain('none found');
  });

  test('the report on a terminal has the tightest five, and the last says where all are', () => {
    const many = [1, 2, 3, 4, 5, 6].map(
      (at): Stability => ({ answer: 'tools.longest', at: 100, low: 100 - at, high: 200, givenUp: [] }),
    );
    const text = textReport(decided({ stability: many }), LOOK);
    expect(text.match(/longest tool/g)).toHaveLength(5);
    expect(text).toContain('95 mm');
    expect(text).not.toContain('94 mm');
    expect(text.replace(/\s+/g, ' ')).toContain('The whole report has all of them.');
    expect(textReport(decided(), LOOK)).not.toContain('The whole report has all of them.');
  });
});

test('means of lifting are called by what lifts, with their unit, and never by their place in the answers', () => {
  const { inputs } = fixtureDecision();
  const shop = {
    ...inputs.answers.shop,
    lifting: [{ ...BLANK_MEANS, by: 'hoist' as const, capacity: 500, slingAngle: 60 }],
  };
  const decision = decided({
    inputs: { ...inputs, answers: { ...inputs.answers, shop } },
    stability: [
      { answer: 'shop.lifting[0].capacity', at: 500, low: 212, high: null, givenUp: [] },
      { answer: 'shop.lifting[0].slingAngle', at: 60, low: null, high: null, givenUp: [] },
    ],
  });
  const text = blockText(ranges(decision), decision);
  expect(text).toContain('hoist capacity');
  expect(text).toContain('212 kg');
  expect(text).not.toContain('shop.lifting');
});
