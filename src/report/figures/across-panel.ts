import type { Dimension, Panel } from '../../drawing/scene.ts';
import { type Inline, say } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { CheckAt } from '../checks-at.ts';
import { axialMeasures } from './axial-measures.ts';
import { axialTools } from './axial-tools.ts';
import { axialWork } from './axial-work.ts';
import { drawnText, measured } from './figure.ts';
import { heightMeasures } from './height-measures.ts';
import { baseOf } from './on-table.ts';
import { noseTravel } from './spindle.ts';
import { base, housing, machineTable, platesBelow, type Span, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

const BESIDE = 40;

/** The stack across its level axis: base, faceplate, fixture and part from one end to the other, the tools above. */
export function acrossPanel(subject: StackSubject, tailstock: CheckAt | null): Panel {
  const { decision, rows, view, known } = subject;
  const span = rows.rotary === null ? null : (baseOf(rows.rotary)?.[0] ?? null);
  const work = (known.fixtureHeight ?? 0) + (known.height ?? 0);
  const [low, high]: Span = [Math.min(0, ...(span ?? [])) - BESIDE, Math.max(work, ...(span ?? [])) + BESIDE];
  const [left, right] = view.sign === 1 ? [low, high] : [-high, -low];
  const boxes = rows.rotary?.housing ?? [];
  return {
    title: drawnText(say`Across the rotary axis`, decision),
    ...together([
      machineTable(view, rows, [low, high]),
      platesBelow(view, span),
      housing(
        view,
        rows,
        boxes.map(({ along }) => along),
      ),
      base(view, span),
      axialWork(subject),
      axialTools(subject),
      noseTravel(subject, left, right),
    ]),
    dimensions: [
      ...uprightMeasures(subject, left),
      ...axialMeasures(subject, tailstock, 0),
      ...heightMeasures(subject, 'reach-high', right, 'right'),
      ...heightMeasures(subject, 'reach-low', right, 'right'),
    ],
    labels: [],
  };
}

/** Plates and center height, one on the other. */
function uprightMeasures({ decision, at, rows, view }: StackSubject, x: number): readonly Dimension[] {
  const measure = (name: readonly Inline[], path: Path, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [x, y], side: 'left' });
  return [
    ...(view.plates === 0
      ? []
      : measure(say`plate under the rotary`, [...at.path, 'plates', 0, 'thickness'], 0)),
    ...measure(say`center height of the rotary`, [...rows.tablePath, 'centerHeight'], view.plates),
  ];
}
