import { ASSUMPTIONS, type AssumptionName } from '../../questions/assumptions.ts';
import type { Input } from '../judging/term.ts';
import { known } from '../judging/value.ts';
import { caseInput, shopInput } from './input.ts';

/** Tools and the rest of the shop. */
export const tools = {
  shortest: shopInput('shortest tool', 'mm', [40, 200], (of) => of.toolShortest),
  longest: shopInput('longest tool', 'mm', [80, 400], (of) => of.toolLongest),
  largestCutter: shopInput('largest cutter', 'mm', [4, 100], (of) => of.largestCutter),
} as const;

export const shop = {
  byHand: shopInput('loaded by hand', '', [0, 1], (of) => of.byHand),
  budget: shopInput('budget', 'money', [0, 1e6], (of) => of.budget),
} as const;

/** How the rotary stands on this machine. */
export const setting = {
  raised: caseInput('raised by clearance additions', 'mm', [0, 500], (of) => of.raised),
  heightened: caseInput('heightened by a column spacer', 'mm', [0, 500], (of) => of.heightened),
  plateThickness: caseInput('plates under the rotary', 'mm', [0, 300], (of) => of.plateThickness),
  plateMass: caseInput('mass of the plates', 'kg', [0, 300], (of) => of.plateMass),
  placeX: caseInput('place along X', 'mm', [-800, 800], (of) => known(of.place.x, 'place.x')),
  placeY: caseInput('place along Y', 'mm', [-400, 400], (of) => known(of.place.y, 'place.y')),
  swaps: caseInput('lifts of the rotary a year', '', [0, 2000], (of) => of.swaps),
  price: caseInput('price of all of it', 'money', [0, 1e6], (of) => of.price),
} as const;

/** The assumptions as inputs: shown by name wherever they are used. */
export const assume = Object.fromEntries(
  (Object.keys(ASSUMPTIONS) as AssumptionName[]).map((name) => [
    name,
    shopInput(name, ASSUMPTIONS[name].unit, ASSUMPTIONS[name].range, (of) =>
      known(of.assume[name], `assume.${name}`),
    ),
  ]),
) as Readonly<Record<AssumptionName, Input>>;
