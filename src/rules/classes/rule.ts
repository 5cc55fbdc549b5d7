import type { Class, Machine, Rotary } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { AssumptionOverrides } from '../../questions/assumptions.ts';
import type { Loose } from '../checks/example.ts';
import type { ArgumentSide } from '../decision-classes.ts';
import type { Value } from '../judging/value.ts';
import type { ClassGround } from './ground.ts';
import type { ClassRuleId } from './rule-ids.ts';

/** A number of the mix or the catalog, and the families that it is about. */
export interface Weighed {
  readonly value: Value;
  readonly parts: readonly string[];
}

/** On which side of its line the number makes the rule speak. */
export type Speaks = 'below' | 'at least' | 'above' | 'at most';

/** What an example changes in the example shop: parts, rotaries and machines are put in place of its own. */
export interface ClassExampleGiven {
  readonly parts?: readonly Loose<Part>[];
  readonly rotaries?: readonly Loose<Rotary>[];
  readonly machines?: readonly Loose<Machine>[];
  readonly shop?: Loose<Answers['shop']>;
  readonly work?: Loose<Answers['work']>;
  readonly money?: Loose<Answers['money']>;
  readonly assume?: AssumptionOverrides;
}

/** A case with what the rule says of it: run by the tests, printed by the explanations. */
export interface ClassExample {
  readonly what: string;
  readonly of: Class;
  readonly given: ClassExampleGiven;
  readonly speaks: 'yes' | 'no' | 'open';
  /** left out where it does not speak */
  readonly number?: number;
  readonly limit?: number;
}

/** One line of a decision table: about a few subjects, on a ground that its numbers are read from. */
export interface Rule<Id extends string, Subject extends string, Ground, Example> {
  readonly id: Id;
  readonly about: readonly Subject[];
  readonly side: ArgumentSide;
  /** an argument against that keeps a subject from suiting; the others only count in the reading */
  readonly weighty?: boolean;
  readonly unit: string;
  /** null: there is nothing to say */
  readonly number: (of: Ground) => Weighed | null;
  readonly limit: (of: Ground) => Value;
  readonly when: Speaks;
  /** it is silent where one of these speaks, because they say more about the same thing */
  readonly unless?: readonly Id[];
  /** where the line comes from */
  readonly source: string;
  readonly examples: readonly Example[];
}

export type ClassRule = Rule<ClassRuleId, Class, ClassGround, ClassExample>;

/** Declares rules that share a number. At most one of a class speaks surely. */
export const defineGroup = (rules: readonly ClassRule[]): readonly ClassRule[] => rules;

export const ONE_AXIS: readonly Class[] = ['collet-indexer', 'single-axis'];
export const TWO_AXES: readonly Class[] = ['single-support', 'trunnion', 'built-in'];
export const ADDED: readonly Class[] = ['collet-indexer', 'single-axis', 'single-support', 'trunnion'];
export const EVERY_CLASS: readonly Class[] = [...ADDED, 'built-in'];

/** A line that nobody publishes. */
export const COMMON_PRACTICE = 'common practice, no source';
