import type { Catalog } from '../../catalog/catalog.ts';
import { isUnder, type Stand, standsIn, standsOn } from '../arranging/candidates.ts';
import type { Family } from '../arranging/family.ts';
import { CHECKS } from '../checks/index.ts';
import { machineCase } from '../facts/machine-facts.ts';
import type { MachineCase, RotaryCase, ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { bitsOf, type FamilyBits } from './family-bits.ts';
import { flatsOf } from './flats.ts';
import { type HalfTable, halfTables } from './half-tables.ts';
import type { Half } from './open-ground.ts';
import { type Haves, type PairCheck, pairsInWork } from './pair-tables.ts';
import { standTables } from './stand-tables.ts';

/** Kinds of stands that a machine is judged with apart: what their checks ask of a machine may differ. */
export const STAND_KINDS = [
  { axes: 1, gravity: 'tool' },
  { axes: 2, gravity: 'tool' },
  { axes: 1, gravity: 'along' },
] as const satisfies readonly Pick<RotaryCase, 'axes' | 'gravity'>[];

export const kindOf = ({ rotary }: Stand): number =>
  STAND_KINDS.findIndex(({ axes, gravity }) => axes === rotary.axes && gravity === rotary.gravity);

/** Everything that is worked out once for a market: what each check says of stands, of machines, and its ranked needs. */
export interface Tables {
  readonly bits: FamilyBits;
  readonly shop: ShopCase;
  /** machines with a table of their own to put a rotary on */
  readonly machines: readonly MachineCase[];
  readonly stands: readonly Stand[];
  /** rows: stands */
  readonly onStands: readonly HalfTable[];
  /** by stand: the stage at which it fails on any machine; of the checks of later stages nothing is known there */
  readonly lastStage: Uint8Array;
  /** rows: machine × kinds of stands + kind */
  readonly onMachines: readonly HalfTable[];
  readonly pairs: readonly PairCheck[];
  readonly haves: Haves;
}

/** What the checks say is found from their declarations; none is named here. */
export function tablesOf(
  catalog: Pick<Catalog, 'machines' | 'rotaries'>,
  families: readonly Family[],
  shop: ShopCase,
  checks: readonly Check[] = CHECKS,
): Tables {
  const bits = bitsOf(families);
  const flats = flatsOf(families, shop);
  const machines = catalog.machines
    .filter(({ builtIn, kind }) => builtIn === null && kind !== 'five-axis')
    .map(machineCase);
  const stands = standsIn(catalog).filter((stand) => machines.some((machine) => standsOn(stand, machine)));
  const onMachines = halfTables(
    machines.flatMap((machine) =>
      STAND_KINDS.map((kind) => (isUnder(kind, machine) ? machineHalf(machine, kind, shop) : null)),
    ),
    checks,
    flats,
    bits,
  );
  const left = without(checks, onMachines);
  const haves: Haves = { sides: [] };
  const inWork = pairsInWork(left, flats, bits, haves);
  const { onStands, lastStage } = standTables(
    stands.map((stand) => standHalf(stand, shop)),
    left,
    flats,
    bits,
    shop,
    inWork.fill,
  );
  const pairs = inWork.pairs().filter(({ check }) => !onStands.some((each) => each.check === check));
  return { bits, shop, machines, stands, onStands, lastStage, onMachines, pairs, haves };
}

const without = (checks: readonly Check[], made: readonly { readonly check: Check }[]): readonly Check[] =>
  checks.filter((check) => !made.some((each) => each.check === check));

/** The machine and the stand of these numbers. Throws where there is none such. */
export function pairAt(
  { machines, stands }: Pick<Tables, 'machines' | 'stands'>,
  of: { readonly machine: number; readonly stand: number },
): { readonly machine: MachineCase; readonly stand: Stand } {
  const [machine, stand] = [machines[of.machine], stands[of.stand]];
  if (machine === undefined || stand === undefined) throw new Error('no such pair');
  return { machine, stand };
}

const standHalf = (stand: Stand, shop: ShopCase): Half => ({
  shop,
  stand,
  standKind: stand.rotary,
  machine: 'barred',
  horizontal: stand.rotary.gravity !== 'tool',
  turned: 'barred',
});

export const machineHalf = (machine: MachineCase, standKind: Half['standKind'], shop: ShopCase): Half => ({
  shop,
  stand: 'barred',
  standKind,
  machine,
  horizontal: machine.row.spindle === 'horizontal',
  turned: 'barred',
});
