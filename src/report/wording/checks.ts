import type { CheckId } from '../../rules/checks/ids.ts';
import type { CheckWords } from './check-words.ts';
import { MACHINE_CHECKS } from './machine-checks.ts';
import { SHOP_CHECKS } from './shop-checks.ts';
import { WORK_CHECKS } from './work-checks.ts';

/** Every check in words. A new id does not compile without them. */
export const CHECK_WORDS: Readonly<Record<CheckId, CheckWords>> = {
  ...WORK_CHECKS,
  ...MACHINE_CHECKS,
  ...SHOP_CHECKS,
};
