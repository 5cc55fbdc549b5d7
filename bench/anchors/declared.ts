import { machine } from '../../src/rules/inputs/machine.ts';
import { part } from '../../src/rules/inputs/part.ts';
import { rotary } from '../../src/rules/inputs/rotary.ts';
import { setting } from '../../src/rules/inputs/setting.ts';
import type { Case, Room } from '../../src/rules/judging/case.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { greatest, least, type Side } from '../../src/rules/judging/side.ts';
import { type Input, rises, type Term, term, type Use } from '../../src/rules/judging/term.ts';
import { ANCHOR_CHECKS } from './checks.ts';

type Uses = Readonly<Record<string, Use>>;
type Values = Readonly<Record<string, number>>;

const OF_PART: readonly Room[] = ['part'];
const OF_BOTH: readonly Room[] = ['part', 'rotary'];

const need = (of: readonly Room[], uses: Uses, formula: (values: Values) => number): Side => {
  const made: readonly Term[] = [term('need', uses, formula)];
  return greatest(of, () => made);
};
const have = (of: readonly Room[], input: (of: Case) => Input): Side =>
  least(of, (each) => [term('have', { it: rises(input(each)) }, (values: Values) => values.it as number)]);

const radius = { r: rises(part.planRadius), e: rises(part.eccentricity) };
const mass = { m: rises(part.mass), fixture: rises(part.fixtureMass) };
const stack = {
  p: rises(rotary.faceOffset),
  f: rises(part.fixtureHeight),
  h: rises(part.height),
};
const n = (values: Values, key: string): number => values[key] as number;
const isAlongX = ({ mounting }: Case): boolean => mounting === 'tilt-along-x';

/** Need and have of the twelve checks, in their order, as the engine has its checks declared. */
const SIDES: readonly (readonly [need: Side, have: Side])[] = [
  [need(OF_PART, radius, (v) => 2 * (n(v, 'r') + n(v, 'e'))), have(['rotary'], () => rotary.swing)],
  [
    need(OF_PART, { r: rises(part.planRadius) }, (v) => 2 * n(v, 'r')),
    have(['rotary'], () => rotary.faceplate),
  ],
  [need(OF_PART, mass, (v) => n(v, 'm') + n(v, 'fixture')), have(['rotary'], () => rotary.payloadLevel)],
  [
    need(OF_PART, { tilt: rises(part.tilt) }, (v) => n(v, 'tilt')),
    have(['rotary'], () => rotary.tiltGreatest),
  ],
  [
    need(
      OF_BOTH,
      { ...mass, ...stack },
      (v) =>
        ((n(v, 'm') + n(v, 'fixture')) * 9.80665 * Math.abs(n(v, 'p') + n(v, 'f') + n(v, 'h') / 2)) / 1000,
    ),
    have(['rotary'], () => rotary.tiltMoment),
  ],
  [
    need(
      OF_PART,
      { ...radius, force: rises(part.cutForce) },
      (v) => (2 * n(v, 'force') * (n(v, 'r') + n(v, 'e'))) / 1000,
    ),
    have(['rotary'], () => rotary.brakeRotary),
  ],
  [
    need(
      OF_BOTH,
      { ...mass, rotary: rises(rotary.mass) },
      (v) => n(v, 'rotary') + n(v, 'm') + n(v, 'fixture'),
    ),
    have(['machine'], () => machine.tableLoad),
  ],
  [
    need(OF_PART, { power: rises(part.cutPower) }, (v) => n(v, 'power') / 0.8),
    have(['machine'], () => machine.power),
  ],
  [
    need(OF_PART, { torque: rises(part.cutTorque) }, (v) => n(v, 'torque')),
    have(['machine'], () => machine.torque),
  ],
  [
    need(OF_PART, radius, (v) => 2 * (n(v, 'r') + n(v, 'e') + 10)),
    have(['machine', 'mounting'], (of) => (isAlongX(of) ? machine.travelX : machine.travelY)),
  ],
  [
    need(OF_BOTH, stack, (v) => 2 * (n(v, 'p') + n(v, 'f') + n(v, 'h') + 10)),
    have(['machine', 'mounting'], (of) => (isAlongX(of) ? machine.travelY : machine.travelX)),
  ],
  [
    need(
      OF_BOTH,
      { ...stack, center: rises(rotary.centerHeight) },
      (v) => n(v, 'center') + n(v, 'p') + n(v, 'f') + n(v, 'h') + 25 + 190,
    ),
    least(['machine', 'additions'], () => [
      term('nose', { nose: rises(machine.noseTop), raised: rises(setting.raised) }, (v) => v.nose + v.raised),
    ]),
  ],
];

/** The twelve checks as declarations of the engine. */
export const DECLARED: readonly Check[] = SIDES.map(([needed, there], at) => ({
  // the engine knows none by name: an id only tells them apart
  id: (ANCHOR_CHECKS[at]?.id ?? '') as Check['id'],
  stage: 'envelope',
  about: 'part',
  unit: '',
  sense: 'at-most',
  applies: () => true,
  comparisons: [{ what: '', need: needed, have: there }],
  formula: '',
  source: 'made up',
  remedies: [],
  examples: [],
}));
