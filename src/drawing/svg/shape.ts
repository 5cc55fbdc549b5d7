import type { Element } from 'xast';
import { x } from 'xastscript';
import { LOOKS, type Stroke, type Weight } from '../look.ts';
import { arcEnds } from '../outline.ts';
import type { Form, Point, Shape } from '../scene.ts';
import { ticksOf } from '../ticks.ts';
import { hatchFill } from './hatch.ts';
import { length, onPaper, type Paper, pathOf } from './paper.ts';

/** mm on paper */
const WIDTHS: Readonly<Record<Weight, number>> = { thin: 0.18, plain: 0.3, heavy: 0.6 };

const DASHES: Readonly<Record<Stroke, string | undefined>> = {
  solid: undefined,
  ticked: undefined,
  dashed: '2.4 1.2',
  dotted: '0.4 0.9',
  chain: '4 1 0.8 1',
  faint: undefined,
};

const TICKS_APART = 3;
const TICK_LENGTH = 1;

/** A shape as SVG, its ticks beside it where its look has some. */
export function shapeElements({ thing, form }: Shape, paper: Paper): readonly Element[] {
  const { weight, stroke, hatch } = LOOKS[thing];
  const look = {
    fill: hatchFill(hatch),
    stroke: '#000',
    'stroke-width': String(WIDTHS[weight]),
    'stroke-dasharray': DASHES[stroke],
    'stroke-linejoin': 'round',
  };
  const drawn = outline(form, paper, look);
  if (stroke !== 'ticked') return [drawn];
  const ticks = ticksOf(form, TICKS_APART * paper.scale, TICK_LENGTH * paper.scale)
    .map((tick) => pathOf(tick.map((point) => onPaper(paper, point))))
    .join('');
  return [drawn, x('path', { ...look, fill: 'none', d: ticks })];
}

type Attributes = Readonly<Record<string, string | undefined>>;

function outline(form: Form, paper: Paper, look: Attributes): Element {
  const at = (point: Point): Point => onPaper(paper, point);
  switch (form.kind) {
    case 'line':
      return x('path', { ...look, fill: 'none', d: pathOf(form.points.map(at)) });
    case 'polygon':
      return x('path', { ...look, d: pathOf(form.points.map(at), true) });
    case 'circle': {
      const [cx, cy] = at(form.center);
      const r = length(form.radius / paper.scale);
      return x('circle', { ...look, cx: length(cx), cy: length(cy), r });
    }
    case 'arc': {
      const [from = [0, 0], to = [0, 0]] = arcEnds(form).map(at);
      const r = length(form.radius / paper.scale);
      const long = form.to - form.from > 180 ? 1 : 0;
      // up is down on paper: counterclockwise in the shop is so on paper too, which SVG calls 0
      const d = `${pathOf([from])}A${r} ${r} 0 ${long} 0 ${length(to[0])} ${length(to[1])}`;
      return x('path', { ...look, fill: 'none', d });
    }
  }
}
