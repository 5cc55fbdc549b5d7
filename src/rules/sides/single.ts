import type { Room } from '../judging/case.ts';
import { greatest, least, type Side } from '../judging/side.ts';
import { type Input, rises, term } from '../judging/term.ts';

/** A side that is one number as it stands. */
export const theInput = (of: readonly Room[], input: Input): Side =>
  least(of, () => [term(input.name, { it: rises(input) }, (values) => values.it)]);

/** The same on the need's side. */
export const needsInput = (of: readonly Room[], input: Input): Side =>
  greatest(of, () => [term(input.name, { it: rises(input) }, (values) => values.it)]);
