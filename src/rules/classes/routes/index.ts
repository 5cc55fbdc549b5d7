import type { RouteId } from '../../decision-classes.ts';
import type { Rule } from '../rule.ts';
import type { RouteExample } from './example.ts';
import type { RouteGround } from './ground.ts';
import type { RouteRuleId } from './rule-ids.ts';
import { oneAxis } from './rules/one-axis.ts';
import { outcomeOfRoute } from './rules/outcome.ts';
import { owned } from './rules/owned.ts';

export type RouteRule = Rule<RouteRuleId, RouteId, RouteGround, RouteExample>;

/** The decision table of the route, in the order of the ids. */
export const ROUTE_RULES: readonly RouteRule[] = [...owned, ...oneAxis, ...outcomeOfRoute];
