import { arc, line, type Panel, type Shape } from '../../drawing/scene.ts';
import { distanceFromAxis } from '../../mechanics/geometry/distance.ts';
import { say } from '../blocks/inline.ts';
import { drawnText } from './figure.ts';
import { heightMeasures } from './height-measures.ts';
import { plain } from './known-stack.ts';
import { noseTravel, spindleAt } from './spindle.ts';
import { type Drawn, NOTHING, standing, tilting, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';
import { tilted } from './tilted-view.ts';

/** The work on its way from level to its greatest tilt: what its corners describe, under the tool and over the table. */
export function sweepPanel(subject: StackSubject, greatest: number, half: number): Panel {
  const { decision, view, rows, known, checks } = subject;
  const need = checks['index-clear']?.result.need;
  const longest = plain(decision.inputs.answers.tools.longest);
  const tool: Drawn =
    typeof need !== 'number' || longest === null
      ? NOTHING
      : spindleAt(subject, [0, view.axis + need - longest], 'longest');
  const drawn = together([
    standing(view, rows),
    tilting(view, rows, known, greatest),
    sweeps(subject, greatest),
    tool,
    noseTravel(subject, -half, half),
  ]);
  return {
    title: drawnText(say`While it tilts, from level to the most`, decision),
    ...drawn,
    dimensions: [
      ...heightMeasures(subject, 'index-clear', half, 'right'),
      ...heightMeasures(subject, 'table-clear', -half, 'left'),
    ],
    labels: [],
  };
}

/** What the corner farthest from the tilt axis describes, to either side. */
function sweeps({ view, rows, known }: StackSubject, greatest: number): Drawn {
  const corners = cornersOf(plain(rows.table.faceOffset), plain(rows.table.faceplate ?? undefined), known);
  const farthest = [...corners].sort((a, b) => distanceFromAxis(...b) - distanceFromAxis(...a))[0];
  if (farthest === undefined || greatest === 0) return NOTHING;
  const [v, w] = farthest;
  const radius = distanceFromAxis(v, w);
  const shapes = [v, -v].map((each): Shape => {
    const start = (Math.atan2(w, each) * 180) / Math.PI;
    const [from, to] = view.sign === 1 ? [start, start + greatest] : [180 - start - greatest, 180 - start];
    return arc('sweep', [0, view.axis], radius, from, to);
  });
  const top = line('guide', [-radius, view.axis + radius], [radius, view.axis + radius]);
  const passesTop = greatest >= (Math.atan2(v, w) * 180) / Math.PI;
  return {
    shapes: [...shapes, ...(passesTop ? [top] : [])],
    marks: [
      { at: tilted(view, v, w, greatest / 2), name: 'what the farthest corner describes', stands: 'above' },
    ],
  };
}

type Corner = readonly [v: number, w: number];

function cornersOf(
  p: number | null,
  faceplate: number | null,
  { radius, height, fixtureHeight: f, fixtureDiameter: F }: StackSubject['known'],
): readonly Corner[] {
  // the farthest of some is not the farthest of all
  if (p === null || radius === null || height === null || f === null || F === null) return [];
  return [
    ...(faceplate === null ? [] : [[faceplate / 2, p] as const]),
    [F / 2, p],
    [F / 2, p + f],
    [radius, p + f],
    [radius, p + f + height],
  ];
}
