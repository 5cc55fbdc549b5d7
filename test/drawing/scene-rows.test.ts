import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { circle, line, type Panel, polygon, rectangle } from '../../src/drawing/scene.ts';
import { type RowsLook, sceneRows } from '../../src/drawing/terminal/scene-rows.ts';
import { expectClose } from '../close-to.ts';
import { dotsIn, extent } from './dots-in.ts';
import { LENGTHS, measureOf, panelOf, sceneOf } from './scenes.ts';

const LOOK: RowsLook = { columns: 70, rows: 30, ascii: false, aspect: 2, ...LENGTHS };

/** The rows of a single panel, without title and list. */
function drawn(panel: Panel, look: Partial<RowsLook> = {}): readonly string[] {
  const rows = sceneRows(sceneOf(panel), { ...LOOK, ...look });
  return rows.slice(1, rows.indexOf(''));
}

const millimetersPerDot = (panel: Panel, look: Partial<RowsLook> = {}): number =>
  Number(/one dot is ([\d.]+) mm/.exec(sceneRows(sceneOf(panel), { ...LOOK, ...look }).join('\n'))?.[1]);

describe('A circle in a terminal', () => {
  const panel = panelOf([circle('tool', [300, -40], 80)]);

  it.each([70, 120, 41])('is as wide as high within a dot at %d columns', (columns) => {
    const dots = dotsIn(drawn(panel, { columns }));
    const [wide, high] = [extent(dots.map(([x]) => x)), extent(dots.map(([, y]) => y))];
    expectClose(wide, high, { absolute: 1 });
    expectClose(wide * millimetersPerDot(panel, { columns }), 160, { percent: 4 });
  });

  it.each([1.8, 2.2])('stays round where a cell is %d times as high as wide', (aspect) => {
    const dots = dotsIn(drawn(panel, { aspect }));
    const [wide, high] = [extent(dots.map(([x]) => x)), extent(dots.map(([, y]) => y))];
    // a dot is aspect ÷ 2 times as high as wide
    expectClose(wide, (high * aspect) / 2, { absolute: 1.5 });
  });

  it('is as wide as high within two rows in ASCII', () => {
    const rows = drawn(panel, { ascii: true });
    const columns = rows.flatMap((row) => [...row].flatMap((sign, at) => (sign === ' ' ? [] : [at])));
    expectClose(extent(columns) / 2, rows.length, { absolute: 2 });
  });
});

