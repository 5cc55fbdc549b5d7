import type { Machine } from '../../catalog/catalog.ts';
import { type Dimension, type Panel, rectangle } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, say } from '../blocks/inline.ts';
import type { CheckAt } from '../checks-at.ts';
import { drawnText, isSame, measured } from './figure.ts';
import { plain, type Rows } from './known-stack.ts';

/** The machine with its service space, as numbers; null where one of them is not known. */
interface Needs {
  readonly wide: number;
  readonly deep: number;
  readonly left: number;
  readonly front: number;
  readonly outerWide: number;
  readonly outerDeep: number;
}

function needsOf({ footprint, service }: Machine): Needs | null {
  const [wide = null, deep = null] = footprint.map(plain);
  const { left, right, front, rear } = service;
  const [l, r, f, b] = [plain(left), plain(right), plain(front), plain(rear)];
  if (wide === null || deep === null || l === null || r === null || f === null || b === null) return null;
  return { wide, deep, left: l, front: f, outerWide: l + wide + r, outerDeep: f + deep + b };
}

/**
 * The bay from above with the machine and its service space in a corner of it, its longer side along the longer side of
 * the bay. Null where a size is not known.
 */
export function bayPanel(decision: Decision, rows: Rows, check: CheckAt): Panel | null {
  const needs = needsOf(rows.machine);
  const { bay } = decision.inputs.answers.shop;
  const [one, other] = [plain(bay[0]), plain(bay[1])];
  if (needs === null || one === null || other === null) return null;
  const straight = needs.outerWide >= needs.outerDeep === one >= other;
  const [across, deep] = straight ? ([0, 1] as const) : ([1, 0] as const);
  const [bayWide, bayDeep] = straight ? [one, other] : [other, one];
  const { left, front, wide, deep: long, outerWide, outerDeep } = needs;
  return {
    title: drawnText(say`The bay from above, the operator’s side below`, decision),
    shapes: [
      rectangle('service', [0, 0], [outerWide, outerDeep]),
      rectangle('machine', [left, front], [left + wide, front + long]),
      // last, since hatching hides what lies under it
      rectangle('bay', [0, 0], [bayWide, bayDeep]),
    ],
    marks: [
      { at: [left + wide / 2, front + long / 2], name: 'machine', stands: 'on' },
      { at: [left + wide / 2, front / 2], name: 'service space', stands: 'on' },
      { at: [bayWide, bayDeep * 0.8], name: 'bay', stands: 'on' },
    ],
    dimensions: [
      ...measured(decision, {
        name: say`bay, one way`,
        path: ['inputs', 'answers', 'shop', 'bay', across],
        from: [0, bayDeep],
        side: 'above',
      }),
      ...measured(decision, {
        name: say`bay, the other way`,
        path: ['inputs', 'answers', 'shop', 'bay', deep],
        from: [bayWide, 0],
        side: 'right',
      }),
      ...machineMeasures(decision, rows, needs),
      ...neededMeasures(decision, check, needs, [bayWide, bayDeep]),
    ],
    labels: [],
  };
}

function machineMeasures(
  decision: Decision,
  { machinePath }: Rows,
  { left, front }: Needs,
): readonly Dimension[] {
  return [
    ...measured(decision, {
      name: say`width of the machine`,
      path: [...machinePath, 'footprint', 0],
      from: [left, 0],
      side: 'below',
    }),
    ...measured(decision, {
      name: say`depth of the machine`,
      path: [...machinePath, 'footprint', 1],
      from: [0, front],
      side: 'left',
    }),
  ];
}

/** The number of the check, along the side that it speaks of. */
function neededMeasures(
  decision: Decision,
  { result, path }: CheckAt,
  { outerWide, outerDeep }: Needs,
  [bayWide, bayDeep]: readonly [number, number],
): readonly Dimension[] {
  const need = plain(result.need);
  const have = plain(result.have);
  if (need === null || have === null) return [];
  const isLevel = isSame(need, outerWide) && isSame(have, bayWide);
  if (!isLevel && !(isSame(need, outerDeep) && isSame(have, bayDeep))) return [];
  const side = isLevel ? 'below' : 'left';
  const measure = (name: readonly Inline[], key: 'need' | 'margin', from: number, tight: boolean) =>
    measured(decision, { name, path: [...path, key], from: isLevel ? [from, 0] : [0, from], side, tight });
  return [
    ...measure(say`machine with service space`, 'need', 0, false),
    ...measure(say`left over in the bay`, 'margin', need, true),
  ];
}
