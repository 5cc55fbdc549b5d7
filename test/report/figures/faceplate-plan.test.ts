import { describe, expect, it, test } from 'vitest';
import type { Panel, Point } from '../../../src/drawing/scene.ts';
import { faceplatePlan } from '../../../src/report/figures/faceplate-plan.ts';
import { picturedArrangement } from '../../../src/report/figures/pictured.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf } from './demo-figures.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const SHOP = new Map(DECISIONS).get('shop') as Decision;

const allDrawn = drawnOf(DECISIONS, faceplatePlan);

const radiusOf = (panel: Panel, thing: string): number =>
  panel.shapes.flatMap(({ thing: own, form }) =>
    own === thing && form.kind === 'circle' ? [form.radius] : [],
  )[0] ?? 0;

/** How far the part reaches from the rotary axis. */
const reachOf = (panel: Panel): number => {
  const form = panel.shapes.find(({ thing }) => thing === 'part')?.form;
  const far = (points: readonly Point[]): number => Math.max(...points.map(([x, y]) => Math.hypot(x, y)));
  if (form?.kind === 'circle') return Math.hypot(...form.center) + form.radius;
  return form?.kind === 'polygon' ? far(form.points) : Number.NaN;
};

test('Work on faceplates is drawn of several shops', () => {
  expect(new Set(allDrawn.map(({ shop }) => shop)).size).toBeGreaterThanOrEqual(4);
});

describe.each(allDrawn)('The faceplate of $what', ({ decision, scene }) => {
  const [panel] = scene.panels as [Panel];
  const swing = panel.dimensions.find(({ name }) => name === 'swing, needed');

  it('has measures as long as the numbers of the verdict', () => expectTrueMeasures(scene, decision));

  it('says nothing of what is undefined', () => {
    expect(faultsInWords(scene)).toEqual([]);
  });

  it('lets the part reach no farther than the circle that it sweeps', () => {
    expect(reachOf(panel)).toBeLessThanOrEqual(radiusOf(panel, 'sweep') + 1e-9);
  });

  it('needs the swing of whatever is larger, part or fixture', () => {
    if (swing === undefined) return;
    const larger = Math.max(radiusOf(panel, 'sweep'), radiusOf(panel, 'fixture'));
    expectClose(swing.to[0] - swing.from[0], 2 * larger, { absolute: 1e-6 });
  });
});

test('A part whose size is a range is not drawn', () => {
  const parts = SHOP.inputs.answers.parts.map((part) => ({
    ...part,
    eccentricity: [0, 20] as const,
  }));
  const changed: Decision = {
    ...SHOP,
    inputs: { ...SHOP.inputs, answers: { ...SHOP.inputs.answers, parts } },
  };
  const at = picturedArrangement(changed);
  expect(at).toBeDefined();
  expect(at === undefined ? undefined : faceplatePlan(changed, at)).toBeNull();
});
