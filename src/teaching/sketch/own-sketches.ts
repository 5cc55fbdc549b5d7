import { arc, circle, type Dimension, line, type Panel, rectangle, type Shape } from '../../drawing/scene.ts';
import { number, say } from '../../report/blocks/inline.ts';
import { drawnText, type Figure, measured } from '../../report/figures/figure.ts';
import { at, type Root } from '../explained.ts';

/** What a sketch is made of: a name for its file, a title, and every number of the example by its symbol. */
export interface Sketched {
  readonly name: string;
  readonly title: string;
  readonly unit: string;
  readonly numbers: Readonly<Record<string, number>>;
}

const CROSS = 12;

/** Two circles about the rotary axis: what is needed, and what there is. */
export function circles(
  root: Root,
  sketched: Sketched & { readonly need: number; readonly have: number },
): Figure {
  const { need, have } = sketched;
  const shapes = [circle('faceplate', [0, 0], have / 2), circle('part', [0, 0], need / 2), ...cross()];
  const most = Math.max(need, have) / 2;
  const dimensions = [
    ...measured(root, {
      name: say`needed`,
      path: at('need'),
      from: [-need / 2, most + CROSS],
      side: 'above',
      tight: true,
    }),
    ...measured(root, {
      name: say`there is`,
      path: at('have'),
      from: [-have / 2, -most - CROSS],
      side: 'below',
    }),
  ];
  return figureOf(root, sketched, shapes, dimensions, 'Seen along the rotary axis');
}

/** Part and fixture from the side, and the circle of their farthest corner about the tilt axis. */
export function corner(
  root: Root,
  sketched: Sketched & { readonly need: number; readonly have: number },
): Figure {
  const { numbers, need, have } = sketched;
  const { R = 0, B = 0, T = 0, F = 0, p = 0 } = numbers;
  const shapes: readonly Shape[] = [
    rectangle('fixture', [-F / 2, p], [F / 2, B]),
    rectangle('part', [-R, B], [R, T]),
    arc('sweep', [0, 0], need, 0, 180),
    arc('limit', [0, 0], have, 0, 180),
    ...cross(),
  ];
  const dimensions = [
    ...measured(root, {
      name: say`farthest corner, needed`,
      path: at('need'),
      from: [0, -CROSS],
      side: 'below',
      tight: true,
    }),
    ...measured(root, {
      name: say`clear radius, there is`,
      path: at('have'),
      from: [0, -3 * CROSS],
      side: 'below',
    }),
  ];
  return figureOf(root, sketched, shapes, dimensions, 'Level, the tilt axis as a cross');
}

/** An axis seen from its end. */
const cross = (): readonly Shape[] => [
  line('axis', [-CROSS, 0], [CROSS, 0]),
  line('axis', [0, -CROSS], [0, CROSS]),
];

function figureOf(
  root: Root,
  { name, title, unit }: Sketched,
  shapes: readonly Shape[],
  dimensions: readonly Dimension[],
  seen: string,
): Figure {
  const panel: Panel = { title: seen, shapes, marks: [], dimensions, labels: [] };
  const words = say`Needed ${number(at('need'), unit)}, there is ${number(at('have'), unit)}, drawn to scale.`;
  return {
    words,
    scene: { name, title, description: drawnText(words, root), panels: [panel], toScale: true, notDrawn: [] },
  };
}
