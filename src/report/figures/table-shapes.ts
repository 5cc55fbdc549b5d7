import type { Machine } from '../../catalog/catalog.ts';
import { circle, line, type Point, rectangle, type Shape } from '../../drawing/scene.ts';
import type { Answers } from '../../questions/answers.ts';
import type { Arrangement, CheckResult, Decision } from '../../rules/decision.ts';
import { plain, type Rows } from './known-stack.ts';
import { baseOf, type OnTable } from './on-table.ts';
import { type Drawn, NOTHING, together } from './stack-shapes.ts';

/** A rectangle about the middle of the table. */
const aboutMiddle = (thing: Shape['thing'], wide: number, deep: number): Shape =>
  rectangle(thing, [-wide / 2, -deep / 2], [wide / 2, deep / 2]);

/** The table with its slots, and how far the spindle comes. */
export function tableShapes({ table, travel }: Machine): Drawn {
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
        : [{ at: [wide * 0.42, 0] as const, name: 'T-slots', stands: 'on' } as const]),
      ...(isReachOpen
        ? []
        : [
            {
              at: [travelX * 0.4, travelY / 2] as const,
              name: 'travel of the spindle',
              stands: 'above',
            } as const,
          ]),
    ],
  };
}

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
  const plate = rotary.tilt === null ? null : plain(rotary.faceplate ?? undefined);
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
