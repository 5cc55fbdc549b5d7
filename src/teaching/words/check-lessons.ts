import type { CheckId } from '../../rules/checks/ids.ts';
import type { CheckLesson } from './check-lesson.ts';
import { ENVELOPE_LESSONS } from './envelope.ts';
import { MACHINE_LESSONS } from './machine-fit.ts';
import { REACH_LESSONS } from './reach.ts';
import { ROTARY_CLASS_LESSONS } from './rotary-class.ts';
import { SHOP_LESSONS } from './shop.ts';

/** Every check as it is taught. A new id does not compile without. */
export const CHECK_LESSONS: Readonly<Record<CheckId, CheckLesson>> = {
  ...ENVELOPE_LESSONS,
  ...ROTARY_CLASS_LESSONS,
  ...REACH_LESSONS,
  ...MACHINE_LESSONS,
  ...SHOP_LESSONS,
};
