import { machine } from '../inputs/machine.ts';
import { rotary } from '../inputs/rotary.ts';
import { setting } from '../inputs/setting.ts';
import type { Case } from '../judging/case.ts';
import { greatest, least, type Side, width } from '../judging/side.ts';
import { falls, type Input, negated, rises, type Term, term } from '../judging/term.ts';
import { isUpright, onHorizontal } from './base.ts';
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

/** The whole travel along one axis; along Y of a horizontal mill as far as the spindle is stated to come. */
export const travel = (axis: Axis): Side =>
  least(['machine'], (of) => {
    if (of.machine.builtIn)
      return [
        term(
          'travel about the built-in table',
          { low: rises(REACH[axis][0]), high: rises(REACH[axis][1]) },
          (values) => values.low + values.high,
        ),
      ];
    if (axis === 'y' && onHorizontal(of))
      return [
        term(
          'heights of the spindle',
          { low: falls(machine.spindleBottom), high: rises(machine.spindleTop) },
          (values) => values.high - values.low,
        ),
      ];
    return [term('travel', { travel: rises(TRAVEL[axis]) }, (values) => values.travel)];
  });

/**
 * The travel to one side of the rotary center where it stands. Nothing of it is kept (a place rarely recurs), so the
 * rotary and the plates, which an upright axis reads too, need not be named: they would make the check of the travel
 * one of the stack, to be judged again for every plate under every rotary.
 */
export const travelBeside = (axis: Axis, end: 'low' | 'high'): Side =>
  least(['machine', 'place'], (of) => [travelBesideTerm(of, axis, end)]);

export function travelBesideTerm(of: Case, axis: Axis, end: 'low' | 'high'): Term {
  const name = `travel ${(onHorizontal(of) ? LEVEL_TOOL_NAMES : SIDE_NAMES)[axis][end]}`;
  if (of.machine.builtIn) {
    const input = REACH[axis][end === 'low' ? 0 : 1];
    return term(name, { reach: rises(input) }, (values) => values.reach);
  }
  if (axis === 'y' && isUpright(of)) return heightBeside(end, name);
  const place = end === 'high' ? falls(PLACE[axis]) : rises(PLACE[axis]);
  return term(name, { travel: rises(TRAVEL[axis]), place }, (values) =>
    end === 'high' ? values.travel / 2 - values.place : values.travel / 2 + values.place,
  );
}

/** From the faceplate of an upright axis, which stands on its back and on the plates, up or down. */
function heightBeside(end: 'low' | 'high', name: string): Term {
  const [plate, plates] = [rotary.faceOffset, setting.plateThickness];
  return end === 'high'
    ? term(
        name,
        { spindle: rises(machine.spindleTop), p: falls(plate), plates: falls(plates) },
        (of) => of.spindle - of.p - of.plates,
      )
    : term(
        name,
        { spindle: falls(machine.spindleBottom), p: rises(plate), plates: rises(plates) },
        (of) => of.p + of.plates - of.spindle,
      );
}

const SIDE_NAMES = {
  x: { low: 'to the left', high: 'to the right' },
  y: { low: 'to the front', high: 'to the rear' },
} as const;

const LEVEL_TOOL_NAMES = { x: SIDE_NAMES.x, y: { low: 'down', high: 'up' } } as const;
