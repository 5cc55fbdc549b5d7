import { outlineOf } from './outline.ts';
import type { Form, Point } from './scene.ts';

/**
 * Short strokes along an outline, slanting inward, a given distance apart: how a limit is told from a thing. `inward`
 * is to the left of the way that the outline runs.
 */
export function ticksOf(form: Form, apart: number, length: number): readonly (readonly [Point, Point])[] {
  const points = outlineOf(form, apart / 4);
  const ticks: (readonly [Point, Point])[] = [];
  let until = apart / 2;
  points.forEach(([x2, y2], index) => {
    const [x1, y1] = points[index - 1] ?? [x2, y2];
    const run = Math.hypot(x2 - x1, y2 - y1);
    if (run === 0) return;
    const [ux, uy] = [(x2 - x1) / run, (y2 - y1) / run];
    for (; until <= run; until += apart) {
      const [x, y] = [x1 + ux * until, y1 + uy * until];
      ticks.push([
        [x, y],
        [x + (ux - uy) * length, y + (uy + ux) * length],
      ]);
    }
    until -= run;
  });
  return ticks;
}
