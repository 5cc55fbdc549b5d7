import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import { type Keys, keysOf } from '../keys.ts';
import { boundsOf } from '../outline.ts';
import { roundLength } from '../round-length.ts';
import type { Panel, Scene } from '../scene.ts';
import { barRows } from './bar-rows.ts';
import { dotSize } from './dots.ts';
import { DOTS_ACROSS } from './grid.ts';
import { laneCells, panelRows } from './panel-rows.ts';

export interface RowsLook {
  readonly columns: number;
  /** of one panel, its title and list left out */
  readonly rows: number;
  readonly ascii: boolean;
  /** how many times as high as wide a cell of the terminal is; usually 2 */
  readonly aspect: number;
  /** a length in mm as it is written */
  readonly lengthText: (mm: number) => string;
}

/**
 * A scene as rows for a terminal, none wider than asked for: its panels one below the other at one scale, the scale, and
 * the list of what is in them. Nothing but signs and spaces: no escape codes.
 */
export function sceneRows(scene: Scene, look: RowsLook): readonly string[] {
  const keys = keysOf(scene);
  const dot = commonDot(scene.panels, look);
  const panels = scene.panels.flatMap((panel) => [
    ...wrapped(panel.title, look.columns, ''),
    ...(panel.bars === undefined
      ? panelRows(panel, keys, { dot, ascii: look.ascii })
      : barRows(panel.bars, look)),
    '',
  ]);
  const scale = scene.toScale ? scaleRows(dot, look) : [];
  const rows = [...panels, ...scale, ...keyRows(keys, look), ...scene.notDrawn];
  return rows.flatMap((row) => (stringWidth(row) > look.columns ? wrapped(row, look.columns, '  ') : [row]));
}

/** The largest size at which every panel fits, its measures around it. */
function commonDot(
  panels: readonly Panel[],
  look: RowsLook,
): { readonly across: number; readonly down: number } {
  const sizes = panels.map((panel) => {
    const { left, right, low, high } = boundsOf(panel);
    const extent = { width: right - left, height: high - low };
    let size = dotSize(extent, look, look.aspect);
    // smaller dots may let measures stand in fewer rows, never in more
    for (let turn = 0; turn < TURNS; turn += 1) {
      const around = laneCells(panel, size.across);
      const cells = {
        columns: Math.max(LEAST_CELLS, look.columns - around.columns),
        rows: Math.max(LEAST_CELLS, look.rows - around.rows),
      };
      size = dotSize(extent, cells, look.aspect);
    }
    return size;
  });
  return sizes.reduce(
    (a, b) => (a.across > b.across ? a : b),
    dotSize({ width: 1, height: 1 }, look, look.aspect),
  );
}

const TURNS = 3;
const LEAST_CELLS = 4;

/** A bar of a round length, and how much one dot is: a sketch shows no more than that. */
function scaleRows(
  dot: { readonly across: number },
  { columns, ascii, lengthText }: RowsLook,
): readonly string[] {
  const length = roundLength((columns / 4) * DOTS_ACROSS * dot.across);
  const cells = Math.max(2, Math.round(length / dot.across / DOTS_ACROSS));
  const [left, line, right] = ascii ? ['|', '-', '|'] : ['├', '─', '┤'];
  const bar = `${left}${line.repeat(cells - 2)}${right}`;
  const dots = lengthText(Number(dot.across.toPrecision(2)));
  return [`${bar} ${lengthText(length)}; one dot is ${dots}${ascii ? ', one sign two of them' : ''}`];
}

/** What the numbers and letters stand for. */
function keyRows({ marks, dimensions }: Keys, { columns, ascii }: RowsLook): readonly string[] {
  const things = sideBySide(
    marks.map(([key, name]) => `${key} ${name}`),
    columns,
  );
  const measures = dimensions.flatMap(([key, { name, text, tight }]) =>
    wrapped(`${key} ${name}: ${text}${tight ? (ascii ? ' <--' : ' ←') : ''}`, columns, '  '),
  );
  return [...things, ...measures];
}

/** As many in a row as find room, none of them broken as long as it fits into a row. */
function sideBySide(entries: readonly string[], columns: number): readonly string[] {
  const rows: string[] = [];
  for (const entry of entries) {
    const last = rows.at(-1);
    const longer = last === undefined ? entry : `${last}   ${entry}`;
    if (last !== undefined && stringWidth(longer) <= columns) rows[rows.length - 1] = longer;
    else rows.push(entry);
  }
  return rows.flatMap((row) => (stringWidth(row) > columns ? wrapped(row, columns, '  ') : [row]));
}

const wrapped = (text: string, columns: number, hanging: string): readonly string[] =>
  wrapAnsi(text, Math.max(10, columns - hanging.length), { hard: true, trim: true })
    .split('\n')
    .map((row, index) => (index === 0 ? row : `${hanging}${row}`));
