import type { RouteId } from '../../decision-classes.ts';
import type { ClassExample } from '../rule.ts';

/** A case with what the rule says of it. */
export interface RouteExample extends Omit<ClassExample, 'of'> {
  readonly of: RouteId;
}
