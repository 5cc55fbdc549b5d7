import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/report/blocks/inline-text.ts';
import { findAt } from '../../src/report/blocks/path.ts';
import { catalogPlace, catalogValue } from '../../src/report/catalog-value.ts';
import { arrangementAt, checksAt } from '../../src/report/checks-at.ts';
import { inOneDrawing, quoteSheets } from '../../src/report/quote-lines.ts';
import { quoteSheetsForSellers } from '../../src/report/sections/quote-sheets.ts';
import { splitValuePath, valueWords } from '../../src/report/value-words.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { DECISIONS } from './decisions.ts';
import { demoDecisions } from './demo-decisions.ts';
import { fixtureDecision } from './fixture.ts';
import { blockText } from './section-text.ts';

const SIGNS = { ascii: false };
const DEMOS = demoDecisions();
const valuesOf = (decision: Decision): readonly string[] =>
  quoteSheets(decision).flatMap(({ rows }) => rows.flatMap(({ lines }) => lines.map(({ value }) => value)));
const ofCatalog = (value: string): boolean =>
  ['machines', 'rotaries'].includes(String(splitValuePath(value).list));
const wantedOf = ({ recommended, contenders }: Decision): readonly string[] =>
  recommended === null ? contenders : [recommended];

describe.each([...DECISIONS, ...DEMOS])('The quote sheets of %s', (_what, decision) => {
  const values = valuesOf(decision);

  it('hold every unknown that goes to a seller', () => {
    const asked = decision.unknowns.filter(({ ask }) => ask === 'seller').map(({ answer }) => answer);
    expect(asked.filter((answer) => !values.includes(answer))).toEqual([]);
  });

  it('hold every catalog value that a check of what is wanted hangs on, with that check', () => {
    const lines = quoteSheets(decision).flatMap(({ rows }) => rows.flatMap((row) => row.lines));
    for (const id of wantedOf(decision)) {
      const at = arrangementAt(decision, id);
      for (const { result } of at === undefined ? [] : checksAt(at)) {
        for (const value of Object.keys(result.inputs).filter(ofCatalog)) {
          const line = lines.find((each) => each.value === inOneDrawing(value));
          expect(line?.checks, value).toContain(result.check);
        }
      }
    }
  });

  it('ask for the drawing of a housing once', () => {
    const drawings = values.map(inOneDrawing).filter((value) => value.endsWith('.housing'));
    expect(new Set(drawings).size).toBe(drawings.length);
  });

  it('hold each value once, and only values that have words', () => {
    expect(new Set(values).size).toBe(values.length);
    // a feature that no list knows yet: the sheet still has a line for it
    const known = values.filter((value) => !value.endsWith('features.somethingNew'));
    expect(known.filter((value) => valueWords(value) === undefined)).toEqual([]);
  });
});

describe('What a catalog says of a value', () => {
  const decision = fixtureDecision();
  it.each([
    ['rotaries[wren].swing', '180 mm'],
    ['rotaries[wren].tilt', '-20 to 110°'],
    ['rotaries[wren].collet', 'none'],
    ['rotaries[wren].housing', 'not stated'],
    ['rotaries[wren].hold.tilt-along-y.pitches', '80 mm and 160 mm'],
    ['rotaries[wren].hold.tilt-along-y.pitches[1]', '160 mm'],
    ['machines[rowan].travel[0]', '760 mm'],
    ['machines[rowan].table.slots.center', 'yes'],
    ['machines[rowan].spindleDrive.taper', 'CAT40'],
    ['machines[rowan].features.tiltedWorkPlane', 'standard'],
    ['machines[rowan].features.lookAhead', 'not offered'],
    ['machines[rowan].clearance.price', '3200 EUR'],
    ['machines[elder].mass', 'not stated'],
  ])('%s: %s', (value, says) => {
    expect(textOf(catalogValue(decision, value), decision, SIGNS)).toBe(says);
  });

  it('stands at its place in the decision', () => {
    const place = catalogPlace(decision, 'rotaries[bittern].payload.level');
    expect(findAt(decision, place ?? [])).toBe(35);
  });

  it('is not stated where the row leaves it out', () => {
    const { catalog } = decision.inputs;
    const rotaries = catalog.rotaries.map((row) => ({ ...row, mass: 'unknown' as const }));
    const without = { ...decision, inputs: { ...decision.inputs, catalog: { ...catalog, rotaries } } };
    expect(textOf(catalogValue(without, 'rotaries[wren].mass'), without, SIGNS)).toBe('not stated');
  });
});

describe('A quote sheet', () => {
  const textFor = (shop: string): string => {
    const decision = DEMOS.find(([what]) => what === shop)?.[1] ?? fixtureDecision();
    return blockText(quoteSheetsForSellers(decision), decision);
  };

  it('goes to the maker of the machine and to the maker of the rotary that are recommended', () => {
    const text = textFor('shop');
    expect(text).toContain('To the seller of Alder, made by Lychwater:');
    expect(text).toContain('To the seller of Lapwing, made by Pellowmarsh:');
    expect(text).not.toContain('Hornbeam');
  });

  it('says the number, the check that it serves, and leaves room for the answer', () => {
    expect(textFor('shop')).toMatch(
      /Clear radius around the tilt axis \| 255 mm \| clear radius while tilting \| …+/,
    );
    expect(textFor('shop')).toContain('Spindle probe: its price, or standard | 6800 EUR | the price');
  });

  it('asks what no data sheet says', () => {
    const text = textFor('shop');
    for (const about of [
      'brake signal',
      'move at the same time',
      'tool changer',
      'enclosure',
      'weigh',
      'holder',
    ])
      expect(text).toContain(about);
  });

  it('does not ask where an owned mill stands, nor for its price', () => {
    const text = textFor('shop-own-mill');
    expect(text).toContain('Rowan: number');
    expect(text).not.toContain('Width as shipped');
    expect(text).toContain('Table height');
  });

  it('asks only for what was left out where nothing passes', () => {
    const text = textFor('shop-nothing-passes');
    expect(text).toContain('Outline of the housing | not stated | spindle over the housing');
    expect(text).not.toContain('brake signal');
  });

  it('goes to every maker of what may still win where it is open', () => {
    const text = textFor('shop-many-unknowns');
    for (const maker of ['Osmerby', 'Lychwater', 'Quillmere', 'Pellowmarsh', 'Brackenhythe'])
      expect(text).toContain(`made by ${maker}`);
  });
});
