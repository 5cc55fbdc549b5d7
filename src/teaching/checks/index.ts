import type { CheckId } from '../../rules/checks/ids.ts';
import type { CheckFormula } from './check-formula.ts';
import { CONTROL_FORMULAS } from './control.ts';
import { ENVELOPE_FORMULAS } from './envelope.ts';
import { LIFTING_FORMULAS } from './lifting.ts';
import { MACHINE_FIT_FORMULAS } from './machine-fit.ts';
import { REACH_FORMULAS } from './reach.ts';
import { ROTARY_CLASS_FORMULAS } from './rotary-class.ts';
import { SHOP_FORMULAS } from './shop.ts';

/** How each check is worked out. A new id does not compile without. */
export const CHECK_FORMULAS: Readonly<Record<CheckId, CheckFormula>> = {
  ...ENVELOPE_FORMULAS,
  ...ROTARY_CLASS_FORMULAS,
  ...REACH_FORMULAS,
  ...MACHINE_FIT_FORMULAS,
  ...CONTROL_FORMULAS,
  ...SHOP_FORMULAS,
  ...LIFTING_FORMULAS,
};
