import { COUPLINGS, type Coupling } from '../mechanics/lifting/coupling-multiplier.ts';
import type { Swap } from './answers.ts';

/** The numbers that have no source: shown wherever they are used, and changeable in `assume`. */
export interface Assumption {
  readonly value: number;
  readonly unit: string;
  readonly means: string;
  /** the values that make sense; outside them an override is refused */
  readonly range: readonly [low: number, high: number];
}

const assumption = (
  value: number,
  unit: string,
  range: readonly [number, number],
  means: string,
): Assumption => ({
  value,
  unit,
  means,
  range,
});

export const ASSUMPTIONS = {
  brakeSafety: assumption(
    2,
    '',
    [1, 10],
    'cutting torque is multiplied by this before it is held against a brake',
  ),
  brakeSafetyInterrupted: assumption(2.5, '', [1, 10], 'the same for interrupted cuts'),
  approach: assumption(25, 'mm', [0, 500], 'clearance between tool and work on the way in'),
  clearGap: assumption(10, 'mm', [0, 200], 'gap kept between things that pass each other'),
  swingGap: assumption(5, 'mm', [0, 200], 'gap kept between a part on a level axis and the table'),
  connectorRoom: assumption(
    150,
    'mm',
    [0, 1000],
    'room for plugs and hoses behind the housing of a rotary, or behind its base where no housing is drawn',
  ),
  spindleEfficiency: assumption(0.8, '', [0.3, 1], 'share of the spindle power that arrives at the tool'),
  centerErrorHand: assumption(0.02, 'mm', [0, 1], 'error of a rotation center found by hand'),
  centerErrorProbed: assumption(0.008, 'mm', [0, 1], 'error of a rotation center found with a spindle probe'),
  toleranceShare: assumption(0.5, '', [0.05, 1], 'share of a tolerance that the machine may use up'),
  kneeShare: assumption(
    0.05,
    '',
    [0, 1],
    'a further family that adds less than this share does not set the size',
  ),
  leastCoverage: assumption(
    0.5,
    '',
    [0, 1],
    'least share of the five-axis hours that an arrangement must cover',
  ),
  band: assumption(0.05, '', [0, 1], 'arrangements within this share of the best count as level'),
  viseGap: assumption(40, 'mm', [0, 500], 'gap between vises'),
  placeGap: assumption(25, 'mm', [0, 500], 'gap between the rotary and the first vise'),
  bedOverhang: assumption(70, 'mm', [0, 500], 'how far vise beds may stand over the edge of a faceplate'),
  viseWidth: assumption(152, 'mm', [50, 500], 'width of a vise where the shop named none'),
  viseLength: assumption(450, 'mm', [50, 1500], 'length of a vise bed where the shop named none'),
  tableOverhang: assumption(
    0,
    'mm',
    [0, 500],
    'how far the base of a rotary may stand over the edge of the table',
  ),
  bearingShare: assumption(
    0.5,
    '',
    [0, 1],
    'least share of the base that stands on the table where it overhangs',
  ),
  slotMisfit: assumption(0.5, 'mm', [0, 5], 'how far bolt holes and slots may be off and still go together'),
  tailstockRatio: assumption(2.5, '', [0.5, 20], 'longest overhang in diameters without a tailstock'),
  longestTool: assumption(300, 'mm', [50, 1000], 'longest gauge length that can ordinarily be bought'),
  plateThickness: assumption(30, 'mm', [5, 200], 'thickness of an adapter plate'),
  platePrice: assumption(
    900,
    'money',
    [0, 100000],
    'price of a plate under the rotary where the shop named none',
  ),
  riserStep: assumption(5, 'mm', [1, 100], 'risers come in steps of this'),
  oversize: assumption(
    2,
    '',
    [1, 10],
    'a smallest rotary that turns more than so many times the circle that the work needs is large for it',
  ),
  spreadWide: assumption(
    2.5,
    '',
    [1, 20],
    'sizes lie far apart where nine tenths of the hours need so many times the swing of the smallest tenth',
  ),
  threeAxisOften: assumption(0.3, '', [0, 1], 'three-axis work is frequent from this share of the work on'),
  toolsPerSetup: assumption(6, '', [0, 60], 'tools that are measured anew at each setup'),
  deepHole: assumption(
    8,
    '',
    [1, 50],
    'holes deeper than so many diameters want coolant through the spindle',
  ),
  chipLiters: assumption(
    2,
    'l/h',
    [0, 100],
    'metal cut to chips in an hour, from which on they want a conveyor',
  ),
  weeks: assumption(48, '', [1, 53], 'working weeks in a year'),
  ceilingRoom: assumption(300, 'mm', [0, 3000], 'room above a machine'),
  doorSide: assumption(100, 'mm', [0, 2000], 'room beside a machine in a doorway'),
  doorSkates: assumption(120, 'mm', [0, 1000], 'height of the skates under a machine'),
  voltageShare: assumption(
    0.1,
    '',
    [0, 0.5],
    'how far the supply may be off the voltage of a machine, as a share of it',
  ),
  transformerPrice: assumption(90, 'money', [0, 10000], 'price of a transformer for each kVA of the machine'),
  phaseConverterPrice: assumption(
    260,
    'money',
    [0, 10000],
    'price of a phase converter for each kVA of the machine',
  ),
  offsetMinutes: assumption(15, 'min', [0, 480], 'time a rotating work offset saves at each setup'),
  probeMinutes: assumption(12, 'min', [0, 480], 'time a spindle probe saves at each setup'),
  setterMinutes: assumption(2, 'min', [0, 480], 'time a tool setter saves at each tool change-over'),
} as const satisfies Record<string, Assumption>;

