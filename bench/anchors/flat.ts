import { ANCHOR_CHECKS } from './checks.ts';
import type { Anchor } from './counts.ts';
import type { World } from './world.ts';

/** The plain limit: needs and haves in flat tables, a loop over them, every margin of an arrangement written down. */
export const flatLoop: Anchor = (world) => {
  const margins = new Float64Array(
    ANCHOR_CHECKS.length *
      world.parts.length *
      world.alongX.length *
      world.raised.length *
      world.machines.length,
  );
  return () => {
    const { parts, rotaries } = world;
    const arrangements = world.machines.length * world.alongX.length * world.raised.length;
    let held = 0;
    let passed = 0;
    for (const rotary of rotaries) {
      const needs = needsOf(world, rotary);
      const haves = havesOf(world, rotary);
      let at = 0;
      for (let arrangement = 0; arrangement < arrangements; arrangement += 1) {
        const base = arrangement * ANCHOR_CHECKS.length;
        for (let part = 0; part < parts.length; part += 1) {
          const first = part * ANCHOR_CHECKS.length;
          let holds = 0;
          for (let check = 0; check < ANCHOR_CHECKS.length; check += 1) {
            const margin = (haves[base + check] as number) - (needs[first + check] as number);
            margins[at] = margin;
            at += 1;
            holds += margin >= 0 ? 1 : 0;
          }
          held += holds;
          passed += holds === ANCHOR_CHECKS.length ? 1 : 0;
        }
      }
    }
    return { held, passed };
  };
};

/** By part, then by check. */
function needsOf({ parts }: World, rotary: World['rotaries'][number]): Float64Array {
  const needs = new Float64Array(parts.length * ANCHOR_CHECKS.length);
  let at = 0;
  for (const part of parts)
    for (const { need } of ANCHOR_CHECKS) {
      needs[at] = need(part, rotary);
      at += 1;
    }
  return needs;
}

/** By machine, mounting and additions, then by check. */
function havesOf({ machines, alongX, raised }: World, rotary: World['rotaries'][number]): Float64Array {
  const haves = new Float64Array(machines.length * alongX.length * raised.length * ANCHOR_CHECKS.length);
  let at = 0;
  for (const machine of machines)
    for (const along of alongX)
      for (const raise of raised)
        for (const { have } of ANCHOR_CHECKS) {
          haves[at] = have(rotary, machine, along, raise);
          at += 1;
        }
  return haves;
}
