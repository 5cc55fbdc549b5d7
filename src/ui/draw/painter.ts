import { Box, type Instance, render, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { createElement, type FC, type ReactElement } from 'react';
import type { Row, Span } from '../look/row.ts';
import { LOOKS } from './looks.ts';
import { Outlet } from './outlet.ts';

export interface Painter {
  /** Shows these rows; only what is different is written. */
  readonly show: (rows: readonly Row[]) => void;
  /** Everything anew: the window has another size, or something else wrote on it. */
  readonly anew: (rows: readonly Row[], columns: number) => void;
  readonly stop: () => void;
}

const spanText = ({ text, tone }: Span, index: number): ReactElement =>
  createElement(Text, { key: index, ...LOOKS[tone] }, text);

/** A row is one line, already as wide as it may be: nothing is left to be wrapped. */
const rowText = ({ spans }: { readonly spans: readonly Span[] }): ReactElement => {
  const shown = spans.some(({ text }) => text !== '') ? spans : [{ text: ' ', tone: 'plain' } as const];
  return createElement(Text, { wrap: 'truncate-end' }, shown.map(spanText));
};

type ItemProps = { readonly isSelected?: boolean; readonly label: string; readonly spans?: readonly Span[] };

const ItemRow: FC<ItemProps> = ({ spans = [] }) => rowText({ spans });

const pointerText = (sign: string): ReactElement => createElement(Text, { bold: true }, `${sign} `);
const NoPointer: FC = () => createElement(Text, {}, '  ');
const Pointer: FC<{ isSelected?: boolean }> = ({ isSelected }) =>
  pointerText(isSelected === true ? '❯' : ' ');
const AsciiPointer: FC<{ isSelected?: boolean }> = ({ isSelected }) =>
  pointerText(isSelected === true ? '>' : ' ');

/** The library draws the list; which row is highlighted, and which rows are there, is decided before. */
function list(rows: readonly Row[], key: number, pointer: string): ReactElement {
  const marked = rows.findIndex(({ item }) => item?.marked === true);
  return createElement(SelectInput<number>, {
    key: `${key} ${marked} ${rows.length}`,
    isFocused: false,
    items: rows.map(({ spans }, value) => ({ key: String(value), label: '', value, spans })),
    initialIndex: Math.max(0, marked),
    indicatorComponent: marked < 0 ? NoPointer : pointer === '>' ? AsciiPointer : Pointer,
    itemComponent: ItemRow,
  });
}

/** Rows of a list that are drawn as one: where one of them changes, all of them are drawn anew. */
const MOST_IN_PIECE = 6;

/** Where the piece ends that begins at this row: some rows of a list, or a single row. */
function endOfPiece(rows: readonly Row[], from: number): number {
  const most = Math.min(rows.length, from + MOST_IN_PIECE);
  let end = from;
  while (end < most && rows[end]?.item !== undefined) end += 1;
  return Math.max(end, from + 1);
}

/** The same row again, under the same key, is the same element again: the library then passes it over. */
type Drawn = Map<string, ReactElement>;

function screen(rows: readonly Row[], width: number, pointer: string, last: Drawn): [ReactElement, Drawn] {
  const drawn: Drawn = new Map();
  for (let index = 0; index < rows.length; ) {
    const end = endOfPiece(rows, index);
    const piece = rows.slice(index, end);
    const key = `${index} ${JSON.stringify(piece)}`;
    drawn.set(key, last.get(key) ?? pieceOf(piece, index, pointer));
    index = end;
  }
  return [createElement(Box, { flexDirection: 'column', width }, [...drawn.values()]), drawn];
}

function pieceOf(rows: readonly Row[], index: number, pointer: string): ReactElement {
  const [first] = rows;
  if (first === undefined || first.item !== undefined) return list(rows, index, pointer);
  return createElement(Box, { key: `row ${index}`, height: 1 }, rowText(first));
}

export interface PainterOptions {
  readonly columns: number;
  readonly pointer: string;
  readonly write: (text: string) => void;
  /** what draws has failed */
  readonly onFault: (error: unknown) => void;
}

/** Paints rows on the terminal, from its first line on. */
export function createPainter({ columns, pointer, write, onFault }: PainterOptions): Painter {
  let outlet: Outlet | null = null;
  let instance: Instance | null = null;
  let width = columns;
  let drawn: Drawn = new Map();
  const drawing = (rows: readonly Row[]): ReactElement => {
    const [element, now] = screen(rows, width, pointer, drawn);
    drawn = now;
    return element;
  };
  const stop = (): void => {
    // what is painted stays: the last frame is not written once more where the next is to stand
    if (outlet !== null) outlet.muted = true;
    instance?.unmount();
    [outlet, instance] = [null, null];
    drawn = new Map();
  };
  const begin = (rows: readonly Row[]): void => {
    write('\u001b[?2026h\u001b[0m\u001b[2J\u001b[H');
    outlet = new Outlet(width, write);
    instance = render(drawing(rows), {
      stdout: outlet as unknown as NodeJS.WriteStream,
      stdin: DEAF as unknown as NodeJS.ReadStream,
      stderr: outlet as unknown as NodeJS.WriteStream,
      exitOnCtrlC: false,
      patchConsole: false,
      incrementalRendering: true,
      maxFps: 60,
    });
    write('\u001b[?25l\u001b[?2026l');
    instance.waitUntilExit().catch(onFault);
  };
  return {
    show: (rows) => {
      if (instance === null) begin(rows);
      else instance.rerender(drawing(rows));
    },
    anew: (rows, now) => {
      stop();
      width = now;
      begin(rows);
    },
    stop,
  };
}

/** Keys come another way, one by one. */
const DEAF = {
  isTTY: false,
  on: () => DEAF,
  off: () => DEAF,
  addListener: () => DEAF,
  removeListener: () => DEAF,
  setEncoding: () => DEAF,
  ref: () => DEAF,
  unref: () => DEAF,
  read: () => null,
};
