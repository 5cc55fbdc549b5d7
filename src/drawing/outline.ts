import type { Form, Panel, Point } from './scene.ts';

const RADIANS = Math.PI / 180;

const onCircle = ([x, y]: Point, radius: number, degrees: number): Point => [
  x + radius * Math.cos(degrees * RADIANS),
  y + radius * Math.sin(degrees * RADIANS),
];

/** The ends of an arc. Example: center 0, 0, radius 10, from 0 to 90 → [10, 0] and [0, 10]. */
export const arcEnds = ({ center, radius, from, to }: Form & { readonly kind: 'arc' }): readonly Point[] =>
  [from, to].map((degrees) => onCircle(center, radius, degrees));

/** The outline of a form as points joined by straight lines, curves in steps of at most so many mm. */
export function outlineOf(form: Form, step: number): readonly Point[] {
  switch (form.kind) {
    case 'line':
      return form.points;
    case 'polygon':
      return [...form.points, ...form.points.slice(0, 1)];
    case 'circle':
      return curve(form.center, form.radius, 0, 360, step);
    case 'arc':
      return curve(form.center, form.radius, form.from, form.to, step);
  }
}

function curve(center: Point, radius: number, from: number, to: number, step: number): readonly Point[] {
  const length = radius * Math.abs(to - from) * RADIANS;
  const steps = Math.min(2000, Math.max(8, Math.ceil(length / step)));
  return Array.from({ length: steps + 1 }, (_, index) =>
    onCircle(center, radius, from + ((to - from) * index) / steps),
  );
}

/** Is the point inside a closed form? Lines and arcs have no inside. */
export function isInside(form: Form, [x, y]: Point): boolean {
  if (form.kind === 'circle') return Math.hypot(x - form.center[0], y - form.center[1]) < form.radius;
  if (form.kind !== 'polygon') return false;
  const { points } = form;
  let inside = false;
  points.forEach(([x1, y1], index) => {
    const [x2, y2] = points[(index + 1) % points.length] ?? [x1, y1];
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) inside = !inside;
  });
  return inside;
}

export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** The rectangle that holds all shapes, and all points from which something is measured. Nothing drawn: a point. */
export function boundsOf({ shapes, dimensions, marks, labels }: Panel): Bounds {
  const points = [
    ...shapes.flatMap(({ form }) => cornersOf(form)),
    ...dimensions.flatMap(({ from, to }) => [from, to]),
    ...[...marks, ...labels].map(({ at }) => at),
  ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  if (points.length === 0) return { left: 0, right: 0, low: 0, high: 0 };
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

function cornersOf(form: Form): readonly Point[] {
  if (form.kind === 'circle') {
    const { center, radius } = form;
    return [0, 90, 180, 270].map((degrees) => onCircle(center, radius, degrees));
  }
  if (form.kind !== 'arc') return form.points;
  const { center, radius, from, to } = form;
  const quarters = [-360, -270, -180, -90, 0, 90, 180, 270, 360].filter((each) => each > from && each < to);
  return [...arcEnds(form), ...quarters.map((degrees) => onCircle(center, radius, degrees))];
}
