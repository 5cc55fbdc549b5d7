import { line, type Mark, type Point, polygon, rectangle, type Shape } from '../../drawing/scene.ts';
import { type KnownPart, plain, type Rows } from './known-stack.ts';
import { still, type TiltedView, tilted } from './tilted-view.ts';

/** Shapes, and the numbers that name them. */
export interface Drawn {
  readonly shapes: readonly Shape[];
  readonly marks: readonly Mark[];
}

export const together = (parts: readonly Drawn[]): Drawn => ({
  shapes: parts.flatMap(({ shapes }) => shapes),
  marks: parts.flatMap(({ marks }) => marks),
});

export const NOTHING: Drawn = { shapes: [], marks: [] };

/** Depth of what stands for solid ground below a surface, mm. */
const GROUND = 30;
/** How far the table is drawn beyond what stands on it, mm. */
const BEYOND = 60;
const CROSS = 30;

/** What stands still: table, plates, base and housing of the rotary, and its tilt axis as a cross. */
export function standing(view: TiltedView, rows: Rows): Drawn {
  const { axis } = view;
  const cross: Drawn = {
    shapes: [
      line('axis', still(view, -CROSS, axis), still(view, CROSS, axis)),
      line('axis', [0, axis - CROSS], [0, axis + CROSS]),
    ],
    marks: [],
  };
  const span = acrossSpan(rows);
  return together([
    machineTable(view, rows, span),
    platesBelow(view, span),
    housing(
      view,
      rows,
      (rows.rotary?.housing ?? []).map(({ across }) => across),
    ),
    base(view, span),
    upright(view, span),
    cross,
  ]);
}

const acrossSpan = ({ rotary }: Rows): Span | null => {
  const [across, center] = [plain(rotary?.base.across), plain(rotary?.base.centerAcross)];
  return across === null || center === null ? null : [-center, across - center];
};

/** From where to where something reaches in the picture, from the axis or the faceplate. */
export type Span = readonly [low: number, high: number];

/** The table's top, as far as it goes, with solid ground below it. */
export function machineTable(view: TiltedView, rows: Rows, span: Span | null): Drawn {
  const { table } = rows.machine;
  const size = plain(table?.size[view.level === 'x' ? 0 : 1]);
  if (view.place === null || size === null) return NOTHING;
  const reach = Math.max(...(span ?? [0]).map(Math.abs), view.axis) + BEYOND;
  const left = Math.max(-reach, -size / 2 - view.place);
  const right = Math.min(reach, size / 2 - view.place);
  return {
    shapes: [rectangle('ground', [left, -GROUND], [right, 0]), line('table', [left, 0], [right, 0])],
    marks: [{ at: [left + 20, -GROUND / 2], name: 'machine table', stands: 'below' }],
  };
}

/** As large as the base, as they are reckoned. */
export function platesBelow(view: TiltedView, span: Span | null): Drawn {
  if (view.plates === 0 || span === null) return NOTHING;
  const [a, b] = span.map((v) => still(view, v, 0)[0]) as [number, number];
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  return {
    shapes: [rectangle('plate', [left, 0], [right, view.plates])],
    marks: [{ at: [right - 10, view.plates / 2], name: 'plates under the rotary', stands: 'right' }],
  };
}

/** Its boxes as they reach in the picture, each as high as it is above the base. */
export function housing(view: TiltedView, { rotary }: Rows, spans: readonly Span[]): Drawn {
  const boxes = (rotary?.housing ?? []).flatMap(({ top }, index) => {
    const span = spans[index];
    return span === undefined ? [] : [{ top, span }];
  });
  const shapes = boxes.map(({ span: [low, high], top }) => {
    const [a, b] = [still(view, low, 0)[0], still(view, high, 0)[0]];
    return rectangle('housing', [Math.min(a, b), view.plates], [Math.max(a, b), view.plates + top]);
  });
  const first = boxes[0];
  if (first === undefined) return NOTHING;
  const at: Point = still(view, first.span[1] - 12, view.plates + first.top - 12);
  return { shapes, marks: [{ at, name: 'housing beside the work', stands: 'on' }] };
}

/** Its foot on the plates: the body itself is in no catalog. */
export function base(view: TiltedView, span: Span | null): Drawn {
  if (span === null) return NOTHING;
  const [low, high] = span;
  return {
    shapes: [line('base', still(view, low, view.plates), still(view, high, view.plates))],
    marks: [{ at: still(view, high - 15, view.plates), name: 'base of the rotary', stands: 'above' }],
  };
}

/** Up to the tilt axis where it stands. */
const upright = (view: TiltedView, span: Span | null): Drawn =>
  span === null ? NOTHING : { shapes: [line('axis', [0, view.plates], [0, view.axis])], marks: [] };

/** What tilts: faceplate, fixture and part, as far as they are known. */
export function tilting(view: TiltedView, rows: Rows, part: KnownPart, tilt: number): Drawn {
  const p = plain(rows.table.faceOffset);
  if (p === null) return NOTHING;
  const at = (v: number, w: number): Point => tilted(view, v, w, tilt);
  const box = (thing: 'fixture' | 'part', half: number, low: number, high: number): Shape =>
    polygon(thing, at(-half, low), at(half, low), at(half, high), at(-half, high));
  const plate = plain(rows.table.faceplate ?? undefined);
  const { fixtureDiameter: F, fixtureHeight: f, radius: R, height: H } = part;
  return together([
    plate === null
      ? NOTHING
      : {
          shapes: [line('faceplate', at(-plate / 2, p), at(plate / 2, p))],
          marks: [{ at: at(-plate / 2 + 6, p), name: 'faceplate', stands: 'below' }],
        },
    F === null || f === null || f === 0 || F === 0
      ? NOTHING
      : named(box('fixture', F / 2, p, p + f), 'fixture', view.sign, Math.min(F, f)),
    R === null || H === null || f === null
      ? NOTHING
      : named(box('part', R, p + f, p + f + H), 'part, as wide as it sweeps', -view.sign, Math.min(2 * R, H)),
  ]);
}

/** What is smaller, mm, would be hidden by its number. */
const LEAST_NAMED = 75;

/** A thing with its number on it; beside it, to the right (1) or left (-1), where it is too small for that. */
export function named(shape: Shape, name: string, side: number, size: number): Drawn {
  const points = 'points' in shape.form ? shape.form.points : [];
  const middle = (axis: 0 | 1): number =>
    points.reduce((sum, point) => sum + point[axis], 0) / Math.max(1, points.length);
  if (size >= LEAST_NAMED) {
    return { shapes: [shape], marks: [{ at: [middle(0), middle(1)], name, stands: 'on' }] };
  }
  const [first] = points.toSorted((a, b) => side * (b[0] - a[0]));
  const at: Point =
    first === undefined
      ? [middle(0), middle(1)]
      : [(first[0] * 3 + middle(0)) / 4, (first[1] * 3 + middle(1)) / 4];
  return { shapes: [shape], marks: [{ at, name, stands: side > 0 ? 'right' : 'left' }] };
}
