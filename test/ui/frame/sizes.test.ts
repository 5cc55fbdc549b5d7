import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { QUESTIONS } from '../../../src/questions/index.ts';
import type { World } from '../../../src/session/world.ts';
import { frame } from '../../../src/ui/frame/frame.ts';
import type { Size } from '../../../src/ui/frame/size.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import { demoUi, demoWorld, drawing, SHOPS } from '../demo-screens.ts';
import { everyPlace, everyQuestion, everyView, type Named } from '../every-screen.ts';

const WIDTHS = [20, 40, 60, 80, 120, 200];
const HEIGHTS = [5, 12, 20, 24, 50];
const SIZES: readonly Size[] = WIDTHS.flatMap((columns) => HEIGHTS.map((rows) => ({ columns, rows })));
const LOOKS = [true, false].flatMap((ascii) => [true, false].map((color) => ({ ascii, color })));
/** Color only changes the place of the next character, which no size does. */
const looksAt = ({ columns }: Size) => (columns === 80 ? LOOKS : LOOKS.slice(1, 3));
/** Whoever draws puts a pointer, or its room, before a row of a list. */
const POINTER_WIDTH = 2;

/** What is wrong with a screen, at any size and look. */
function faultsOf([name, ui]: Named, world: World): readonly string[] {
  return SIZES.flatMap((size) =>
    looksAt(size).flatMap((look) => {
      const where = `${name} ${size.columns}x${size.rows}${look.ascii ? ' ascii' : ''}`;
      const rows = frame(ui, size, drawing(world, look));
      const high = rows.length === size.rows - 1 ? [] : [`${where}: ${rows.length} rows`];
      const each = rows.flatMap((row) => {
        const text = textOfRow(row);
        const width = stringWidth(text) + (row.item === undefined ? 0 : POINTER_WIDTH);
        const wide = width > size.columns ? [`${where}: ${width} wide: ${text}`] : [];
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
        const raw = /[\u0000-\u001f\u007f-\u009f]/.test(text) ? [`${where}: raw: ${text}`] : [];
        const foreign = look.ascii && /[^ -~]/.test(text) ? [`${where}: not ASCII: ${text}`] : [];
        return [...wide, ...raw, ...foreign];
      });
      return [...high, ...each];
    }),
  );
}

const world = demoWorld('shop');
const ui = demoUi('shop', world);
const questions = everyQuestion(ui, world);

describe('requirement 2: exactly rows - 1 rows, none wider than the window, at every size and look', () => {
  test('the demo shop is asked nearly every question', () => {
    const missing = QUESTIONS.filter(({ id }) => !questions.some(([name]) => name === id));
    // it has no forklift
    expect(missing.map(({ id }) => id)).toEqual(['forklift-capacity', 'load-center']);
  });
  test.each(questions)('question %s', (...question) => {
    expect(faultsOf(question, world)).toEqual([]);
  });
  test.each(everyPlace(ui, world))('%s', (...place) => {
    expect(faultsOf(place, world)).toEqual([]);
  });
});

describe.each(SHOPS)('requirement 2: the result of %s', (shop) => {
  const its = demoWorld(shop);
  test.each(everyView(demoUi(shop, its), its))('%s', (...view) => {
    expect(faultsOf(view, its)).toEqual([]);
  });
});
