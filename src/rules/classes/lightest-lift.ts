import type { RotaryCase } from '../judging/case.ts';
import { derived, type Value } from '../judging/value.ts';
import { askedAtLeast } from './capacity.ts';
import type { ClassGround } from './ground.ts';
import { SWING } from './rules/swing.ts';

/** A rotary of the class held against what the shop lifts it with. */
export interface LightestLift {
  /** kg; no upper end where it is not sure that a rotary of the class turns enough */
  readonly mass: Value;
  /** what the best means of the shop lifts of that rotary, kg: as the check of the lift found it */
  readonly able: Value;
}

interface Lift {
  readonly table: RotaryCase;
  readonly able: Value;
}

const enough = askedAtLeast(SWING);

/**
 * Of the rotaries that turn what has to be turned at least, the one that is lifted most easily: by how much its mass
 * lies under what the best means lifts of it. Null: none turns enough, or nothing has to be turned.
 */
export function lightestLift(of: ClassGround): LightestLift | null {
  const need = enough(of)?.value;
  if (need === undefined) return null;
  const lifts = of.tables.flatMap((table) => liftOf(of, table));
  const surely = easiest(lifts.filter(({ table: { swing } }) => swing.low >= need.high - 1e-9));
  if (surely !== null && surely.able.low >= surely.table.mass.high) {
    return { mass: surely.table.mass, able: surely.able };
  }
  const perhaps = easiest(lifts.filter(({ table: { swing } }) => swing.high >= need.low - 1e-9));
  if (perhaps === null) return null;
  const { mass } = perhaps.table;
  const high = surely === null ? Number.POSITIVE_INFINITY : mass.high;
  return { mass: derived({ low: mass.low, high }, mass.path, [need, mass]), able: perhaps.able };
}

/** What its check found: any arrangement with the rotary will do, since only the rotary and the means count. */
function liftOf({ judged }: ClassGround, table: RotaryCase): readonly Lift[] {
  for (const { setUp, own } of judged) {
    if (setUp.candidate.rotary !== table) continue;
    const lift = own.find(({ check }) => check.id === 'lift');
    if (lift === undefined) continue;
    const { have, hangsOn } = lift;
    return [{ table, able: derived(have, 'lifting capacity', hangsOn) }];
  }
  return [];
}

const ease = ({ table, able }: Lift): number => able.low - table.mass.high;

function easiest(lifts: readonly Lift[]): Lift | null {
  const [first, ...rest] = lifts;
  if (first === undefined) return null;
  return rest.reduce((best, each) => (ease(each) > ease(best) ? each : best), first);
}
