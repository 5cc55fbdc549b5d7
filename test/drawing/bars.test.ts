import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { type Bar, type Bars, barSpan } from '../../src/drawing/bars.ts';
import { LOOKS } from '../../src/drawing/look.ts';
import type { Scene } from '../../src/drawing/scene.ts';
import { sceneSvg } from '../../src/drawing/svg/scene-svg.ts';
import { barRows } from '../../src/drawing/terminal/bar-rows.ts';
import { expectClose } from '../close-to.ts';
import { LENGTHS, panelOf, sceneOf } from './scenes.ts';

const FORMS = ['met', 'conditional', 'undecided', 'missed'] as const;

const barOf = (rest: Partial<Bar>): Bar => ({
  name: 'swing',
  text: '50 %',
  word: 'holds',
  form: 'met',
  path: ['count'],
  from: 0,
  to: 0.5,
  ...rest,
});

const TICKS = [-1, 0, 1].map((at) => ({ at, text: `${100 * at} %` }));
const barsOf = (...rows: readonly Bar[]): Bars => ({ rows, ticks: TICKS });
const LOOK = { columns: 72, ascii: false } as const;

const count = (row: string, sign: string): number => [...row].filter((each) => each === sign).length;

describe('Bars in a terminal', () => {
  it('are as long as their numbers, to half a sign', () => {
    const numbers = [0.25, 0.5, 0.75, 1];
    const rows = barRows(barsOf(...numbers.map((to) => barOf({ to }))), LOOK).slice(1);
    const whole = count(rows[3] ?? '', '█');
    expect(whole).toBeGreaterThan(10);
    numbers.forEach((to, index) => {
      expectClose(count(rows[index] ?? '', '█'), whole * to, { absolute: 0.5 });
    });
  });

  it('begin at the zero line: to its left what is missing, to its right what is left over', () => {
    const [, missing = '', over = ''] = barRows(barsOf(barOf({ to: -0.5, form: 'missed' }), barOf({})), LOOK);
    expect(missing).toMatch(/ ▓+│ /);
    expect(over).toMatch(/ │█+ /);
    expect(missing.indexOf('│')).toBe(over.indexOf('│'));
  });

  it('show one sign at least of what is next to nothing, and none of nothing', () => {
    const [, little = '', none = ''] = barRows(barsOf(barOf({ to: 0.001 }), barOf({ to: 0 })), LOOK);
    expect([count(little, '█'), count(none, '█')]).toEqual([1, 0]);
  });

  it('point on where a range has no end', () => {
    const [, open = ''] = barRows(barsOf(barOf({ form: 'undecided', from: null, to: null })), LOOK);
    expect(open).toMatch(/<░+│░+>/);
  });

  it('differ in their signs by form, and say their word', () => {
    for (const ascii of [true, false]) {
      const rows = barRows(barsOf(...FORMS.map((form) => barOf({ form, word: form }))), { ...LOOK, ascii });
      const signs = FORMS.map((_form, index) => /[│|](.)/.exec(rows[index + 1] ?? '')?.[1]);
      expect(new Set(signs).size).toBe(FORMS.length);
      FORMS.forEach((form, index) => {
        expect(rows[index + 1]).toContain(form);
      });
      if (ascii) expect(rows.join('\n')).toMatch(/^[ -~\n]*$/);
    }
  });

  it.each([70, 72])('are never wider than %d columns', (columns) => {
    const end = fc.option(fc.double({ min: -9, max: 1, noNaN: true }));
    const bar = fc.record({
      name: fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 90 }),
      text: fc.constantFrom('5 %', '-74.5 to 538.1 %'),
      word: fc.constantFrom('holds', 'holds if'),
      form: fc.constantFrom(...FORMS),
      from: end,
      to: end,
    });
    fc.assert(
      fc.property(fc.array(bar.map(barOf), { minLength: 1, maxLength: 5 }), fc.boolean(), (rows, ascii) => {
        for (const row of barRows(barsOf(...rows), { columns, ascii })) {
          expect(stringWidth(row)).toBeLessThanOrEqual(columns);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('Bars in an SVG', () => {
  const scene = (bars: Bars): Scene => ({ ...sceneOf(panelOf([], { bars })), toScale: false });

  it('are as long as their numbers on one scale, from the zero line', () => {
    const numbers = [0.25, -0.5, 1];
    const { window } = new JSDOM(sceneSvg(scene(barsOf(...numbers.map((to) => barOf({ to })))), LENGTHS));
    const drawn = [...window.document.querySelectorAll('path[fill="url(#fivesides-rising)"]')];
    const spans = drawn.map((each) => {
      const xs = [...(each.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
      return [Math.min(...xs), Math.max(...xs)] as const;
    });
    const whole = (spans[2]?.[1] ?? 0) - (spans[2]?.[0] ?? 0);
    numbers.forEach((number, index) => {
      const [low, high] = spans[index] ?? [0, 0];
      expectClose(high - low, Math.abs(number) * whole, { absolute: 0.03 });
    });
    expectClose(spans[1]?.[1] ?? 0, spans[0]?.[0] ?? -1, { absolute: 0.02 });
  });

  it('differ by hatching, and each hatching is in the file', () => {
    expect(new Set(FORMS.map((form) => LOOKS[form].hatch)).size).toBe(FORMS.length);
    const svg = sceneSvg(scene(barsOf(...FORMS.map((form) => barOf({ form })))), LENGTHS);
    for (const hatch of FORMS.map((form) => LOOKS[form].hatch)) {
      expect(svg).toContain(`<pattern id="fivesides-${hatch}"`);
    }
  });
});

it('An axis holds its numbers and all ends', () => {
  expect(barSpan(barsOf(barOf({ from: null, to: -1.5 })))).toEqual([-1.5, 1]);
});
