import type { Decision } from '../../rules/decision.ts';
import { decisionOfRule } from '../examples/example-decision.ts';

let made: Decision | null = null;

/** The decision of the example shop as it is; made once. */
export function exampleDecision(): Decision {
  made ??= decisionOfRule({});
  return made;
}
