import { floorPressure } from '../../../mechanics/building/floor-pressure.ts';
import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const SQUARE_MM_PER_SQUARE_M = 1e6;

/** Nothing known of the footprint: it may be anything. */
const pressure = (mass: number, area: number): number =>
  area > 0 && Number.isFinite(mass) && Number.isFinite(area)
    ? floorPressure(mass, area / SQUARE_MM_PER_SQUARE_M)
    : area === Number.POSITIVE_INFINITY
      ? 0
      : Number.POSITIVE_INFINITY;

const standing = {
  machine: rises(machine.mass),
  fixture: rises(part.fixtureMass),
  m: rises(part.mass),
  width: falls(machine.footprintX),
  depth: falls(machine.footprintY),
};
const added = term(
  'machine, rotary and work over the footprint',
  { ...standing, rotary: rises(rotary.mass) },
  (of) => pressure(of.machine + of.rotary + of.fixture + of.m, of.width * of.depth),
);
const withItsTable = term('machine and work over the footprint', standing, (of) =>
  pressure(of.machine + of.fixture + of.m, of.width * of.depth),
);

export const floorLoad = defineCheck({
  id: 'floor-load',
  stage: 'shop',
  about: 'part',
  unit: 'kPa',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'pressure on the floor',
      need: greatest(['part', 'rotary', 'machine'], (of) => [of.rotary.row === null ? withItsTable : added]),
      have: theInput([], site.floorRating),
    },
  ],
  // few shops know it: it goes to a structural engineer and is held against nothing
  advisory: (of) => of.shop.site.silent.floor,
  formula: '(machine + rotary + fixture + part)·g/(1000·footprint) ≤ rating; feet are point loads',
  source: 'spread evenly; a structural engineer decides about slab and feet',
  remedies: ['ask-an-engineer', 'stronger-floor', 'smaller-machine'],
  examples: [
    {
      what: '3600 + 95 + 4 + 1 kg on 5.04 m², rated 7.5 kPa',
      given: { part: { mass: 1 }, shop: { floorRating: 7.5 } },
      verdict: 'holds',
      need: 7.199327,
      have: 7.5,
    },
    {
      what: 'the same on a floor of 5 kPa',
      given: { part: { mass: 1 }, shop: { floorRating: 5 } },
      verdict: 'fails',
      need: 7.199327,
      have: 5,
    },
    {
      what: 'a floor of which nobody knows the rating',
      given: { shop: { floorRating: 'unknown' } },
      verdict: 'open',
    },
  ],
});
