import { anyAdditions, anyPlateMass, anyThickness } from '../arranging/any-stack.ts';
import type { Stand } from '../arranging/candidates.ts';
import type { Case, MachineCase, PartCase, PlaceCase, RotaryCase, ShopCase } from '../judging/case.ts';
import { freshMemo, idOf, type Keys, type Memo } from '../judging/memo.ts';
import type { Value } from '../judging/value.ts';
import { barred, refuse } from './barred.ts';

/** What a check may be asked about without the other half: `barred` halves may not be read. */
export interface Half {
  readonly shop: ShopCase;
  readonly stand: Stand | 'barred';
  /** where the stand is barred, what of it is known all the same */
  readonly standKind: Pick<RotaryCase, 'axes' | 'gravity'>;
  readonly machine: MachineCase | 'barred';
  readonly horizontal: boolean;
  /** which way round it stands; barred: no check may ask */
  readonly turned: boolean | 'barred';
}

/**
 * A machine, a stand or both of them, in all settings at once: additions and plates are ranges from none to all that there
 * is, and the place on the table may not be read. What fails here fails in every setting.
 */
export function openGround(half: Half): Case {
  const { shop, stand, machine, turned } = half;
  const hasStand = stand !== 'barred';
  const hasMachine = machine !== 'barred';
  let memo: Memo | null = null;
  return {
    keys: keysOf(hasStand, hasMachine, turned),
    get memo() {
      memo ??= freshMemo();
      return memo;
    },
    shop,
    machine: hasMachine ? machine : machineOfKind(half),
    rotary: hasStand ? stand.rotary : barred<RotaryCase>({ ...half.standKind }),
    get mounting() {
      return hasStand ? stand.mounting : refuse();
    },
    part: null,
    orientation: [],
    withParts: new Map(),
    ...(hasMachine ? anyAdditions(machine) : { raised: barred<Value>(), heightened: barred<Value>() }),
    plateThickness: anyThickness(shop),
    plateMass: hasStand ? anyPlateMass(stand, shop) : barred<Value>(),
    place: barred<PlaceCase>(turned === 'barred' ? {} : { turned }),
    price: barred<Value>(),
    swaps: barred<Value>(),
  };
}

const KEPT = 0;
const NOT_KEPT = Number.NaN;

function keysOf(hasStand: boolean, hasMachine: boolean, turned: Half['turned']): Keys {
  const onStand = hasStand ? KEPT : NOT_KEPT;
  const onMachine = hasMachine ? KEPT : NOT_KEPT;
  return {
    part: KEPT,
    rotary: onStand,
    mounting: onStand,
    machine: onMachine,
    additions: onMachine,
    plates: onStand,
    turn: turned === 'barred' ? NOT_KEPT : Number(turned),
    place: NOT_KEPT,
    price: NOT_KEPT,
    swaps: NOT_KEPT,
  };
}

/** Of a machine that may not be read, this is known all the same: how its spindle lies goes with how the rotary lies. */
const machineOfKind = ({ horizontal }: Half): MachineCase =>
  barred<MachineCase>({
    builtIn: false,
    row: barred<MachineCase['row']>({ spindle: horizontal ? 'horizontal' : 'vertical', builtIn: null }),
  });

/** The same with a part on it, made once. What may not be read of the ground may not be read of this either. */
export function openWithPart(ground: Case, part: PartCase): Case {
  const known = ground.withParts.get(part);
  if (known !== undefined) return known;
  const keys = { ...ground.keys, part: idOf(ground.memo, 'part', part.key) };
  const made = Object.create(ground, { part: { value: part }, keys: { value: keys } }) as Case;
  ground.withParts.set(part, made);
  return made;
}
