import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import type { Session } from '../../../src/session/session.ts';
import { frame } from '../../../src/ui/frame/frame.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import { beginning, type Ui } from '../../../src/ui/state/ui.ts';
import { oneBlock, WORLD } from '../../session/talk.ts';
import { drawing } from '../demo-screens.ts';
import { everyPlace, everyQuestion } from '../every-screen.ts';

const NAMES = [
  ['wide letters', '軸受けハウジング大型部品の名前がとても長い'],
  ['combining marks', 'E\u0301lise\u0301 \u0308\u0308\u0308 a\u0300\u0316\u0300'],
  ['pictures', '😀🔧 bracket 👍🏽🇨🇭'],
  ['a clear screen', 'nice\u001b[2Jname\u001b]0;title\u0007'],
  ['ends of lines', 'one\r\ntwo\tthree\u2028four'],
  ['writing turned around', 'left\u202eright\u2066'],
  ['no gap at all', 'x'.repeat(300)],
] as const;
const SIZES = [60, 80, 120].flatMap((columns) => [20, 24].map((rows) => ({ columns, rows })));

/** An interview whose part has this name, however it came in. */
function named(name: string): Ui {
  const { session } = oneBlock();
  const [part] = session.kept.parts;
  const kept = { ...session.kept, parts: [{ ...part, name: { from: 'typed' as const, value: name } }] };
  return beginning({ ...session, kept } satisfies Session, null);
}

describe.each(NAMES)('requirement 24: a part with %s in its name', (_, name) => {
  const ui = named(name);
  const screens = [...everyQuestion(ui, WORLD), ...everyPlace(ui, WORLD)].filter(
    ([what]) => what !== 'review of a part' && what !== 'remove',
  );
  test.each([true, false])('keeps every row in its width and leaves nothing raw (ascii: %s)', (ascii) => {
    const faults = screens.flatMap(([what, at]) =>
      SIZES.flatMap((size) => {
        const rows = frame(at, size, drawing(WORLD, { ascii }));
        const wrong = rows.filter((row) => {
          const text = textOfRow(row);
          const width = stringWidth(text) + (row.item === undefined ? 0 : 2);
          return width > size.columns || /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/u.test(text);
        });
        return [
          ...(rows.length === size.rows - 1 ? [] : [`${what}: ${rows.length} rows`]),
          ...wrong.map((row) => `${what} ${size.columns}: ${JSON.stringify(textOfRow(row))}`),
        ];
      }),
    );
    expect(faults).toEqual([]);
  });
});
