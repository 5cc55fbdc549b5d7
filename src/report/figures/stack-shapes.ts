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
  return together([
    machineTable(view, rows),
    platesBelow(view, rows),
    housing(view, rows),
    base(view, rows),
    cross,
  ]);
}

const baseSpan = ({ rotary }: Rows): readonly [low: number, high: number] | null => {
  const [across, center] = [plain(rotary?.base.across), plain(rotary?.base.centerAcross)];
  return across === null || center === null ? null : [-center, across - center];
};

/** The table's top, as far as it goes, with solid ground below it. */
function machineTable(view: TiltedView, rows: Rows): Drawn {
  const { table } = rows.machine;
  const size = plain(table?.size[view.level === 'x' ? 0 : 1]);
  if (view.place === null || size === null) return NOTHING;
  const reach = Math.max(...(baseSpan(rows) ?? [0]).map(Math.abs), view.axis) + BEYOND;
  const left = Math.max(-reach, -size / 2 - view.place);
  const right = Math.min(reach, size / 2 - view.place);
  return {
    shapes: [rectangle('ground', [left, -GROUND], [right, 0]), line('table', [left, 0], [right, 0])],
    marks: [{ at: [left + 20, -GROUND / 2], name: 'machine table', stands: 'below' }],
  };
}

/** As large as the base, as they are reckoned. */
function platesBelow(view: TiltedView, rows: Rows): Drawn {
  const span = baseSpan(rows);
  if (view.plates === 0 || span === null) return NOTHING;
  const [a, b] = span.map((v) => still(view, v, 0)[0]) as [number, number];
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  return {
    shapes: [rectangle('plate', [left, 0], [right, view.plates])],
    marks: [{ at: [right - 10, view.plates / 2], name: 'plates under the rotary', stands: 'right' }],
  };
}

function housing(view: TiltedView, { rotary }: Rows): Drawn {
  const boxes = rotary?.housing ?? [];
  const shapes = boxes.map(({ across: [low, high], top }) => {
    const [a, b] = [still(view, low, 0)[0], still(view, high, 0)[0]];
    return rectangle('housing', [Math.min(a, b), view.plates], [Math.max(a, b), view.plates + top]);
  });
  const first = boxes[0];
  if (first === undefined) return NOTHING;
  const [, high] = first.across;
  const at: Point = still(view, high - 12, view.plates + first.top - 12);
  return { shapes, marks: [{ at, name: 'housing beside the work', stands: 'on' }] };
}

/** Its foot on the plates, and up to the tilt axis where it stands: the body itself is in no catalog. */
function base(view: TiltedView, rows: Rows): Drawn {
  const span = baseSpan(rows);
  if (span === null) return NOTHING;
  const [low, high] = span;
  const foot = line('base', still(view, low, view.plates), still(view, high, view.plates));
  const upright = line('axis', [0, view.plates], [0, view.axis]);
  return {
    shapes: [foot, upright],
    marks: [{ at: still(view, high - 15, view.plates), name: 'base of the rotary', stands: 'above' }],
  };
}

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
      : {
          shapes: [box('fixture', F / 2, p, p + f)],
          marks: [{ at: at(0, p + f / 2), name: 'fixture', stands: 'on' }],
        },
    R === null || H === null || f === null
      ? NOTHING
      : {
          shapes: [box('part', R, p + f, p + f + H)],
          marks: [{ at: at(0, p + f + H / 2), name: 'part, as wide as it sweeps', stands: 'on' }],
        },
  ]);
}