describe('A picture in a terminal', () => {
  it('has one scale across and down', () => {
    const panel = panelOf([rectangle('tool', [10, 10], [410, 210])]);
    const dots = dotsIn(drawn(panel));
    const [wide, high] = [extent(dots.map(([x]) => x)), extent(dots.map(([, y]) => y))];
    expectClose((wide - 1) / (high - 1), 400 / 200, { percent: 2 });
    expectClose((wide - 1) * millimetersPerDot(panel), 400, { percent: 3 });
  });

  it('draws all its panels at the same scale', () => {
    const rows = sceneRows(
      sceneOf(panelOf([circle('tool', [0, 0], 100)]), panelOf([circle('tool', [0, 0], 50)])),
      LOOK,
    );
    const middle = rows.indexOf('');
    const [large, small] = [rows.slice(1, middle), rows.slice(middle + 2, rows.indexOf('', middle + 1))].map(
      (part) => extent(dotsIn(part).map(([x]) => x)),
    );
    expectClose((large ?? 0) / (small ?? 1), 2, { percent: 4 });
  });

  it('lets an upright measure reach from its one end to the other', () => {
    const panel = panelOf([line('table', [0, 0], [100, 0]), line('nose', [0, 80], [100, 80])], {
      dimensions: [measureOf({ from: [100, 0], to: [100, 80], side: 'right' })],
    });
    const rows = drawn(panel, { columns: 40 });
    const column = rows[0]?.indexOf('┬') ?? -1;
    expect(column).toBeGreaterThan(0);
    expect(rows.map((row) => row[column]).join('')).toMatch(/^┬│+A│+┴$/);
  });

  it('writes a measure that is too short for a line as its letter alone', () => {
    const panel = panelOf([line('table', [0, 0], [1000, 0])], {
      dimensions: [measureOf({ from: [0, 0], to: [4, 0] })],
    });
    expect(drawn(panel).join('')).toContain('A');
    expect(drawn(panel).join('')).not.toContain('├');
  });

  it('draws a tight measure heavier and says in the list which one it is', () => {
    const measures = [measureOf({ name: 'need' }), measureOf({ name: 'margin', text: '8 mm', tight: true })];
    const panel = panelOf([line('table', [0, 0], [100, 0])], { dimensions: measures });
    const rows = sceneRows(sceneOf(panel), LOOK);
    expect(rows).toContain('A need: 100 mm');
    expect(rows).toContain('B margin: 8 mm ←');
    expect(rows.join('\n')).toMatch(/┣━+B━+┫/);
    expect(rows.join('\n')).toMatch(/├─+A─+┤/);
  });

  it('gives one thing in two panels one number', () => {
    const panel = panelOf([rectangle('part', [0, 0], [50, 50])], {
      marks: [{ at: [25, 25], name: 'the part', stands: 'on' }],
    });
    const rows = sceneRows(sceneOf(panel, panel), LOOK);
    expect(rows.filter((row) => row.includes('the part'))).toEqual(['1 the part']);
    expect(rows.filter((row) => /[\u2800-\u28ff]1[\u2800-\u28ff]/.test(row))).toHaveLength(2);
  });

  it('says what is not drawn, and in a chart nothing of a scale', () => {
    const scene = {
      ...sceneOf(panelOf([line('curve', [0, 0], [10, 10])])),
      notDrawn: ['The housing is not known.'],
    };
    expect(sceneRows(scene, LOOK)).toContain('The housing is not known.');
    expect(sceneRows(scene, LOOK).join('\n')).toContain('one dot is');
    expect(sceneRows({ ...scene, toScale: false }, LOOK).join('\n')).not.toContain('one dot is');
  });
});

const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
const point = fc.tuple(coordinate, coordinate);
const shape = fc.oneof(
  fc.tuple(point, point, point).map((points) => polygon('part', ...points)),
  fc
    .tuple(point, fc.double({ min: 0, max: 1500, noNaN: true }))
    .map(([at, radius]) => circle('sweep', at, radius)),
  fc.tuple(point, point).map((points) => line('axis', ...points)),
);
const measure = fc
  .record({
    from: point,
    to: point,
    side: fc.constantFrom('left', 'right', 'above', 'below'),
    tight: fc.boolean(),
    name: fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 90 }),
  })
  .map(measureOf);
const panel = fc
  .record({
    shapes: fc.array(shape, { minLength: 1, maxLength: 4 }),
    dimensions: fc.array(measure, { maxLength: 6 }),
    marks: fc.array(
      fc.record({
        at: point,
        name: fc.constantFrom('plate', 'part'),
        stands: fc.constantFrom('on', 'left', 'above'),
      }),
      { maxLength: 3 },
    ),
    labels: fc.array(
      fc.record({
        at: point,
        text: fc.constantFrom('0', '100 mm'),
        side: fc.constantFrom('on', 'right', 'below'),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ shapes, ...rest }) => panelOf(shapes, rest as Partial<Panel>));

it.each([70, 120])(
  'No row is wider than %d columns, whatever is drawn, and nothing in it steers',
  (columns) => {
    fc.assert(
      fc.property(panel, fc.boolean(), (each, ascii) => {
        const rows = sceneRows(sceneOf(each), { ...LOOK, columns, ascii });
        expect(rows.filter((row) => stringWidth(row) > columns)).toEqual([]);
        const drawnRows = rows.slice(1, rows.indexOf(''));
        expect(drawnRows.length).toBeLessThanOrEqual(LOOK.rows);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what must not be there
        expect(rows.join('\n')).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
        if (ascii) expect(rows.join('\n')).toMatch(/^[ -~\n]*$/);
      }),
      { numRuns: 60 },
    );
  },
);
