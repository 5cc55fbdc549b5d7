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

function screen(rows: readonly Row[], width: number, pointer: string): ReactElement {
  const children: ReactElement[] = [];
  for (let index = 0; index < rows.length; ) {
    const row = rows[index];
    if (row === undefined) break;
    const until = rows.findIndex((each, at) => at >= index && each.item === undefined);
    const end = until < 0 ? rows.length : until;
    if (end > index) {
      children.push(list(rows.slice(index, end), index, pointer));
      index = end;
    } else {
      children.push(createElement(Box, { key: `row ${index}`, height: 1 }, rowText(row)));
      index += 1;
    }
  }
  return createElement(Box, { flexDirection: 'column', width }, children);
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
  const stop = (): void => {
    // what is painted stays: the last frame is not written once more where the next is to stand
    if (outlet !== null) outlet.muted = true;
    instance?.unmount();
    [outlet, instance] = [null, null];
  };
  const begin = (rows: readonly Row[]): void => {
    write('\u001b[?2026h\u001b[0m\u001b[2J\u001b[H');
    outlet = new Outlet(width, write);
    instance = render(screen(rows, width, pointer), {
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
      else instance.rerender(screen(rows, width, pointer));
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
