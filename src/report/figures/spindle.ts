import { line, rectangle } from '../../drawing/scene.ts';
import { plain } from './known-stack.ts';
import { type Drawn, NOTHING } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

/** So much of the nose is drawn, mm: how it goes on is in no catalog. */
const NOSE = 35;
/** where no cutter is named a tool is a line */
const NO_WIDTH = 0;

/** The spindle nose with a tool in it, the tip at a place in the picture. */
export function spindleAt(
  { decision, rows }: StackSubject,
  tip: readonly [x: number, y: number],
  tool: 'shortest' | 'longest',
): Drawn {
  const { tools } = decision.inputs.answers;
  const long = plain(tools[tool]);
  if (long === null) return NOTHING;
  const half = (plain(tools.largestCutter) ?? NO_WIDTH) / 2;
  const nose = plain(rows.machine.noseDiameter);
  const [x, y] = tip;
  const end = y + long;
  const stands = tool === 'longest' ? 'left' : 'right';
  const body =
    half === 0 ? line('tool', [x, y], [x, end]) : rectangle('tool', [x - half, y], [x + half, end]);
  const around =
    nose === null
      ? []
      : [
          line(
            'nose',
            [x - nose / 2, end + NOSE],
            [x - nose / 2, end],
            [x + nose / 2, end],
            [x + nose / 2, end + NOSE],
          ),
        ];
  const edge = stands === 'left' ? -1 : 1;
  return {
    shapes: [body, ...around],
    marks: [
      { at: [x + edge * half, y + long * 0.7], name: `${tool} tool`, stands },
      ...(nose === null
        ? []
        : [{ at: [x + (edge * nose) / 2, end + NOSE / 2] as const, name: 'spindle nose', stands } as const]),
    ],
  };
}

/** Between which ends the nose travels, as lines from left to right. */
export function noseTravel({ rows, view, checks }: StackSubject, left: number, right: number): Drawn {
  const isLevel = rows.machine.spindle === 'horizontal';
  const ends = [
    ['reach-high', isLevel ? 'position of the nose farthest back' : 'highest position of the nose'],
    ['reach-low', isLevel ? 'position of the nose farthest in' : 'lowest position of the nose'],
  ] as const;
  const drawn = ends.flatMap(([check, name]) => {
    const have = checks[check]?.result.have;
    if (typeof have !== 'number') return [];
    const y = view.axis + have;
    return [
      {
        shape: line('limit', [left, y], [right, y]),
        mark: { at: [left + 20, y] as const, name, stands: 'above' as const },
      },
    ];
  });
  return { shapes: drawn.map(({ shape }) => shape), marks: drawn.map(({ mark }) => mark) };
}
