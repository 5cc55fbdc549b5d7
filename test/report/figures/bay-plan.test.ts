import { describe, expect, it, test } from 'vitest';
import type { Panel } from '../../../src/drawing/scene.ts';
import { bayPlan } from '../../../src/report/figures/bay-plan.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf, spanOf } from './demo-figures.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();

const allDrawn = drawnOf(DECISIONS, bayPlan);

const panelWith = (panels: readonly Panel[], words: string): Panel | undefined =>
  panels.find(({ title }) => title.includes(words));

test('Bays are drawn of several shops', () => {
  expect(new Set(allDrawn.map(({ shop }) => shop)).size).toBeGreaterThanOrEqual(3);
});

describe.each(allDrawn)('The bay for $what', ({ decision, arrangement, scene }) => {
  const verdictOf = (check: string) => arrangement.checks.find((each) => each.check === check);

  it('has measures as long as the numbers of the verdict', () => expectTrueMeasures(scene, decision));

  it('says nothing of what is undefined', () => {
    expect(faultsInWords(scene)).toEqual([]);
  });

  it('holds the machine with its service space where the check holds, and only there', () => {
    const panel = panelWith(scene.panels, 'bay');
    const check = verdictOf('bay');
    if (panel === undefined || check === undefined) return;
    const [bay, needed] = [spanOf(panel, 'bay'), spanOf(panel, 'service')];
    const fits = needed.right <= bay.right + 1e-9 && needed.high <= bay.high + 1e-9;
    expect(fits).toBe(check.verdict === 'holds');
  });

  it('lets the machine through the doorway with what is left over above or beside it', () => {
    const panel = panelWith(scene.panels, 'doorway');
    const check = verdictOf('doorway');
    if (panel === undefined || typeof check?.margin !== 'number') return;
    const [opening, machine] = [spanOf(panel, 'bay'), spanOf(panel, 'machine')];
    const { doorSide } = decision.inputs.assume;
    const above = opening.high - machine.high;
    const beside = opening.right - opening.left - (machine.right - machine.left) - doorSide;
    expectClose(Math.min(Math.abs(above - check.margin), Math.abs(beside - check.margin)), 0, {
      absolute: 1e-6,
    });
  });
});

test('Nothing is drawn of a mill that stands there already', () => {
  const [, decision] = DECISIONS.find(([what]) => what === 'shop-own-mill') ?? [];
  const owned = decision?.arrangements.flatMap((arrangement, index) =>
    arrangement.machine === decision.inputs.answers.shop.machine
      ? [bayPlan(decision, { arrangement, path: ['arrangements', index] })]
      : [],
  );
  expect(owned?.length).toBeGreaterThan(0);
  expect(owned?.filter((each) => each !== null)).toEqual([]);
});
