import type { Case } from '../judging/case.ts';

/** A mill that is owned has come through the door, stands in its bay and is wired: that is not asked again. */
export const standsAlready = (of: Case): boolean => of.shop.site.owned === of.machine.key;
