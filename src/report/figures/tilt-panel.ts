import type { Dimension, Panel } from '../../drawing/scene.ts';
import type { TipBox } from '../../mechanics/geometry/tip-box.ts';
import { type Inline, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { drawnText, measured } from './figure.ts';
import { heightMeasures } from './height-measures.ts';
import { heightPath, plain } from './known-stack.ts';
import { noseTravel, spindleAt } from './spindle.ts';
import { type Drawn, NOTHING, standing, tilting, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

/** One tilt at which the work is cut. */
export interface TiltStop {
  readonly tilt: number;
  readonly tips: TipBox | null;
  readonly title: readonly Inline[];
}

/** The stack as it stands at one tilt, with the longest tool above its highest place and the shortest at its lowest. */
export function tiltPanel(
  subject: StackSubject,
  stop: TiltStop,
  shown: { readonly high: boolean; readonly low: boolean; readonly stack: boolean },
  half: number,
): Panel {
  const { decision, view, rows, known } = subject;
  return {
    title: drawnText(stop.title, decision),
    ...together([
      standing(view, rows),
      tilting(view, rows, known, stop.tilt),
      tools(subject, stop.tips),
      stop.tips === null ? NOTHING : noseTravel(subject, -half, half),
    ]),
    dimensions: [
      ...(shown.stack ? stackMeasures(subject, -half) : []),
      ...(shown.high ? heightMeasures(subject, 'reach-high', half, 'right') : []),
      ...(shown.low
        ? heightMeasures(subject, 'reach-low', shown.stack ? half : -half, shown.stack ? 'right' : 'left')
        : []),
    ],
    labels: [],
  };
}

/** Beside each other over the stretch in which the tips come. */
function tools(subject: StackSubject, tips: TipBox | null): Drawn {
  if (tips === null) return NOTHING;
  const { approach } = subject.decision.inputs.assume;
  const { sign, axis } = subject.view;
  const [low, high] = tips.v;
  const [a, b] = [low + (high - low) * 0.3, low + (high - low) * 0.7].map((v) => sign * v) as [
    number,
    number,
  ];
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  return together([
    spindleAt(subject, [left, axis + tips.w[1] + approach], 'longest'),
    spindleAt(subject, [right, axis + tips.w[0]], 'shortest'),
  ]);
}

/** Plates, center height, faceplate, fixture and part, one on the other. */
function stackMeasures(
  { decision, at, rows, view, known, partIndex, part }: StackSubject,
  x: number,
): readonly Dimension[] {
  const answer: Path = ['inputs', 'answers', 'parts', partIndex];
  const measure = (name: readonly Inline[], path: Path, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [x, y], side: 'left' }).filter(
      ({ from, to }) => from[1] !== to[1],
    );
  const p = plain(rows.table.faceOffset);
  const f = known.fixtureHeight;
  return [
    ...(view.plates === 0
      ? []
      : measure(say`plate under the rotary`, [...at.path, 'plates', 0, 'thickness'], 0)),
    ...(rows.rotary === null
      ? []
      : measure(say`center height of the rotary`, [...rows.tablePath, 'centerHeight'], view.plates)),
    ...measure(
      say`faceplate ${words(view.laidOver ? 'off' : 'above')} the tilt axis`,
      [...rows.tablePath, 'faceOffset'],
      view.axis,
    ),
    ...(p === null ? [] : measure(say`fixture`, [...answer, 'holding', 'height'], view.axis + p)),
    ...(p === null || f === null
      ? []
      : measure(say`part`, [...answer, ...heightPath(part)], view.axis + p + f)),
  ];
}
