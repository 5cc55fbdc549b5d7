import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, number, say, words } from '../blocks/inline.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { arrangementName, partName } from '../names.ts';
import { axialStack } from './axial-stack.ts';
import { checkTold } from './check-told.ts';
import { drawnText, type Figure, isSame, notKnown } from './figure.ts';
import { plain } from './known-stack.ts';
import { onItsSide } from './on-its-side.ts';
import { HEIGHT_CHECKS, type StackSubject, stackSubject } from './stack-subject.ts';
import { sweepPanel } from './sweep-panel.ts';
import { type TiltStop, tiltPanel } from './tilt-panel.ts';
import { tilted, tiltedView } from './tilted-view.ts';
import { tiltsOf, tipsAt } from './tips-at.ts';

/**
 * The stack from the side, for the family at which a check of heights is tightest: at every tilt at which it is cut and while
 * it tilts; on a single axis across it and along it. Null where it is not known how it stands.
 */
export function elevation(decision: Decision, at: ArrangementAt): Figure | null {
  return tiltingStack(decision, at) ?? axialStack(decision, at);
}

function tiltingStack(decision: Decision, at: ArrangementAt): Figure | null {
  const subject = stackSubject(decision, at, tiltedView);
  if (subject === null) return null;
  const { part, known, rows } = subject;
  const p = plain(rows.table.faceOffset);
  const margin = (plain(decision.inputs.answers.tools.largestCutter) ?? 0) / 2;
  const tilts = tiltsOf(part);
  const stops = tilts.map(
    (tilt): TiltStop => ({
      tilt,
      tips: p === null ? null : tipsAt(part, known, p, margin, tilt),
      title: titleOf(subject, tilt),
    }),
  );
  const high = stopOf(stops, (stop) => highNeed(subject, stop), subject.checks['reach-high']?.result.need);
  const low = stopOf(stops, (stop) => lowNeed(subject, stop), subject.checks['reach-low']?.result.need);
  const half = halfWidth(subject, tilts);
  const panels = stops.map((stop, index) =>
    tiltPanel(subject, stop, { high: index === high, low: index === low, stack: index === 0 }, half),
  );
  const greatest = tilts.at(-1) ?? 0;
  const all = greatest === 0 ? panels : [...panels, sweepPanel(subject, greatest, half)];
  const said = wordsOf(subject);
  return {
    words: said,
    scene: {
      name: 'stack-from-the-side',
      title: drawnText(say`The stack from the side`, decision),
      description: drawnText(said, decision),
      panels: subject.view.laidOver ? all.map(onItsSide) : all,
      toScale: true,
      notDrawn: notDrawn(subject),
    },
  };
}

/** Heights of the nose that a tilt asks for, above the tilt axis. */
function highNeed({ decision }: StackSubject, { tips }: TiltStop): number | null {
  const [approach, tool] = [decision.inputs.assume.approach, plain(decision.inputs.answers.tools.longest)];
  return tips === null || tool === null ? null : tips.w[1] + approach + tool;
}

function lowNeed({ decision }: StackSubject, { tips }: TiltStop): number | null {
  const tool = plain(decision.inputs.answers.tools.shortest);
  return tips === null || tool === null ? null : tips.w[0] + tool;
}

/** The tilt that a check speaks of: where the drawn nose stands as high as its need says; else the last. */
function stopOf(stops: readonly TiltStop[], drawn: (stop: TiltStop) => number | null, need: unknown): number {
  const found = stops.findIndex((stop) => {
    const height = drawn(stop);
    return height !== null && typeof need === 'number' && isSame(height, need);
  });
  return found < 0 ? stops.length - 1 : found;
}

const BESIDE = 40;

/** How far to each side measures and limits stand: beyond all that tilts. */
function halfWidth({ view, rows, known }: StackSubject, tilts: readonly number[]): number {
  const p = plain(rows.table.faceOffset) ?? 0;
  const top = p + (known.fixtureHeight ?? 0) + (known.height ?? 0);
  const sides = [
    known.radius ?? 0,
    (known.fixtureDiameter ?? 0) / 2,
    (plain(rows.table.faceplate ?? undefined) ?? 0) / 2,
  ];
  const widest = Math.max(...sides);
  const reach = [p, top].flatMap((w) =>
    [widest, -widest].flatMap((v) => tilts.map((tilt) => Math.abs(tilted(view, v, w, tilt)[0]))),
  );
  return Math.max(...reach, Math.hypot(widest, top)) + BESIDE;
}

/** The greatest tilt is a number of the verdict, where it is neither level nor square. */
function titleOf({ at, part, view }: StackSubject, tilt: number): readonly Inline[] {
  if (tilt === 0) return view.laidOver ? say`As it is clamped` : say`Level, as it is clamped`;
  if (tilt === 90) return view.laidOver ? say`Tilted square` : say`On its side, tilted square`;
  const check = at.arrangement.checks.findIndex(
    (each) => each.check === 'tilt-range' && each.part === part.name,
  );
  const greatest = at.arrangement.checks[check]?.need;
  if (greatest !== tilt) return say`Tilted as one of its slants asks`;
  return say`Tilted by ${number([...at.path, 'checks', check, 'need'], '°')}, the most it asks for`;
}

function wordsOf({ decision, at, part, view, checks }: StackSubject): readonly Inline[] {
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const first = Object.values(checks)[0];
  const family =
    first === undefined ? words('the work') : partName(decision, part.name, [...first.path, 'part']);
  const told = HEIGHT_CHECKS.flatMap((check) => checks[check] ?? []).map(checkTold);
  const counted = words(
    view.laidOver ? 'From the tilt axis toward the spindle' : 'Heights above the tilt axis',
  );
  return say`${name}, carrying ${family}, seen ${words(view.seenFrom)}, to scale. ${counted}: ${joined(told)}.`;
}

/** What a reader might miss. */
function notDrawn({ decision, rows, known }: StackSubject): readonly string[] {
  const unknown = [
    ...(plain(rows.table.faceOffset) === null ? ['how high the faceplate stands'] : []),
    ...(rows.rotary !== null && rows.rotary.housing === null ? ['the housing beside the work'] : []),
    ...(known.radius === null || known.height === null ? ['the part'] : []),
    ...(known.fixtureHeight === null ? ['the fixture'] : []),
  ];
  const body =
    rows.rotary === null ? 'The body of the table is' : 'The body of the rotary below the faceplate is';
  return [
    ...notKnown(unknown),
    drawnText(say`${words(body)} not drawn: no catalog gives its outline.`, decision),
  ];
}
