import type { Problem } from '../documents/problem.ts';
import type { Catalog, Machine, Rotary } from './catalog.ts';
import { ends, known } from './plausible/rule.ts';
import type { CatalogInFiles } from './read.ts';
import { type RowPlace, rowPlaces } from './row-places.ts';
import { isTilting } from './tilting.ts';

type Say = RowPlace['say'];

/** Why a machine cannot carry a rotary, whatever the work: only what is sure by what both rows state. */
interface Obstacle {
  readonly id: string;
  /** on this pair; what is not known stands in no way */
  readonly stands: (rotary: Rotary, machine: Machine) => boolean;
  /** of a rotary that no machine carries for this reason alone, a clause */
  readonly ofRotary: (rotary: Rotary, machines: readonly Machine[], say: Say) => string;
  /** of a machine that carries no rotary for this reason alone */
  readonly ofMachine: (machine: Machine, say: Say) => string;
}

const axesOf = (rotary: Rotary): number => (isTilting(rotary.class) ? 2 : 1);
const drivesOf = ({ axisDrives }: Machine): number => known(axisDrives.fitted) + known(axisDrives.offered);
const raised = ({ clearance }: Machine): number => clearance.reduce((sum, { adds }) => sum + adds, 0);
const highestNose = (machine: Machine): number => ends(machine.noseToTable)[1] + raised(machine);
/** The faceplate, or the axis of a rotary that does not tilt, above the machine table. */
const heightOf = (rotary: Rotary): number =>
  known(rotary.centerHeight) + (isTilting(rotary.class) ? known(rotary.faceOffset) : 0);
const most = (values: readonly number[]): number =>
  Math.max(...values.filter((value) => !Number.isNaN(value)));

/** The obstacles, in the order in which they are looked at. */
const OBSTACLES: readonly Obstacle[] = [
  {
    id: 'mounting',
    stands: ({ hold, class: its }, { spindle, table }) => {
      // on a horizontal mill only a single axis is looked at, upright
      if (spindle === 'horizontal' && isTilting(its)) return true;
      if (hold === 'unknown') return false;
      if (spindle !== 'horizontal') return Object.keys(hold).length === 0;
      const along = table?.slots.along === 'y' ? 'axis-along-x' : 'axis-along-y';
      return hold[along] === undefined;
    },
    ofRotary: () => 'can be held on none of the machines: see hold',
    ofMachine: () => 'can hold none of the rotaries',
  },
  {
    id: 'load',
    stands: ({ mass }, { table }) => known(mass) > known(table?.load),
    ofRotary: ({ mass }, machines, say) =>
      `weighs ${say(known(mass), 'kg')}, and the strongest table carries ${say(most(machines.map(({ table }) => known(table?.load))), 'kg')}`,
    ofMachine: ({ table }, say) =>
      `carries ${say(known(table?.load), 'kg')} on its table, less than any rotary weighs`,
  },
  {
    id: 'height',
    stands: (rotary, machine) => machine.spindle !== 'horizontal' && heightOf(rotary) > highestNose(machine),
    ofRotary: (rotary, machines, say) =>
      `stands ${say(heightOf(rotary), 'mm')} high, above the highest spindle nose, ${say(most(machines.map(highestNose)), 'mm')} with all additions`,
    ofMachine: (machine, say) =>
      `has its spindle nose at ${say(highestNose(machine), 'mm')} at most, lower than any rotary stands`,
  },
  {
    id: 'drives',
    stands: (rotary, machine) => drivesOf(machine) < axesOf(rotary),
    ofRotary: (rotary, machines) =>
      `has ${axesOf(rotary)} axes, and no machine drives more than ${most(machines.map(drivesOf))}`,
    ofMachine: (machine) => `drives ${drivesOf(machine)} rotary axes at most`,
  },
];

/**
 * Rows that no arrangement can use, whatever the work, by what the rows state. Without a machine, or without a rotary, the
 * catalog is a part of one and nothing is said. A machine with a table of its own uses itself.
 */
