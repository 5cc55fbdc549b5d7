import { cut, padded, widthOf } from '../look/cells.ts';
import { type Row, row, type Span, type Tone } from '../look/row.ts';
import { type Item, itemsOf } from '../state/items.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import type { Block } from './stack.ts';
import { written } from './written.ts';

/** What a row of a list says; one of several that can be taken says so by what it does. */
export type ListRow = Pick<Item, 'label' | 'about' | 'state'> & Partial<Pick<Item, 'act'>>;

export interface Listing {
  readonly items: readonly ListRow[];
  readonly mark: number;
  /** of options of which several can be taken: those that are, in order; null: one is taken */
  readonly chosen: readonly number[] | null;
  readonly ordered: boolean;
  readonly width: number;
}

/** The rows of the list as they may be shown. */
export function shownItems(ui: Ui, { world, ascii }: Context): readonly Item[] | null {
  const items = itemsOf(ui, world);
  if (items === null) return null;
  const known = shown.get(items);
  if (known?.ascii === ascii) return known.items;
  const now = items.map((item) => ({
    ...item,
    label: written(item.label, ascii),
    about: written(item.about, ascii),
    state: written(item.state, ascii),
  }));
  shown.set(items, { ascii, items: now });
  return now;
}

/** The same list is shown at many keys, one after the other. */
const shown = new WeakMap<readonly Item[], { readonly ascii: boolean; readonly items: readonly Item[] }>();

const LEAST_ROWS = 5;

/** A list of which a page is shown that holds the highlighted row, as many rows as there is room for. */
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

/**
 * The page of the highlighted row; where rows are left out, a line at that end says how many. It stays as it is until
 * the highlight leaves it: a window that follows every step would have to be written anew each time.
 */
function windowed(listing: Listing, rows: number): readonly Row[] {
  const { items, mark } = listing;
  if (rows <= 0) return [];
  if (items.length <= rows) return items.map((item, index) => itemRow(listing, item, index));
  if (rows < 3)
    return items.slice(mark, mark + rows).map((item, index) => itemRow(listing, item, mark + index));
  const room = rows - 2;
  const start = Math.max(0, Math.min(items.length - room, Math.floor(mark / room) * room));
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
function itemRow(listing: Listing, item: ListRow, index: number): Row {
  const { chosen, ordered, mark, width } = listing;
  const marked = index === mark;
  const none = chosen === null ? '' : ' '.repeat(BOX_WIDTH);
  const box = chosen === null || item.act?.do !== 'choose' ? none : boxOf(chosen, item.act.option, ordered);
  const state = item.state === '' ? '' : `  ${cut(item.state, Math.max(8, Math.floor(width / 2)))}`;
  const room = Math.max(4, width - 2 - widthOf(box) - widthOf(state));
  const column = asideColumn(listing.items, item, width);
  const aside = column === null ? '' : item.about;
  const label = state === '' && column === null ? cut(item.label, room) : padded(item.label, column ?? room);
  const spans: readonly Span[] = [
    { text: `${box}${label}`, tone: marked ? 'marked' : 'plain' },
    ...(aside === '' ? [] : [{ text: aside, tone: 'quiet' } as const]),
    ...(state === '' ? [] : [{ text: state, tone: STATE_TONES[item.state] ?? 'quiet' } as const]),
  ];
  return { spans, item: { marked } };
}

const BOX_WIDTH = 4;
const ASIDE_GAP = 3;

/** Where the few words on a row begin beside its label; null where they find no room, or something else stands there. */
function asideColumn(items: readonly ListRow[], item: ListRow, width: number): number | null {
  if (item.about === '' || item.state !== '') return null;
  const column = Math.max(...items.map(({ label }) => widthOf(label))) + ASIDE_GAP;
  const room = width - 2 - (items.some(({ act }) => act?.do === 'choose') ? BOX_WIDTH : 0);
  return column + widthOf(item.about) <= room ? column : null;
}

/** The few words on the highlighted row, where they find no room beside it. */
export function aboutBelow(items: readonly ListRow[], mark: number, width: number): string {
  const item = items[mark];
  return item === undefined || asideColumn(items, item, width) !== null ? '' : item.about;
}

function boxOf(chosen: readonly number[], option: number, ordered: boolean): string {
  const place = chosen.indexOf(option);
  if (place < 0) return '[ ] ';
  return ordered ? `${place + 1}. ` : '[x] ';
}
