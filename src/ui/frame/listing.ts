import { cut, padded, widthOf } from '../look/cells.ts';
import { type Row, row, type Span, type Tone } from '../look/row.ts';
import type { Item } from '../state/items.ts';
import type { Block } from './stack.ts';

export interface Listing {
  readonly items: readonly Item[];
  readonly mark: number;
  /** of options of which several can be taken: those that are, in order; null: one is taken */
  readonly chosen: readonly number[] | null;
  readonly ordered: boolean;
  readonly width: number;
}

const LEAST_ROWS = 5;

/** A list of which as many rows are shown as there is room for, with the highlighted one always in sight. */
export function listBlock(listing: Listing, rank: number): Block {
  const { items } = listing;
  return {
    wants: Math.max(1, items.length),
    least: Math.min(LEAST_ROWS + 2, Math.max(1, items.length)),
    rank,
    draw: (rows) =>
      items.length === 0 ? [row('  Nothing here.', 'quiet')].slice(0, rows) : windowed(listing, rows),
  };
}

/** The rows around the highlighted one; where some are left out, a line at that end says how many. */
function windowed(listing: Listing, rows: number): readonly Row[] {
  const { items, mark } = listing;
  if (rows <= 0) return [];
  if (items.length <= rows) return items.map((item, index) => itemRow(listing, item, index));
  if (rows < 3)
    return items.slice(mark, mark + rows).map((item, index) => itemRow(listing, item, mark + index));
  const room = rows - 2;
  const start = Math.max(0, Math.min(items.length - room, mark - Math.floor(room / 2)));
  const after = items.length - start - room;
  return [
    row(start === 0 ? '' : `  ▲ ${start} more`, 'quiet'),
    ...items.slice(start, start + room).map((item, index) => itemRow(listing, item, start + index)),
    row(after === 0 ? '' : `  ▼ ${after} more`, 'quiet'),
  ];
}

const STATE_TONES: Readonly<Record<string, Tone>> = {
  open: 'open',
  'not sure': 'open',
  recommended: 'holds',
  passes: 'holds',
};

/** What stands before the label: nothing but the place of the pointer, or a box where several can be taken. */
function itemRow({ chosen, ordered, mark, width }: Listing, item: Item, index: number): Row {
  const marked = index === mark;
  const box = chosen === null || item.act.do !== 'choose' ? '' : boxOf(chosen, index, ordered);
  const state = item.state === '' ? '' : `  ${cut(item.state, Math.max(8, Math.floor(width / 2)))}`;
  const room = Math.max(4, width - 2 - widthOf(box) - widthOf(state));
  const label = state === '' ? cut(item.label, room) : padded(item.label, room);
  const spans: readonly Span[] = [
    { text: `${box}${label}`, tone: marked ? 'marked' : 'plain' },
    ...(state === '' ? [] : [{ text: state, tone: STATE_TONES[item.state] ?? 'quiet' } as const]),
  ];
  return { spans, item: { marked } };
}

function boxOf(chosen: readonly number[], index: number, ordered: boolean): string {
  const place = chosen.indexOf(index);
  if (place < 0) return '[ ] ';
  return ordered ? `[${place + 1}] ` : '[x] ';
}
