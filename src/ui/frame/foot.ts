import { shownKeys } from '../keys/keymap.ts';
import type { KeyWords } from '../keys/keymap-of.ts';
import type { Situation } from '../keys/situation.ts';
import { cut, widthOf } from '../look/cells.ts';
import type { Row, Span } from '../look/row.ts';

/** The last line of the interview. */
export const keyLine = (here: Situation, width: number): Row => keyRow(shownKeys(here), width);

/** The last line: which key does what, as many as find room, help always. */
export function keyRow(keys: KeyWords, width: number): Row {
  const help = keys.filter(([, does]) => does === 'help');
  const spans: Span[] = [];
  let used = help.reduce((sum, [key, does]) => sum + widthOf(key) + widthOf(does) + 3, 0);
  for (const [key, does] of keys) {
    if (does === 'help') continue;
    const own = widthOf(key) + widthOf(does) + 3;
    if (used + own > width) continue;
    used += own;
    spans.push(...pair(key, does));
  }
  for (const [key, does] of help) spans.push(...pair(key, does));
  return {
    spans: spans.map((span, index) =>
      index === spans.length - 1 ? { ...span, text: span.text.trimEnd() } : span,
    ),
  };
}

const pair = (key: string, does: string): readonly Span[] => [
  { text: key, tone: 'strong' },
  { text: ` ${does}  `, tone: 'quiet' },
];

/** The title row: where one is at the left, how far at the right. */
export function titleRow(left: string, right: string, width: number): Row {
  const room = Math.max(0, width - widthOf(right) - 2);
  const shown = cut(left, room);
  const fill = ' '.repeat(Math.max(1, width - widthOf(shown) - widthOf(right)));
  return {
    spans: [
      { text: shown, tone: 'title' },
      { text: `${fill}${right}`, tone: 'quiet' },
    ],
  };
}

/** A line under the title, as much of it heavy as is done. */
export function progressRow(done: number, width: number): Row {
  const heavy = Math.round(Math.max(0, Math.min(1, done)) * width);
  return {
    spans: [
      { text: '━'.repeat(heavy), tone: 'quiet' },
      { text: '─'.repeat(width - heavy), tone: 'quiet' },
    ],
  };
}
