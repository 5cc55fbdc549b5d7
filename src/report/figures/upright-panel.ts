import { type Dimension, line, type Panel, rectangle } from '../../drawing/scene.ts';
import { type Inline, say } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { CheckAt } from '../checks-at.ts';
import { axialMeasures } from './axial-measures.ts';
import { axialTools } from './axial-tools.ts';
import { axialWork } from './axial-work.ts';
import { drawnText, measured } from './figure.ts';
import { heightMeasures } from './height-measures.ts';
import { plain } from './known-stack.ts';
import { noseTravel } from './spindle.ts';
import { type Drawn, NOTHING, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

const BESIDE = 40;
const GROUND = 30;

/**
 * The stack on an upright axis, laid out with the axis from left to right and the spindle above, to be laid over: the table
 * stands at the left, plates and rotary on it, then faceplate, fixture and part.
 */
export function uprightPanel(subject: StackSubject, tailstock: CheckAt | null): Panel {
  const { decision, known } = subject;
  const left = tableAt(subject);
  const right = (known.fixtureHeight ?? 0) + (known.height ?? 0) + BESIDE;
  return {
    title: drawnText(say`The rotary axis upright, the spindle level`, decision),
    ...together([
      table(subject),
      spindleTravel(subject),
      axialWork(subject),
      axialTools(subject),
      noseTravel(subject, left, right),
    ]),
    dimensions: [
      ...standMeasures(subject),
      ...axialMeasures(subject, tailstock, -(known.radius ?? 0) - BESIDE),
      ...heightMeasures(subject, 'reach-high', right, 'right'),
      ...heightMeasures(subject, 'reach-low', left, 'left'),
      ...heightMeasures(subject, 'index-clear', right, 'right'),
    ],
    labels: [],
  };
}

/** Where the table is, counted from the faceplate. */
const tableAt = ({ rows, view }: StackSubject): number => -(plain(rows.table.faceOffset) ?? 0) - view.plates;

/** As deep as it is, the axis over its middle, and the plates on it as a line. */
function table(subject: StackSubject): Drawn {
  const { rows, view } = subject;
  const deep = plain(rows.machine.table?.size[1]);
  if (deep === null) return NOTHING;
  const x = tableAt(subject);
  return {
    shapes: [
      rectangle('ground', [x - GROUND, -deep / 2], [x, deep / 2]),
      line('table', [x, -deep / 2], [x, deep / 2]),
      line('axis', [x, 0], [0, 0]),
      ...(view.plates === 0
        ? []
        : [line('plate', [x + view.plates, -deep / 4], [x + view.plates, deep / 4])]),
    ],
    marks: [{ at: [x - GROUND / 2, -deep / 2 + 20], name: 'machine table', stands: 'left' }],
  };
}

/** Between which heights the middle of the spindle comes. */
function spindleTravel(subject: StackSubject): Drawn {
  const { rows, known } = subject;
  const [low, high] = spindleEnds(subject);
  const far = (known.radius ?? 0) + BESIDE;
  const nose = (plain(rows.machine.noseDiameter) ?? 0) + BESIDE;
  const limit = (x: number | null, name: string): Drawn =>
    x === null
      ? NOTHING
      : {
          shapes: [line('limit', [x, far], [x, far + 2 * nose])],
          marks: [{ at: [x, far + nose], name, stands: 'on' }],
        };
  return together([limit(low, 'lowest height of the spindle'), limit(high, 'highest height of the spindle')]);
}

const spindleEnds = (subject: StackSubject): readonly [low: number | null, high: number | null] => {
  const stated = subject.rows.machine.spindleToTable;
  const x = tableAt(subject);
  const [low = null, high = null] = Array.isArray(stated) ? stated.map((each) => plain(each)) : [];
  return [low === null ? null : x + low, high === null ? null : x + high];
};

/** Plates and rotary on the table, and the heights of the spindle above it. */
function standMeasures(subject: StackSubject): readonly Dimension[] {
  const { decision, at, rows, view, known } = subject;
  const x = tableAt(subject);
  const y = -(known.radius ?? 0) - BESIDE;
  const measure = (name: readonly Inline[], path: Path, from: number, side: 'above' | 'below') =>
    measured(decision, { name, path, from: [from, side === 'below' ? y : 0], side });
  const [low, high] = spindleEnds(subject);
  const height = (end: 0 | 1): Path => [...rows.machinePath, 'spindleToTable', end];
  return [
    ...(view.plates === 0
      ? []
      : measure(say`plate under the rotary`, [...at.path, 'plates', 0, 'thickness'], x, 'below')),
    ...measure(
      say`faceplate above the back of the rotary`,
      [...rows.tablePath, 'faceOffset'],
      x + view.plates,
      'below',
    ),
    ...(low === null ? [] : measure(say`lowest height of the spindle`, height(0), x, 'above')),
    ...(high === null ? [] : measure(say`highest height of the spindle`, height(1), x, 'above')),
  ];
}
