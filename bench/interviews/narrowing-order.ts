import { narrowings } from '../../src/rules/asking/narrowing.ts';
import { isAbout } from './asked.ts';
import type { Order } from './interview.ts';

/** What is expected to narrow the field most comes first. */
export const narrowingOrder: Order = (open, standing, answers) => {
  for (const { answer } of narrowings(standing)) {
    const next = open.find((each) => isAbout(each, answer, answers));
    if (next !== undefined) return next;
  }
  return open[0];
};
