import type { Order } from './interview.ts';

/** The order of the interview itself: what comes first is asked first. */
export const fixedOrder: Order = ([first]) => first;