export function unusableIn(read: CatalogInFiles): readonly Problem[] {
  const { catalog } = read;
  const carriers = catalog.machines.filter(({ kind }) => kind !== 'five-axis');
  if (carriers.length === 0 || catalog.rotaries.length === 0) return [];
  const placeOf = rowPlaces(read);
  const tell = (place: RowPlace, path: readonly string[], found: string, expected: string) =>
    place.problem({ path, found, expected });
  const rotaries = catalog.rotaries.flatMap((rotary) => {
    const met = carriers.map((machine) => obstacleOn(rotary, machine));
    if (met.some((each) => each === null)) return [];
    const place = placeOf('rotaries', rotary.id);
    const words = reasons(met, carriers, (each, machines) => each.ofRotary(rotary, machines, place.say));
    return [tell(place, [], `can be used on no machine of the catalog: it ${words}`, EXPECTED)];
  });
  const machines = carriers.flatMap((machine) => {
    const met = catalog.rotaries.map((rotary) => obstacleOn(rotary, machine));
    if (met.some((each) => each === null)) return [];
    const place = placeOf('machines', machine.id);
    const words = reasons(met, catalog.rotaries, (each) => each.ofMachine(machine, place.say));
    return [tell(place, [], `can use no rotary of the catalog: it ${words}`, EXPECTED)];
  });
  return [...rotaries, ...machines, ...includedIn(catalog, placeOf), ...keysIn(catalog, carriers, placeOf)];
}

const EXPECTED = 'expected a row that something goes with, or one less';

const obstacleOn = (rotary: Rotary, machine: Machine): Obstacle | null =>
  OBSTACLES.find(({ stands }) => stands(rotary, machine)) ?? null;

/** Each obstacle that is met, once, with the rows on which it is the first. */
function reasons<Row>(
  met: readonly (Obstacle | null)[],
  rows: readonly Row[],
  words: (obstacle: Obstacle, on: readonly Row[]) => string,
): string {
  const present = OBSTACLES.filter((each) => met.includes(each));
  return present
    .map((each) => {
      const on = rows.filter((_, at) => met[at] === each);
      return `${words(each, on)}${present.length > 1 ? ` (${on.length} of ${rows.length})` : ''}`;
    })
    .join('; it ');
}

type PlaceOf = ReturnType<typeof rowPlaces>;

/** A rotary that comes with a machine which cannot carry it. */
function includedIn({ machines, rotaries }: Catalog, placeOf: PlaceOf): readonly Problem[] {
  return machines.flatMap((machine) => {
    const rotary = rotaries.find(({ id }) => id === machine.rotaryIncluded);
    const obstacle = rotary === undefined ? null : obstacleOn(rotary, machine);
    if (rotary === undefined || obstacle === null) return [];
    const { problem, say } = placeOf('machines', machine.id);
    const found = `is ${rotary.id}, and with that machine it ${obstacle.ofRotary(rotary, [machine], say)}`;
    return [problem({ path: ['rotaryIncluded'], found, expected: 'expected a rotary that goes with it' })];
  });
}

/** Keys that fit the slots of no machine: an adapter plate is then always needed. */
function keysIn({ rotaries }: Catalog, carriers: readonly Machine[], placeOf: PlaceOf): readonly Problem[] {
  const widths = carriers.map(({ table }) => table?.slots.width ?? 'unknown');
  if (widths.includes('unknown')) return [];
  const slots = [...new Set(widths.map(known))].toSorted((one, other) => one - other);
  return rotaries.flatMap(({ id, hold }) => {
    const keys = hold === 'unknown' ? [] : Object.values(hold).map(({ keyWidth }) => keyWidth);
    const width = known(keys[0]);
    const fits = (key: (typeof keys)[number]) =>
      key === 'unknown' || slots.some((slot) => Math.abs(slot - key) <= SLOT_MISFIT);
    if (keys.length === 0 || keys.some(fits)) return [];
    const { problem, say } = placeOf('rotaries', id);
    const found = `has keys of ${say(width, 'mm')}, and the slots of the machines are ${slots.map((slot) => say(slot, 'mm')).join(', ')} wide`;
    return [
      problem({
        path: ['hold'],
        found,
        expected: 'expected the width of a slot, or an adapter plate each time',
      }),
    ];
  });
}

/** As far as keys may be off their slot, mm: as the decision assumes while nobody says otherwise. */
const SLOT_MISFIT = 0.5;
