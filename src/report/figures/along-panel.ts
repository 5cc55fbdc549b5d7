import { circle, line, type Panel, rectangle, type Shape } from '../../drawing/scene.ts';
import { say } from '../blocks/inline.ts';
import { drawnText } from './figure.ts';
import { heightMeasures } from './height-measures.ts';
import { plain } from './known-stack.ts';
import { noseTravel, spindleAt } from './spindle.ts';
import { type Drawn, NOTHING, standing, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

const BESIDE = 40;

/** The work turning under the longest tool, seen along its level axis. */
export function alongPanel(subject: StackSubject): Panel {
  const { decision, view, rows, known, checks } = subject;
  const need = checks['index-clear']?.result.need;
  const longest = plain(decision.inputs.answers.tools.longest);
  const across = (plain(rows.rotary?.base.across) ?? 0) / 2;
  const half = Math.max(across, known.radius ?? 0, (known.fixtureDiameter ?? 0) / 2) + BESIDE;
  return {
    title: drawnText(say`Along the rotary axis, while it turns`, decision),
    ...together([
      standing(view, rows),
      turning(subject),
      typeof need !== 'number' || longest === null
        ? NOTHING
        : spindleAt(subject, [0, view.axis + need - longest], 'longest'),
      noseTravel(subject, -half, half),
    ]),
    dimensions: heightMeasures(subject, 'index-clear', half, 'right'),
    labels: [],
  };
}

/** Faceplate, fixture and part about the axis, and the circle in which the work turns. */
function turning({ view, rows, known, part }: StackSubject): Drawn {
  const center = [0, view.axis] as const;
  const plate = plain(rows.table.faceplate ?? undefined);
  const { radius: R, eccentricity: e, fixtureDiameter: F, faces } = known;
  const around = (thing: Shape['thing'], radius: number, name: string, share: number): Drawn => ({
    shapes: [circle(thing, center, radius)],
    marks: [
      {
        at: [radius * share, view.axis + radius * Math.sqrt(1 - share * share)],
        name,
        stands: share > 0 ? 'right' : 'left',
      },
    ],
  });
  const [a = null, b = a] = faces;
  const isRound = part.shape === 'round' && part.stands === 'upright';
  return together([
    plate === null ? NOTHING : around('faceplate', plate / 2, 'faceplate', 0.8),
    F === null || F === 0 ? NOTHING : around('fixture', F / 2, 'fixture', -0.8),
    a === null || b === null || e === null
      ? NOTHING
      : {
          shapes: [
            isRound
              ? circle('part', [e, view.axis], a)
              : rectangle('part', [e - a, view.axis - b], [e + a, view.axis + b]),
          ],
          marks: [{ at: [e, view.axis], name: 'part', stands: 'on' }],
        },
    R === null ? NOTHING : around('sweep', R, 'what the part sweeps', 0.5),
    { shapes: [line('axis', [-CROSS, view.axis], [CROSS, view.axis])], marks: [] },
  ]);
}

const CROSS = 30;
