import type { CheckId } from '../../rules/checks/ids.ts';
import { type CheckWords, check } from './check-words.ts';
import { MACHINE_CHECKS } from './machine-checks.ts';
import { WORK_CHECKS } from './work-checks.ts';

const SHOP_CHECKS = {
  budget: check(
    'budget',
    'The budget pays for it',
    'Machine, rotary and everything that has to be added may cost no more than the budget.',
    'price of all of it',
    'budget',
  ),
} as const;

/** Every check in words. A new id does not compile without them. */
export const CHECK_WORDS: Readonly<Record<CheckId, CheckWords>> = {
  ...WORK_CHECKS,
  ...MACHINE_CHECKS,
  ...SHOP_CHECKS,
};
