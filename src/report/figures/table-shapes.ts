import type { Machine } from '../../catalog/catalog.ts';
import { isInside } from '../../drawing/outline.ts';
import { circle, line, type Point, rectangle, type Shape } from '../../drawing/scene.ts';
import type { Answers } from '../../questions/answers.ts';
import type { Arrangement, CheckResult, Decision } from '../../rules/decision.ts';
import { type KnownPart, plain, type Rows } from './known-stack.ts';
import { baseOf, type OnTable } from './on-table.ts';
import { type Drawn, NOTHING, together } from './stack-shapes.ts';

/** A rectangle about the middle of the table. */
const aboutMiddle = (thing: Shape['thing'], wide: number, deep: number): Shape =>
  rectangle(thing, [-wide / 2, -deep / 2], [wide / 2, deep / 2]);

/** The table with its slots, and how far the spindle comes. The slots are named where nothing stands on them. */
export function tableShapes({ table, travel }: Machine, onIt: readonly Shape[]): Drawn {
  const [wide, deep] = table?.size.map(plain) ?? [null, null];
  const [travelX, travelY] = travel.map(plain);
  if (wide === null || wide === undefined || deep === null || deep === undefined) return NOTHING;
  const slots = slotsOf(table, wide, deep);
  const isReachOpen = travelX === null || travelX === undefined || travelY === null || travelY === undefined;
  return {
    shapes: [
      ...slots,
      aboutMiddle('table', wide, deep),
      ...(isReachOpen ? [] : [aboutMiddle('limit', travelX, travelY)]),
    ],
    marks: [
      { at: [-wide / 2, -deep / 2], name: 'machine table', stands: 'on' },
      ...(slots.length === 0
        ? []
        : [{ at: free(slotPoints(slots), onIt), name: 'T-slots', stands: 'on' } as const]),
      ...(isReachOpen
        ? []
        : [
            {
              at: free(limitPoints(travelX, travelY), onIt),
              name: 'travel of the spindle',
              stands: 'on',
            } as const,
          ]),
    ],
  };
}

/** The first point on which nothing stands; the very first where something stands on all. */
const free = (points: readonly Point[], onIt: readonly Shape[]): Point =>
  points.find((each) => !onIt.some(({ form }) => isInside(form, each))) ?? points[0] ?? [0, 0];

/** Where along a slot its number may stand. */
const slotPoints = (slots: readonly Shape[]): readonly Point[] =>
  [0.92, 0.08, 0.8, 0.2, 0.65, 0.35].flatMap((share) =>
    slots.map(({ form }): Point => {
      const [[left, low] = [0, 0], , [right, high] = [0, 0]] = form.kind === 'polygon' ? form.points : [];
      return right - left > high - low
        ? [left + (right - left) * share, (low + high) / 2]
        : [(left + right) / 2, low + (high - low) * share];
    }),
  );

/** Where on the limits of the travel their number may stand. */
const limitPoints = (wide: number, deep: number): readonly Point[] =>
  [0.35, -0.35, 0.2, -0.2].flatMap((share): readonly Point[] => [
    [-wide / 2, deep * share],
    [wide / 2, deep * share],
  ]);

/** One about the middle where there is one in the middle; none where that is not said, or does not go with their count. */
function slotsOf(table: Machine['table'], wide: number, deep: number): readonly Shape[] {
  if (table === null) return [];
  const { count, width, pitch, center, along } = table.slots;
  const [many, broad, apart] = [plain(count), plain(width), plain(pitch)];
  if (many === null || broad === null || apart === null || along === 'unknown' || center === 'unknown')
    return [];
  if (center !== (many % 2 === 1)) return [];
  return Array.from({ length: many }, (_, index) => {
    const at = (index - (many - 1) / 2) * apart;
    return along === 'x'
      ? rectangle('slot', [-wide / 2, at - broad / 2], [wide / 2, at + broad / 2])
      : rectangle('slot', [at - broad / 2, -deep / 2], [at + broad / 2, deep / 2]);
  });
}

