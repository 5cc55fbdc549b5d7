import { machine } from '../../inputs/machine.ts';
import { meansInput } from '../../inputs/means.ts';
import { rotary } from '../../inputs/rotary.ts';
import { setting } from '../../inputs/setting.ts';
import { site } from '../../inputs/site.ts';
import type { Case } from '../../judging/case.ts';
import type { Meets } from '../../judging/check.ts';
import { atMost } from '../../judging/compare.ts';
import { evaluateTerm } from '../../judging/side.ts';
import { rises, type Term, term } from '../../judging/term.ts';
import { capabilityOf, liftedMass } from './capability.ts';

/** How high the hook has to come with a hoist's sling: over the table, and over the sill of the door. */
export function hookNeeds(index: number): readonly Term[] {
  const load = {
    rotary: rises(rotary.height),
    plates: rises(setting.plateThickness),
    sling: rises(meansInput(index, 'hoist', 'slingHeight', 'mm', [0, 2000])),
  };
  const over = (below: number, of: { rotary: number; plates: number; sling: number }): number =>
    below + of.rotary + of.plates + of.sling;
  return [
    term('over the table', { ...load, table: rises(machine.tableHeight) }, (of) => over(of.table, of)),
    term('over the door sill', { ...load, sill: rises(site.doorSill) }, (of) => over(of.sill, of)),
  ];
}

export const hookThere = (index: number): Term =>
  term(
    'hook',
    { hook: rises(meansInput(index, 'hoist', 'hookHeight', 'mm', [1500, 9000])) },
    (of) => of.hook,
  );

/** The hoist that counts: of those that may carry the rotary the one with most room under its hook and sling. */
export function hoistThatCounts(of: Case): number | null {
  const mass = evaluateTerm(liftedMass, of);
  let best: { readonly index: number; readonly room: number } | null = null;
  for (const [index, means] of (of.shop.site.lifting ?? []).entries()) {
    if (means.by !== 'hoist' || !atMost(mass.low, evaluateTerm(capabilityOf(of, index), of).high)) continue;
    const room = means.hookHeight.high - means.slingHeight.low;
    if (best === null || room > best.room) best = { index, room };
  }
  return best?.index ?? null;
}

/** The hook counts only where nothing else lifts the rotary. */
export function hangsOnTheHook(of: Case): Meets {
  const mass = evaluateTerm(liftedMass, of);
  let is: Meets['is'] = 'yes';
  const on: Meets['on'][number][] = [];
  for (const [index, means] of (of.shop.site.lifting ?? []).entries()) {
    if (means.by === 'hoist') continue;
    const able = evaluateTerm(capabilityOf(of, index), of);
    if (atMost(mass.high, able.low)) return { is: 'no', on: [] };
    if (!atMost(mass.low, able.high)) continue;
    is = 'perhaps';
    on.push(...Object.values(able.values), ...Object.values(mass.values));
  }
  return { is, on };
}
