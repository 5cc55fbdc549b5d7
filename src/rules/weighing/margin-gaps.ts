import type { Gap } from '../decision.ts';
import { hangingOn } from '../judging/value.ts';
import type { Judged } from './judged.ts';

/**
 * What the room to spare of an arrangement may hang on: nearly every answer about its parts. So it is looked at only where
 * nothing else that is not known tells the arrangements apart.
 */
export const marginGaps = ({ own, families }: Judged): readonly Gap[] =>
  hangingOn(
    [...own, ...families.flatMap(({ outcomes }) => outcomes)].flatMap(({ check, hangsOn }) =>
      check.categorical === true ? [] : hangsOn,
    ),
  ).gaps;