/** The rotary as it stands: base, housing, faceplate, and the circle that the work describes. */
export function rotaryShapes(rows: Rows, lies: OnTable, swing: CheckResult | null): Drawn {
  const { rotary } = rows;
  if (rotary === null) return NOTHING;
  const base = baseOf(rotary);
  const corners = base === null ? null : lies.rectangle(...base);
  const boxes = (rotary.housing ?? []).map(({ along, across }) => lies.rectangle(along, across));
  const plate = plain(rotary.faceplate ?? undefined);
  const need = rotary.tilt === null ? null : plain(swing?.need ?? null);
  const [x, y] = lies.center;
  return together([
    corners === null
      ? NOTHING
      : {
          shapes: [rectangle('footprint', ...corners)],
          marks: [{ at: [corners[1][0] - 20, corners[0][1] + 20], name: 'base of the rotary', stands: 'on' }],
        },
    {
      shapes: boxes.map((box) => rectangle('housing', ...box)),
      marks: boxes
        .slice(0, 1)
        .map(([low, high]) => ({ at: middleOf(low, high), name: 'housing beside the work', stands: 'on' })),
    },
    need === null
      ? NOTHING
      : {
          shapes: [circle('sweep', lies.center, need / 2)],
          marks: [
            {
              at: [x - need * 0.35, y + need * 0.35],
              name: 'circle that the largest work turns in',
              stands: 'left',
            },
          ],
        },
    plate === null
      ? NOTHING
      : rotary.tilt === null
        ? levelFaceplate(lies, plate)
        : {
            shapes: [circle('faceplate', lies.center, plate / 2)],
            marks: [{ at: [x, y - plate / 4], name: 'faceplate', stands: 'on' }],
          },
    {
      shapes: [line('axis', [x - CROSS, y], [x + CROSS, y]), line('axis', [x, y - CROSS], [x, y + CROSS])],
      marks: [],
    },
  ]);
}

/** On edge, since its axis is level. */
function levelFaceplate(lies: OnTable, plate: number): Drawn {
  const [from, to] = lies.rectangle([0, 0], [-plate / 2, plate / 2]);
  return { shapes: [line('faceplate', from, to)], marks: [{ at: to, name: 'faceplate', stands: 'above' }] };
}

/** The longest work on a level axis, which stands out from the faceplate; a tilting one has its circle instead. */
export function workShapes({ table }: Rows, lies: OnTable, work: KnownPart | null): Drawn {
  if (work === null || table.tilt !== null) return NOTHING;
  const { fixtureDiameter: F, fixtureHeight: f, radius: R, height: H } = work;
  const box = (thing: 'fixture' | 'part', from: number, long: number, half: number, name: string): Drawn => {
    const [low, high] = lies.rectangle([from, from + long], [-half, half]);
    return {
      shapes: [rectangle(thing, low, high)],
      marks: [{ at: middleOf(low, high), name, stands: 'on' }],
    };
  };
  return together([
    f === null || F === null || f === 0 || F === 0 ? NOTHING : box('fixture', 0, f, F / 2, 'fixture'),
    f === null || R === null || H === null
      ? NOTHING
      : box('part', f, H, R, 'longest work, as wide as it sweeps'),
  ]);
}

/** Where the tips of the tools come, for the part at which a check of the table is tightest. */
export const tipShapes = (tips: readonly [Point, Point] | null): Drawn =>
  tips === null
    ? NOTHING
    : {
        shapes: [rectangle('free', ...tips)],
        marks: [
          { at: [tips[1][0], (tips[0][1] + tips[1][1]) / 2], name: 'where the tips come', stands: 'right' },
        ],
      };

const CROSS = 25;

const middleOf = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** The vises that find room beside the rotary, from the outer end of what the spindle reaches. */
export function viseShapes({ inputs }: Decision, { space }: Arrangement, machine: Machine): Drawn {
  const wide = plain(machine.table?.size[0]);
  const travel = plain(machine.travel[0]);
  const vise = viseOf(inputs.answers);
  if (space === null || wide === null || travel === null || vise === null) return NOTHING;
  const outer = Math.min(wide, travel) / 2;
  const step = vise.width + inputs.assume.viseGap;
  const row = (count: number, at: (index: number) => number): readonly Shape[] =>
    Array.from({ length: count }, (_, index) => {
      const left = at(index);
      return rectangle('vise', [left, -vise.length / 2], [left + vise.width, vise.length / 2]);
    });
  const shapes = [
    ...row(plain(space.stationsLeft) ?? 0, (index) => -outer + index * step),
    ...row(plain(space.stationsRight) ?? 0, (index) => outer - vise.width - index * step),
  ];
  const [first] = shapes;
  const at = first?.form.kind === 'polygon' ? first.form.points[0] : undefined;
  const marks =
    at === undefined
      ? []
      : [{ at: [at[0] + vise.width / 2, 0] as const, name: 'vises that find room', stands: 'on' as const }];
  return { shapes, marks };
}

function viseOf({ work }: Answers): { readonly width: number; readonly length: number } | null {
  const [width, length] = [plain(work.vise.width), plain(work.vise.length)];
  return width === null || length === null ? null : { width, length };
}
