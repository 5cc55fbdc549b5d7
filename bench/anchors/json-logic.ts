import { LogicEngine } from 'json-logic-engine';
import type { Anchor } from './counts.ts';
import { EXPRESSIONS } from './json-expressions.ts';
import { type Case, casesOf } from './world.ts';

/** Each check compiled to a function, once. */
export const compiledLogic: Anchor = (world) => {
  const engine = new LogicEngine();
  const checks = EXPRESSIONS.map(
    ([need, have]) => engine.build({ '<=': [need, have] }) as (of: Case) => boolean,
  );
  return () => {
    let held = 0;
    let passed = 0;
    for (const each of casesOf(world)) {
      let holds = 0;
      for (const check of checks) if (check(each)) holds += 1;
      held += holds;
      if (holds === checks.length) passed += 1;
    }
    return { held, passed };
  };
};
