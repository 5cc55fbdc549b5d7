import type { RouteId } from '../../decision-classes.ts';
import type { Judged } from '../../weighing/judged.ts';
import type { ClassGround } from '../ground.ts';
import { ONE_AXIS } from '../rule.ts';

/** What the rules of the route read: the mix, the shop, and the arrangements of one route. */
export interface RouteGround extends Omit<ClassGround, 'class'> {
  readonly route: RouteId;
  /** the arrangements of every route */
  readonly all: readonly Judged[];
}

/** Which arrangements belong to a route. A single axis may stand on any machine, so it is counted there too. */
export function isOnRoute(route: RouteId, { setUp: { candidate } }: Judged, owned: string): boolean {
  const { row, builtIn } = candidate.machine;
  const isOwned = row.id === owned;
  const comesWith = row.rotaryIncluded !== null && row.rotaryIncluded === candidate.rotary.key;
  switch (route) {
    case 'own-mill':
      return isOwned;
    case 'new-mill':
      return !isOwned && !builtIn && !comesWith;
    case 'convertible':
      return !isOwned && comesWith;
    case 'built-in':
      return !isOwned && builtIn;
    case 'single-axis':
      return ONE_AXIS.includes(candidate.rotary.class);
  }
}
