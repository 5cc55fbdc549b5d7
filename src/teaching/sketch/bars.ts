import { line, type Panel, polygon } from '../../drawing/scene.ts';
import { number, say } from '../../report/blocks/inline.ts';
import { drawnText, type Figure, measured } from '../../report/figures/figure.ts';
import { at, type Root } from '../explained.ts';

/** mm on paper */
const WIDE = 120;
const HIGH = 12;
const GAP = 10;

interface Compared {
  readonly name: string;
  readonly title: string;
  readonly need: number;
  readonly have: number;
  readonly unit: string;
}

/** Need and have as two bars at one scale, from the same line. Null where both are nothing. */
export function bars(root: Root, { name, title, need, have, unit }: Compared): Figure | null {
  const most = Math.max(Math.abs(need), Math.abs(have));
  if (most === 0 || !Number.isFinite(most)) return null;
  const times = WIDE / most;
  const bar = (value: number, low: number, thing: 'part' | 'free') =>
    polygon(thing, [0, low], [value * times, low], [value * times, low + HIGH], [0, low + HIGH]);
  const upper = HIGH + GAP;
  const panel: Panel = {
    title: drawnText(say`Needed above, there is below`, root),
    shapes: [
      bar(need, upper, 'part'),
      bar(have, 0, 'free'),
      line('axis', [0, -GAP / 2], [0, upper + HIGH + GAP / 2]),
    ],
    marks: [],
    dimensions: [
      ...measured(root, {
        name: say`needed`,
        path: at('need'),
        unit,
        from: [0, upper + HIGH],
        side: 'above',
        times,
      }),
      ...measured(root, { name: say`there is`, path: at('have'), unit, from: [0, 0], side: 'below', times }),
    ],
    labels: [],
  };
  const words = say`Needed ${number(at('need'), unit)}, there is ${number(at('have'), unit)}: two bars at one scale.`;
  return {
    words,
    scene: {
      name,
      title,
      description: drawnText(words, root),
      panels: [panel],
      toScale: false,
      notDrawn: [],
    },
  };
}