/** Assumptions that belong together: `swapMinutes: { keyed: 45 }` in the answers file. */
export const ASSUMPTION_GROUPS = {
  swapMinutes: {
    'zero-point': assumption(25, 'min', [0, 960], 'time to swap a rotary on a zero-point base'),
    keyed: assumption(60, 'min', [0, 960], 'time to swap a keyed rotary'),
    trammed: assumption(120, 'min', [0, 960], 'time to swap a rotary that has to be trammed in'),
  },
  handLift: {
    reach: assumption(400, 'mm', [0, 1000], 'from the body to the hands while lifting by hand'),
    from: assumption(750, 'mm', [0, 2000], 'height of the hands where a lift by hand begins'),
    lift: assumption(250, 'mm', [0, 2000], 'height of a lift by hand'),
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Assumption>>>>;

/** How well the hands hold what is lifted; the only assumption that is no number. */
export const ASSUMED_COUPLING = {
  value: 'fair',
  words: COUPLINGS,
  means: 'how well the hands hold a rotary that is lifted by hand',
} as const;

export type AssumptionName = keyof typeof ASSUMPTIONS;
export type AssumptionGroup = keyof typeof ASSUMPTION_GROUPS;

interface Groups {
  readonly swapMinutes: Readonly<Record<Swap, number>>;
  readonly handLift: Readonly<Record<keyof (typeof ASSUMPTION_GROUPS)['handLift'], number>> & {
    readonly coupling: Coupling;
  };
}
type GroupOverrides = { readonly [Group in keyof Groups]?: Partial<Groups[Group]> };

export type AssumptionOverrides = Readonly<Partial<Record<AssumptionName, number>>> & GroupOverrides;
export type Assumed = Readonly<Record<AssumptionName, number>> & Groups;

/** Every assumption with the user's overrides put in. Example: assumed({ approach: 30 }).approach → 30. */
export function assumed({ swapMinutes, handLift, ...overrides }: AssumptionOverrides): Assumed {
  return {
    ...usual(ASSUMPTIONS),
    ...overrides,
    swapMinutes: { ...usual(ASSUMPTION_GROUPS.swapMinutes), ...swapMinutes },
    handLift: { ...usual(ASSUMPTION_GROUPS.handLift), coupling: ASSUMED_COUPLING.value, ...handLift },
  };
}

const usual = <Name extends string>(of: Readonly<Record<Name, Assumption>>): Record<Name, number> =>
  Object.fromEntries(Object.entries<Assumption>(of).map(([name, { value }]) => [name, value])) as Record<
    Name,
    number
  >;
