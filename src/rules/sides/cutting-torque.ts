import { partInput } from '../inputs/input.ts';
import { part } from '../inputs/part.ts';
import type { Case } from '../judging/case.ts';
import { rises, type Term, term } from '../judging/term.ts';
import { known } from '../judging/value.ts';
import { radiusRises, sweptRadius } from './stack.ts';
import { gravityAboutTiltInput } from './tilt-moment-need.ts';
import { tiltedRadiusInput } from './tilted-radius.ts';

const G = 9.80665;
const sine = (tilt: number): number => Math.sin((Math.min(tilt, 90) * Math.PI) / 180);

const none = known(0, 'no drill');
const drill = {
  thrust: rises(partInput('drill thrust', 'N', [0, 10000], (of) => of.drillThrust ?? none)),
  offset: rises(partInput('offset of the hole', 'mm', [0, 500], (of) => of.drillOffset ?? none)),
};
const weight = {
  m: rises(part.mass),
  off: rises(part.eccentricity),
  tilt: rises(part.tilt),
};

/** How much of the weight can turn the rotary axis: all of it once the axis is level, nothing while it is upright. */
function levelShare({ rotary: { gravity, axes } }: Case): (tilt: number) => number {
  // a level tool: the axis of a two-axis table starts out level, a single axis stands upright
  if (gravity !== 'tool') return () => (axes === 2 ? 1 : 0);
  return axes === 1 ? () => 1 : sine;
}

/** Gravity about the rotary axis, N·m. */
function hanging(of: Case): (values: Readonly<Record<'m' | 'off' | 'tilt', number>>) => number {
  const share = levelShare(of);
  return (values) => (values.m * G * values.off * share(values.tilt)) / 1000;
}

/** What turns the rotary axis while the tool cuts: tangential force at the swept radius, and gravity. */
export function aboutRotaryAxis(
  of: Case,
  force: typeof part.cutForce,
  safety: typeof part.brakeSafety,
): readonly Term[] {
  const gravity = hanging(of);
  return [
    term(
      'milling',
      { k: rises(safety), force: rises(force), ...radiusRises, ...weight },
      (values) => (values.k * values.force * sweptRadius(values)) / 1000 + gravity(values),
    ),
  ];
}

/** A drill's thrust off the axis turns it as far as the axis is level. */
export function drillAboutRotaryAxis(of: Case): readonly Term[] {
  if (of.part?.drillThrust == null) return [];
  const gravity = hanging(of);
  const level = of.rotary.axes === 1 ? () => 1 : sine;
  return [
    term(
      'drilling',
      { k: rises(part.brakeSafety), ...drill, ...weight },
      (values) => (values.k * values.thrust * values.offset * level(values.tilt)) / 1000 + gravity(values),
    ),
  ];
}

/** What turns the tilt axis: tangential force at the farthest point of the work, and gravity. */
export function aboutTiltAxis(force: typeof part.cutForce, safety: typeof part.brakeSafety): readonly Term[] {
  return [
    term(
      'milling',
      {
        k: rises(safety),
        force: rises(force),
        far: rises(tiltedRadiusInput),
        gravity: rises(gravityAboutTiltInput),
      },
      (values) => (values.k * values.force * values.far) / 1000 + values.gravity,
    ),
  ];
}

export function drillAboutTiltAxis(of: Case): readonly Term[] {
  if (of.part?.drillThrust == null) return [];
  return [
    term(
      'drilling',
      {
        k: rises(part.brakeSafety),
        ...drill,
        gravity: rises(gravityAboutTiltInput),
      },
      (values) => (values.k * values.thrust * values.offset) / 1000 + values.gravity,
    ),
  ];
}
