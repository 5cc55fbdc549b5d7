import type { Decision } from '../rules/decision.ts';
import type { Inline } from './blocks/inline.ts';
import type { CheckAt } from './checks-at.ts';
import { partName } from './names.ts';

/**
 * The part that a check is named with; null where it is about the arrangement, or about the building, which carries whatever
 * stands on it: there the heaviest part only stands for all. Example: swing → 'Rudder hinge'; floor load → null.
 */
export const checkPart = (decision: Decision, { result, path }: CheckAt): Inline | null =>
  result.part === null || result.stage === 'shop' ? null : partName(decision, result.part, [...path, 'part']);
