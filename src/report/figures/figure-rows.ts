import type { Bars } from '../../drawing/bars.ts';
import type { Panel, Scene } from '../../drawing/scene.ts';
import { sceneRows } from '../../drawing/terminal/scene-rows.ts';
import type { Decision } from '../../rules/decision.ts';
import { plainAscii } from '../exports/plain-ascii.ts';
import type { Figure } from './figure.ts';
import { lengthText } from './length-text.ts';

/** In less a picture shows too little. */
const LEAST_COLUMNS = 70;
/** more than half a window, so that something stands beside it */
const MOST_COLUMNS = 72;
const ROWS = 22;
/** a cell is nearly twice as high as wide in every terminal */
const ASPECT = 2;

/** A picture as rows of a screen; none where the window is too narrow for one. */
export function figureRows(
  { scene }: Figure,
  decision: Decision,
  { width, ascii }: { readonly width: number; readonly ascii: boolean },
): readonly string[] {
  if (width < LEAST_COLUMNS) return [];
  const columns = Math.min(width, MOST_COLUMNS);
  const write = lengthText(decision);
  return sceneRows(ascii ? inAscii(scene) : scene, {
    columns,
    rows: ROWS,
    ascii,
    aspect: ASPECT,
    lengthText: ascii ? (mm) => plainAscii(write(mm)) : write,
  });
}

/** Its words spelled out before anybody measures how wide they are. */
const inAscii = (scene: Scene): Scene => ({
  ...scene,
  title: plainAscii(scene.title),
  notDrawn: scene.notDrawn.map(plainAscii),
  panels: scene.panels.map(
    (panel): Panel => ({
      ...panel,
      title: plainAscii(panel.title),
      marks: panel.marks.map((mark) => ({ ...mark, name: plainAscii(mark.name) })),
      ...(panel.bars === undefined ? {} : { bars: barsInAscii(panel.bars) }),
      labels: panel.labels.map((label) => ({ ...label, text: plainAscii(label.text) })),
      dimensions: panel.dimensions.map((each) => ({
        ...each,
        name: plainAscii(each.name),
        text: plainAscii(each.text),
      })),
    }),
  ),
});

const barsInAscii = ({ rows, ticks }: Bars): Bars => ({
  rows: rows.map((bar) => ({
    ...bar,
    name: plainAscii(bar.name),
    text: plainAscii(bar.text),
    word: plainAscii(bar.word),
  })),
  ticks: ticks.map(({ at, text }) => ({ at, text: plainAscii(text) })),
});
