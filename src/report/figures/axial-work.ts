import { line, type Point, polygon, type Shape } from '../../drawing/scene.ts';
import { plain } from './known-stack.ts';
import { type Drawn, NOTHING, named, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

/** Faceplate, fixture and part one behind the other along the rotary axis, 0 at the faceplate, as far as they are known. */
export function axialWork({ rows, known, view }: StackSubject): Drawn {
  const at = (along: number, out: number): Point => [view.sign * along, view.axis + out];
  const box = (thing: 'fixture' | 'part', from: number, to: number, half: number): Shape =>
    polygon(thing, at(from, -half), at(to, -half), at(to, half), at(from, half));
  const plate = plain(rows.table.faceplate ?? undefined);
  const { fixtureDiameter: F, fixtureHeight: f, radius: R, height: H } = known;
  const end = (f ?? 0) + (H ?? 0);
  return together([
    plate === null
      ? NOTHING
      : {
          shapes: [line('faceplate', at(0, -plate / 2), at(0, plate / 2))],
          marks: [{ at: at(0, -plate / 2 + 6), name: 'faceplate', stands: 'below' }],
        },
    F === null || f === null || f === 0 || F === 0
      ? NOTHING
      : named(box('fixture', 0, f, F / 2), 'fixture', view.sign, Math.min(F, f)),
    R === null || H === null || f === null
      ? NOTHING
      : named(box('part', f, f + H, R), 'part, as wide as it sweeps', view.sign, Math.min(2 * R, H)),
    { shapes: [line('axis', at(-AXIS, 0), at(end + AXIS, 0))], marks: [] },
  ]);
}

/** How far the axis is drawn beyond the work, mm. */
const AXIS = 40;
