import { expect } from 'vitest';
import type { TipBox } from '../../src/mechanics/geometry/tip-box.ts';
import type { Place } from './visible-surface.ts';

/** Rounding of turned coordinates of up to some hundred mm. */
const ROUNDING = 1e-9;

/** Every place lies inside the box, and to each of its six faces the nearest touches it. */
export function expectTight(box: TipBox, places: readonly Place[]): void {
  expect(places.length).toBeGreaterThan(0);
  for (const [axis, name] of (['u', 'v', 'w'] as const).entries()) {
    const along = places.map((place) => place[axis] ?? Number.NaN);
    const [low, high] = box[name];
    const least = along.reduce((a, b) => Math.min(a, b));
    const greatest = along.reduce((a, b) => Math.max(a, b));
    expect(Math.abs(least - low), `low ${name}: sampled ${least}, box ${low}`).toBeLessThanOrEqual(ROUNDING);
    expect(Math.abs(greatest - high), `high ${name}: sampled ${greatest}, box ${high}`).toBeLessThanOrEqual(
      ROUNDING,
    );
  }
}

/** Where the tool's tip can be when its edge touches the places: beside them by up to the margin. */
export function besides(places: readonly Place[], margin: number): readonly Place[] {
  return places.flatMap(([u, v, w]) =>
    Array.from({ length: 8 }, (_, index): Place => {
      const angle = (index * Math.PI) / 4;
      return [u + margin * Math.cos(angle), v + margin * Math.sin(angle), w];
    }),
  );
}
