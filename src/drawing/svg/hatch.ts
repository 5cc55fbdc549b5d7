import type { Element } from 'xast';
import { x } from 'xastscript';
import type { Hatch } from '../look.ts';

type Drawn = Exclude<Hatch, 'none' | 'blank'>;

/** The side of a tile, mm on paper, and the strokes in it. */
const TILES: Readonly<Record<Drawn, readonly [side: number, d: string]>> = {
  rising: [2, 'M-0.5 0.5L0.5 -0.5M0 2L2 0M1.5 2.5L2.5 1.5'],
  falling: [2, 'M-0.5 1.5L0.5 2.5M0 0L2 2M1.5 -0.5L2.5 0.5'],
  crossed: [2.4, 'M0 0L2.4 2.4M0 2.4L2.4 0'],
  level: [1.2, 'M0 0.6H1.2'],
  upright: [1.2, 'M0.6 0V1.2'],
  dots: [2, 'M0.35 0.5H0.65M1.35 1.5H1.65'],
};

/** Ids hold for a whole page, so they are ours alone. */
const idOf = (hatch: Drawn): string => `fivesides-${hatch}`;

/** White below the strokes, so that what is drawn later hides what it stands before. */
export const hatchFill = (hatch: Hatch): string =>
  hatch === 'none' ? 'none' : hatch === 'blank' ? '#fff' : `url(#${idOf(hatch)})`;

/** The patterns that a drawing makes use of. */
export const hatchPatterns = (used: ReadonlySet<Hatch>): readonly Element[] =>
  (Object.keys(TILES) as readonly Drawn[])
    .filter((hatch) => used.has(hatch))
    .map((hatch) => {
      const [side, d] = TILES[hatch];
      const size = String(side);
      return x('pattern', { id: idOf(hatch), width: size, height: size, patternUnits: 'userSpaceOnUse' }, [
        x('rect', { width: size, height: size, fill: '#fff' }),
        x('path', { d, stroke: '#000', 'stroke-width': hatch === 'dots' ? '0.3' : '0.15', fill: 'none' }),
      ]);
    });
