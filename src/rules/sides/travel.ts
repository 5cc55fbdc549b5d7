import { machine } from '../inputs/machine.ts';
import { setting } from '../inputs/setting.ts';
import type { Case } from '../judging/case.ts';
import { greatest, least, type Side, width } from '../judging/side.ts';
import { falls, type Input, negated, rises, term } from '../judging/term.ts';
import { tipEnds } from './extent.ts';

type Axis = 'x' | 'y';

const TRAVEL: Readonly<Record<Axis, Input>> = {
  x: machine.travelX,
  y: machine.travelY,
};
const PLACE: Readonly<Record<Axis, Input>> = {
  x: setting.placeX,
  y: setting.placeY,
};
const REACH: Readonly<Record<Axis, readonly [low: Input, high: Input]>> = {
  x: [machine.reachLeft, machine.reachRight],
  y: [machine.reachFront, machine.reachRear],
};
const ROOMS = ['part', 'rotary', 'mounting', 'turn'] as const;

/** Width of all the tip boxes along one axis of the machine. */
export const tipWidth = (axis: Axis): Side =>
  width(
    ROOMS,
    (of) => tipEnds(of, axis).high,
    (of) => tipEnds(of, axis).low,
  );

const reach = (axis: Axis, end: 'low' | 'high'): Side =>
  greatest(ROOMS, (of) => (end === 'high' ? tipEnds(of, axis).high : tipEnds(of, axis).low.map(negated)));

/** How far the tips go from the rotary center, to the right (rear) or to the left (front). */
export const TIP_REACH = {
  x: { low: reach('x', 'low'), high: reach('x', 'high') },
  y: { low: reach('y', 'low'), high: reach('y', 'high') },
} as const;

/** The whole travel along one axis. */
export const travel = (axis: Axis): Side =>
  least(['machine'], (of) =>
    of.machine.builtIn
      ? [
          term(
            'travel about the built-in table',
            { low: rises(REACH[axis][0]), high: rises(REACH[axis][1]) },
            (values) => values.low + values.high,
          ),
        ]
      : [term('travel', { travel: rises(TRAVEL[axis]) }, (values) => values.travel)],
  );

/** The travel to one side of the rotary center where it stands. */
export const travelBeside = (axis: Axis, end: 'low' | 'high'): Side =>
  least(['machine', 'place'], (of) => [travelBesideTerm(of, axis, end)]);

export function travelBesideTerm(of: Case, axis: Axis, end: 'low' | 'high') {
  const name = `travel ${SIDE_NAMES[axis][end]}`;
  if (of.machine.builtIn) {
    const input = REACH[axis][end === 'low' ? 0 : 1];
    return term(name, { reach: rises(input) }, (values) => values.reach);
  }
  const place = end === 'high' ? falls(PLACE[axis]) : rises(PLACE[axis]);
  return term(name, { travel: rises(TRAVEL[axis]), place }, (values) =>
    end === 'high' ? values.travel / 2 - values.place : values.travel / 2 + values.place,
  );
}

const SIDE_NAMES = {
  x: { low: 'to the left', high: 'to the right' },
  y: { low: 'to the front', high: 'to the rear' },
} as const;
