import { formatNumber } from '../../src/quantities/format-number.ts';
import { ANCHOR_CHECKS } from './checks.ts';
import type { Anchor, Counts } from './counts.ts';
import type { World } from './world.ts';

/** Only the verdict; a trace is made from the same functions when somebody looks. */
export const lazyTraces: Anchor = (world) => () => {
  const { parts, rotaries, machines, alongX, raised } = world;
  let held = 0;
  let passed = 0;
  for (const rotary of rotaries)
    for (const machine of machines)
      for (const along of alongX)
        for (const raise of raised)
          for (const part of parts) {
            let holds = 0;
            for (const { need, have } of ANCHOR_CHECKS)
              if (need(part, rotary) <= have(rotary, machine, along, raise)) holds += 1;
            held += holds;
            if (holds === ANCHOR_CHECKS.length) passed += 1;
          }
  return { held, passed };
};

/** An object for every check; those of a part on an arrangement are kept until the next. */
export const everyTrace: Anchor = (world) => () =>
  traced(world, (check, need, have) => ({ check, need, have, margin: have - need, holds: need <= have }));

/** The same with a sentence in it, with numbers as the program writes them. */
export const everyTraceWithText: Anchor = (world) => () =>
  traced(world, (check, need, have) => {
    const [needed, there, left] = [need, have, have - need].map((value) => formatNumber(value, 1, 'thin'));
    const holds = need <= have;
    const text = `${check} ${holds ? 'holds' : 'fails'}: needs ${needed}, has ${there}, ${left} left`;
    return { check, need, have, margin: have - need, holds, text };
  });

interface Trace {
  readonly check: string;
  readonly need: number;
  readonly have: number;
  readonly margin: number;
  readonly holds: boolean;
  readonly text?: string;
}

function traced(world: World, trace: (check: string, need: number, have: number) => Trace): Counts {
  const { parts, rotaries, machines, alongX, raised } = world;
  let held = 0;
  let passed = 0;
  for (const rotary of rotaries)
    for (const machine of machines)
      for (const along of alongX)
        for (const raise of raised)
          for (const part of parts) {
            const traces = ANCHOR_CHECKS.map(({ id, need, have }) =>
              trace(id, need(part, rotary), have(rotary, machine, along, raise)),
            );
            const holds = traces.filter((each) => each.holds).length;
            held += holds;
            if (holds === ANCHOR_CHECKS.length) passed += 1;
          }
  return { held, passed };
}
