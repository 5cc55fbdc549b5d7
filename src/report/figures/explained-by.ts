import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { bayPlan } from './bay-plan.ts';
import { elevation } from './elevation.ts';
import { faceplatePlan } from './faceplate-plan.ts';
import type { Figure } from './figure.ts';
import { tablePlan } from './table-plan.ts';

/** The figures that show where a check holds or fails. */
export const FIGURE_KINDS = {
  faceplate: faceplatePlan,
  stack: elevation,
  table: tablePlan,
  bay: bayPlan,
} as const satisfies Readonly<Record<string, (decision: Decision, at: ArrangementAt) => Figure | null>>;
export type FigureKind = keyof typeof FIGURE_KINDS;

/** Which figure explains a check; the others compare what has no place: weights, torques, powers, a yes or no. */
export const EXPLAINED_BY: Readonly<Partial<Record<CheckId, FigureKind>>> = {
  swing: 'faceplate',
  faceplate: 'faceplate',
  'reach-high': 'stack',
  'reach-low': 'stack',
  'index-clear': 'stack',
  'table-clear': 'stack',
  tailstock: 'stack',
  'table-footprint': 'table',
  'travel-x': 'table',
  'travel-y': 'table',
  column: 'table',
  bay: 'bay',
  doorway: 'bay',
};
