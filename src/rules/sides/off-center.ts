import { part } from '../inputs/part.ts';
import { shop } from '../inputs/setting.ts';
import { greatest } from '../judging/side.ts';
import { rises, term } from '../judging/term.ts';

/** 1 where a part is loaded by hand off the rotary axis, so that its zero must turn with it, else 0. */
export const loadedOffCenter = greatest(['part'], () => [
  term('loaded by hand off center', { e: rises(part.eccentricity), byHand: rises(shop.byHand) }, (of) =>
    of.e > 0 && of.byHand > 0 ? 1 : 0,
  ),
]);
