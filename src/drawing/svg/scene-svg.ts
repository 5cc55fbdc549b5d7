import type { Element } from 'xast';
import { toXml } from 'xast-util-to-xml';
import { x } from 'xastscript';
import { type Keys, keysOf } from '../keys.ts';
import { LOOKS } from '../look.ts';
import { roundLength } from '../round-length.ts';
import type { Scene } from '../scene.ts';
import { hatchPatterns } from './hatch.ts';
import { type PlacedPanel, panelElement, placedPanel } from './panel.ts';
import { LINE_HEIGHT, length, TEXT_SIZE, textWidth } from './paper.ts';
import { textElement } from './text.ts';

export interface SvgLook {
  /** a length in mm as it is written */
  readonly lengthText: (mm: number) => string;
}

/** mm on paper */
interface Sheet {
  readonly width: number;
  readonly height: number;
}

/** What a sheet has inside its margins, less the list below the picture. */
const UPRIGHT: Sheet = { width: 184, height: 190 };
const LYING: Sheet = { width: 271, height: 130 };
const EDGE = 3;

/** Scales that drawings are made at: the largest at which all fits. */
const SCALES = [1, 2, 5]
  .flatMap((first) => [0, 1, 2, 3].map((power) => first * 10 ** power))
  .sort((a, b) => a - b);

/**
 * A scene as an SVG file of its own: to scale when it is printed at its own size, in black on white, with title and
 * description for whoever cannot see it. The same bytes for the same scene. Ends with one line break.
 */
export function sceneSvg(scene: Scene, { lengthText }: SvgLook): string {
  const keys = keysOf(scene);
  const { rows, scale } = layoutOf(scene);
  const panels: Element[] = [];
  let y = EDGE + LINE_HEIGHT + 2;
  for (const row of rows) {
    let atX = EDGE;
    for (const each of row) {
      panels.push(panelElement(each, keys, atX, y));
      atX += each.width;
    }
    y += Math.max(...row.map(({ height }) => height)) + 2;
  }
  const wide = Math.max(...rows.map((row) => row.reduce((sum, { width }) => sum + width, 0)));
  const width = Math.max(LEAST_WIDTH, wide) + 2 * EDGE;
  const bar = scene.toScale ? scaleBar(scale, y, lengthText) : [];
  y += scene.toScale ? 8 : 0;
  const lines = listLines(scene, keys, width - 2 * EDGE);
  const list = lines.map(({ text, bold, left, line }) =>
    textElement(text, EDGE + left, y + line * LINE_HEIGHT + TEXT_SIZE, { bold }),
  );
  const height = y + Math.max(0, ...lines.map(({ line }) => line + 1)) * LINE_HEIGHT + EDGE;
  const things = scene.panels.flatMap(({ shapes, bars }) => [
    ...shapes.map(({ thing }) => thing),
    ...(bars?.rows ?? []).map(({ form }) => form),
  ]);
  const hatches = new Set(things.map((thing) => LOOKS[thing].hatch));
  const root = x(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${length(width)}mm`,
      height: `${length(height)}mm`,
      viewBox: `0 0 ${length(width)} ${length(height)}`,
      role: 'img',
      'aria-labelledby': 'title desc',
      'font-family': 'Helvetica, Arial, sans-serif',
    },
    [
      x('title', { id: 'title' }, scene.title),
      x('desc', { id: 'desc' }, scene.description),
      x('defs', {}, [...hatchPatterns(hatches)]),
      x('rect', { width: '100%', height: '100%', fill: '#fff' }),
      textElement(scene.title, EDGE, EDGE + TEXT_SIZE, { bold: true, size: 3.8 }),
      ...panels,
      ...bar,
      ...list,
    ],
  );
  // the one sequence that XML forbids in text and the serializer leaves as it is
  return `${toXml(root).replaceAll(']]>', ']]&gt;')}\n`;
}

const LEAST_WIDTH = 110;

interface Layout {
  readonly rows: readonly (readonly PlacedPanel[])[];
  readonly scale: number;
}

/** In as many columns as lets the panels come out largest. */
function layoutOf({ panels, toScale, abreast = false }: Scene): Layout {
  if (!toScale) return { rows: panels.map((panel) => [placedPanel(panel, 1)]), scale: 1 };
  const columns = abreast ? [panels.length] : panels.map((_, index) => panels.length - index);
  const sheet = abreast ? LYING : UPRIGHT;
  const layouts = columns.map((count): Layout => {
    const at = (scale: number): Layout => {
      const placed = panels.map((panel) => placedPanel(panel, scale));
      const rows = placed.flatMap((_, index) =>
        index % count === 0 ? [placed.slice(index, index + count)] : [],
      );
      return { rows, scale };
    };
    return SCALES.map(at).find((each) => fits(each, sheet)) ?? at(SCALES.at(-1) ?? 1);
  });
  return layouts.reduce((best, each) => (each.scale < best.scale ? each : best));
}

const fits = ({ rows }: Layout, sheet: Sheet): boolean =>
  rows.every((row) => row.reduce((sum, { width }) => sum + width, 0) <= sheet.width) &&
  rows.reduce((sum, row) => sum + Math.max(...row.map(({ height }) => height)), 0) <= sheet.height;

/** A bar of a round length, and the scale at the sheet's own size. */
function scaleBar(scale: number, y: number, lengthText: (mm: number) => string): readonly Element[] {
  const shown = roundLength(40 * scale);
  const long = shown / scale;
  const d = `M${EDGE} ${length(y)}v3M${EDGE} ${length(y + 1.5)}h${length(long)}M${length(EDGE + long)} ${length(y)}v3`;
  return [
    x('path', { d, stroke: '#000', 'stroke-width': '0.3', fill: 'none' }),
    textElement(
      `${lengthText(shown)}${GAP}(1 : ${scale} in print at its own size)`,
      EDGE + long + 3,
      y + 2.6,
    ),
  ];
}

interface ListLine {
  readonly text: string;
  readonly bold: boolean;
  /** mm from the left of the list, and lines from its top */
  readonly left: number;
  readonly line: number;
}

/** Several plain spaces are one in SVG. */
const GAP = '\u2002';

/** What the numbers and letters stand for, in two columns where they fit; what is not drawn below. */
function listLines({ notDrawn }: Scene, { marks, dimensions }: Keys, width: number): readonly ListLine[] {
  const entries = [
    ...marks.map(([key, name]) => ({ text: `${key}${GAP}${name}`, bold: false })),
    ...dimensions.map(([key, { name, text, tight }]) => ({
      text: `${key}${GAP}${name}: ${text}`,
      bold: tight,
    })),
  ];
  const columns = entries.every(({ text }) => textWidth(text, TEXT_SIZE) < width / 2) ? 2 : 1;
  const broken = entries.flatMap(({ text, bold }) =>
    inLines(text, width).map((each) => ({ text: each, bold })),
  );
  const perColumn = Math.ceil(broken.length / columns);
  const list = broken.map(
    (each, index): ListLine => ({
      ...each,
      left: index < perColumn ? 0 : width / 2,
      line: index % Math.max(1, perColumn),
    }),
  );
  const below = notDrawn.flatMap((sentence) => inLines(sentence, width));
  return [...list, ...below.map((text, index) => ({ text, bold: false, left: 0, line: perColumn + index }))];
}

function inLines(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, TEXT_SIZE) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else if (word !== '') lines.push(word);
  }
  return lines;
}
