import type { CheckId } from '../rules/checks/ids.ts';
import type { Decision } from '../rules/decision.ts';
import type { Session } from './session.ts';
import type { World } from './world.ts';

/** How the field of arrangements stands after an answer, and what the answer did to it. */
export interface Live {
  readonly left: number;
  readonly total: number;
  /** null: nothing was judged before this answer */
  readonly leftBefore: number | null;
  /** the check that drops most more than before, and how many more; null where none does */
  readonly dropped: { readonly check: CheckId; readonly count: number } | null;
  /** the arrangement that is recommended as things stand, if that is another one than before */
  readonly newLeader: Leader | null;
  /** nothing is left: what comes nearest, and what drops it */
  readonly nearest: (Leader & { readonly check: CheckId }) | null;
  /** unknown answers that can still decide, now and before */
  readonly deciding: number;
  readonly decidingBefore: number | null;
}

/** An arrangement by the names in the catalog; without a rotary where the table is built in. */
interface Leader {
  readonly machine: string;
  readonly rotary: string | null;
}

/**
 * How the field changed with the last answer; null where the last event was none, or nothing is judged yet. Apart
 * from the screen, since it takes deciding: a shell shows the answer first.
 */
export function liveOf({ kept, note }: Session, world: World): Live | null {
  if (note?.kind !== 'accepted') return null;
  const after = world.liveDecision(kept);
  return after === null ? null : liveChange(world.liveDecision(note.before), after);
}

/** What one answer did: two decisions held against each other. `before` is null where nothing was judged yet. */
function liveChange(before: Decision | null, after: Decision): Live {
  return {
    left: leftOf(after),
    total: after.count,
    leftBefore: before === null ? null : leftOf(before),
    dropped: mostDropped(before, after),
    newLeader: after.recommended === before?.recommended ? null : namesOf(after, after.recommended),
    nearest: leftOf(after) > 0 ? null : nearestOf(after),
    deciding: decidingIn(after),
    decidingBefore: before === null ? null : decidingIn(before),
  };
}

/** Arrangements that no stage has dropped. */
const leftOf = (decision: Decision): number => decision.stages.at(-1)?.after ?? decision.count;

function nearestOf(decision: Decision): Live['nearest'] {
  const [nearest] = decision.nearestMisses;
  const names = namesOf(decision, nearest ?? null);
  const dropped = decision.arrangements.find(({ id }) => id === nearest)?.dropped ?? null;
  return names === null || dropped === null ? null : { ...names, check: dropped.check };
}

function namesOf({ arrangements, inputs }: Decision, wanted: string | null): Leader | null {
  const found = arrangements.find(({ id }) => id === wanted);
  if (found === undefined) return null;
  const named = (rows: readonly { readonly id: string; readonly name: string }[], id: string) =>
    rows.find((row) => row.id === id)?.name ?? id;
  return {
    machine: named(inputs.catalog.machines, found.machine),
    rotary: found.rotary === null ? null : named(inputs.catalog.rotaries, found.rotary),
  };
}

const decidingIn = (decision: Decision): number =>
  decision.unknowns.filter((unknown) => unknown.decides).length;

function mostDropped(before: Decision | null, after: Decision): Live['dropped'] {
  let most: Live['dropped'] = null;
  const earlier = droppedBy(before);
  for (const [check, count] of droppedBy(after)) {
    const more = count - (earlier.get(check) ?? 0);
    if (more > (most?.count ?? 0)) most = { check, count: more };
  }
  return most;
}

function droppedBy(decision: Decision | null): Map<CheckId, number> {
  const counts = new Map<CheckId, number>();
  for (const stage of decision?.stages ?? []) {
    for (const [check, count] of Object.entries(stage.dropped) as [CheckId, number][]) {
      counts.set(check, (counts.get(check) ?? 0) + count);
    }
  }
  return counts;
}
