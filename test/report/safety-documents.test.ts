/** What a buyer is told about safety documents: each with its one line, held against the list they were taken from. */
import { describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { SAFETY_DOCUMENTS } from '../../src/report/wording/cautions.ts';
import { demoDecisions } from './demo-decisions.ts';
import { readText } from './markdown-text.ts';

/** The name of a document, what its line has to hold, and whether it was read or is known from memory. */
const LISTED: readonly (readonly [name: string, pieces: readonly string[], fromMemory: boolean])[] = [
  [
    '29 CFR 1910.212',
    [
      'guard the point of operation and moving parts',
      'an open table added to a machine can move the hazard outside the old guard',
    ],
    true,
  ],
  [
    '29 CFR 1910.147',
    [
      'lock out electric, air, hydraulic and gravity energy',
      'tilt axis, vertical axis',
      'for set-up and service',
    ],
    true,
  ],
  ['29 CFR 1910.178', ['trained', 'drivers', 'within the data plate at the real load center'], false],
  ['29 CFR 1910.184', ['slings tagged', 'inspected', 'never above the rated load at the real angle'], false],
  [
    '29 CFR 1910.22 and 1910.176',
    ['floors able to carry the load, clean and dry', 'aisles clear and marked'],
    false,
  ],
  [
    'ISO 12100',
    [
      'assess the risks first',
      'remove them by design, then guard, then inform',
      'a changed machine needs a new assessment',
    ],
    true,
  ],
  [
    'ISO 16090-1',
    [
      'safety of milling machines and machining centers',
      'tool changers',
      'handling of work',
      'powered clamping',
      'only for metal and other cold materials that do not burn',
      'fine titanium and magnesium chips need more',
    ],
    false,
  ],
  [
    'NFPA 79, IEC 60204-1',
    [
      'electrical parts of machines',
      'disconnect',
      'emergency stop',
      'marking with full-load current and short-circuit rating',
    ],
    true,
  ],
  [
    'NFPA 484',
    [
      'machining, sawing and grinding',
      'aluminum, magnesium, titanium, tantalum and zirconium',
      'powder or dust that burns',
      'wet chips',
      'housekeeping',
      'class D',
    ],
    false,
  ],
];

describe('Safety documents', () => {
  it('are those that were listed, each once, and no other', () => {
    expect(SAFETY_DOCUMENTS.map(({ name }) => name).sort()).toEqual(LISTED.map(([name]) => name).sort());
  });

  it.each(LISTED)('%s says all of its line, and whether that is from memory', (name, pieces, fromMemory) => {
    const found = SAFETY_DOCUMENTS.find((document) => document.name === name);
    for (const piece of pieces) expect(found?.says).toContain(piece);
    expect(found?.fromMemory).toBe(fromMemory);
  });

  it('name no width of an aisle: the standard gives none, and the letter that did was withdrawn', () => {
    for (const { says } of SAFETY_DOCUMENTS) expect(says).not.toMatch(/\d/);
  });
});

describe.each(demoDecisions())('The Markdown of %s', (_what, decision) => {
  const text = readText(markdownReport(decision)).replaceAll('\n', '');

  it.each(SAFETY_DOCUMENTS)('says $name and its whole line', ({ name, says, fromMemory }) => {
    expect(text).toContain(`${name}: ${says}${fromMemory ? ' (title and scope from memory)' : ''}.`);
  });
});
