import { distanceFromAxis } from '../../mechanics/geometry/distance.ts';
import {
  greatestHeight,
  greatestReach,
  leastHeight,
  leastReach,
} from '../../mechanics/geometry/swept-extremes.ts';
import { part } from '../inputs/part.ts';
import { rotary } from '../inputs/rotary.ts';
import type { Case } from '../judging/case.ts';
import { falls, rises, type Term, term } from '../judging/term.ts';
import { type ProfilePoint, wholeProfile, workProfile } from './profile-points.ts';
import { radiusRises, sweptRadius } from './stack.ts';

/** What the outline of the work sweeps when it tilts and turns, as terms: one or two for each of its points. */

const wider = { tilt: rises(part.tilt) };
const narrower = { tilt: falls(part.tilt) };
const upToLevel = (tilt: number): number => Math.min(tilt, 90);

/** Distance from the tilt axis; a point below the axis is farther the lower it is, hence two terms. */
const distances = (point: ProfilePoint): readonly Term[] => [
  term(point.name, { ...point.v.rises, ...point.w.rises }, (of) =>
    distanceFromAxis(point.v.of(of), Math.max(0, point.w.of(of))),
  ),
  term(`${point.name}, below the axis`, { ...point.v.rises, ...point.w.falls }, (of) =>
    distanceFromAxis(point.v.of(of), Math.max(0, -point.w.of(of))),
  ),
];

export const workDistances = (): readonly Term[] => workProfile().flatMap(distances);
export const wholeDistances = (of: Case): readonly Term[] => wholeProfile(of).flatMap(distances);

/** Greatest height over every tilt up to the part's own. */
export const sweptHeights = (of: Case): readonly Term[] =>
  wholeProfile(of).flatMap((point) => [
    term(point.name, { ...point.v.rises, ...point.w.rises, ...wider }, (values) =>
      greatestHeight(point.v.of(values), point.w.of(values), 0, upToLevel(values.tilt)),
    ),
    term(`${point.name}, beyond level`, { ...point.v.rises, ...point.w.falls, ...wider }, (values) =>
      values.tilt > 90
        ? greatestHeight(point.v.of(values), point.w.of(values), 90, values.tilt)
        : Number.NEGATIVE_INFINITY,
    ),
  ]);

/** Least height over every tilt: the far side goes down. */
export const sweptDepths = (of: Case): readonly Term[] =>
  wholeProfile(of).flatMap((point) => [
    term(point.name, { ...point.v.falls, ...point.w.rises, ...narrower }, (values) =>
      leastHeight(-point.v.of(values), point.w.of(values), 0, upToLevel(values.tilt)),
    ),
    term(`${point.name}, beyond level`, { ...point.v.falls, ...point.w.falls, ...narrower }, (values) =>
      values.tilt > 90
        ? leastHeight(-point.v.of(values), point.w.of(values), 90, values.tilt)
        : Number.POSITIVE_INFINITY,
    ),
  ]);

/** How far the outline comes out on the side away from the lean. */
export const sweptAway = (of: Case): readonly Term[] =>
  wholeProfile(of).flatMap((point) => [
    term(point.name, { ...point.v.rises, ...point.w.falls, ...wider }, (values) =>
      greatestReach(point.v.of(values), point.w.of(values), 0, upToLevel(values.tilt)),
    ),
    term(`${point.name}, beyond level`, { ...point.v.rises, ...point.w.falls, ...wider }, (values) =>
      values.tilt > 90
        ? greatestReach(-point.v.of(values), point.w.of(values), 90, values.tilt)
        : Number.NEGATIVE_INFINITY,
    ),
  ]);

/** How far the outline comes out on the side of the lean. */
export const sweptToward = (of: Case): readonly Term[] =>
  wholeProfile(of).flatMap((point) => [
    term(
      point.name,
      { ...point.v.rises, ...point.w.rises, ...wider },
      (values) => -leastReach(-point.v.of(values), point.w.of(values), 0, upToLevel(values.tilt)),
    ),
    term(`${point.name}, beyond level`, { ...point.v.rises, ...point.w.rises, ...wider }, (values) =>
      values.tilt > 90
        ? -leastReach(point.v.of(values), point.w.of(values), 90, values.tilt)
        : Number.NEGATIVE_INFINITY,
    ),
  ]);

/** Radius about the rotary axis: the part, its fixture and the faceplate. */
export const turningRadii = (of: Case): readonly Term[] => [
  term('the part', radiusRises, sweptRadius),
  term('the fixture', { F: rises(part.fixtureDiameter) }, (values) => values.F / 2),
  ...(of.rotary.hasFaceplate
    ? [term('the faceplate', { P: rises(rotary.faceplate) }, (values) => values.P / 2)]
    : []),
];
