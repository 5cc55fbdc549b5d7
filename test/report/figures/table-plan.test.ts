import { describe, expect, it, test } from 'vitest';
import type { Panel } from '../../../src/drawing/scene.ts';
import { arrangementAt } from '../../../src/report/checks-at.ts';
import { picturedArrangement } from '../../../src/report/figures/pictured.ts';
import { tablePlan } from '../../../src/report/figures/table-plan.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf, spanOf } from './demo-figures.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const SHOP = new Map(DECISIONS).get('shop') as Decision;

const allDrawn = drawnOf(DECISIONS, tablePlan);

const countOf = (panel: Panel, thing: string): number =>
  panel.shapes.filter((each) => each.thing === thing).length;

describe.each(allDrawn)('The table of $what', ({ decision, arrangement, scene }) => {
  const [panel] = scene.panels as [Panel];
  const machine = decision.inputs.catalog.machines.find(({ id }) => id === arrangement.machine);

  it('has measures as long as the numbers of the verdict', () => expectTrueMeasures(scene, decision));

  it('says nothing of what is undefined', () => {
    expect(faultsInWords(scene)).toEqual([]);
  });

  it('shows as many vises as the verdict counts, on the table and within the travel', () => {
    const stations = arrangement.measures.viseStations;
    if (typeof stations !== 'number' || arrangement.space === null) return;
    expect(countOf(panel, 'vise')).toBe(stations);
    if (stations === 0) return;
    const [vises, table] = [spanOf(panel, 'vise'), spanOf(panel, 'table')];
    const travel = Number(machine?.travel[0]) / 2;
    for (const [low, high] of [
      [-travel, travel],
      [table.left, table.right],
    ] as const) {
      expect(vises.left).toBeGreaterThanOrEqual(low - 1e-9);
      expect(vises.right).toBeLessThanOrEqual(high + 1e-9);
    }
  });

  it('keeps vises clear of base and housing', () => {
    const solid = panel.shapes.filter(({ thing }) => thing === 'footprint' || thing === 'housing');
    for (const vise of panel.shapes.filter(({ thing }) => thing === 'vise')) {
      const { left, right } = spanOf({ ...panel, shapes: [vise] }, 'vise');
      for (const each of solid) {
        const other = spanOf({ ...panel, shapes: [each] }, each.thing);
        expect(left >= other.right || right <= other.left).toBe(true);
      }
    }
  });
});

describe('The tables of the demo shop', () => {
  const at = picturedArrangement(SHOP);
  const scene = at === undefined ? undefined : tablePlan(SHOP, at)?.scene;

  it('show both mountings, a quarter turn apart', () => {
    const [taken, other] = (scene?.panels ?? []) as [Panel, Panel];
    expect(scene?.panels).toHaveLength(2);
    expect(taken.title).not.toBe(other.title);
    const [a, b] = [spanOf(taken, 'footprint'), spanOf(other, 'footprint')];
    expectClose(a.right - a.left, b.high - b.low, { absolute: 1e-9 });
    expectClose(a.high - a.low, b.right - b.left, { absolute: 1e-9 });
  });

  it('have the slots that the catalog states, about the middle', () => {
    const [taken] = (scene?.panels ?? []) as [Panel];
    const slots = SHOP.inputs.catalog.machines.find(({ id }) => id === at?.arrangement.machine)?.table?.slots;
    expect(countOf(taken, 'slot')).toBe(slots?.count);
    const { low, high } = spanOf(taken, 'slot');
    expectClose(low, -high, { absolute: 1e-9 });
    expectClose(high - low, (Number(slots?.count) - 1) * Number(slots?.pitch) + Number(slots?.width), {
      absolute: 1e-9,
    });
  });

  it('have the base on the table', () => {
    for (const panel of scene?.panels ?? []) {
      const [base, table] = [spanOf(panel, 'footprint'), spanOf(panel, 'table')];
      expect(base.left).toBeGreaterThanOrEqual(table.left - 1e-9);
      expect(base.right).toBeLessThanOrEqual(table.right + 1e-9);
      expect(base.low).toBeGreaterThanOrEqual(table.low - 1e-9);
      expect(base.high).toBeLessThanOrEqual(table.high + 1e-9);
    }
  });
});

test('Slots whose count and middle do not go together are not drawn, and said so', () => {
  const machines = SHOP.inputs.catalog.machines.map((row) =>
    row.table === null
      ? row
      : { ...row, table: { ...row.table, slots: { ...row.table.slots, count: 4, center: true } } },
  );
  const changed: Decision = {
    ...SHOP,
    inputs: { ...SHOP.inputs, catalog: { ...SHOP.inputs.catalog, machines } },
  };
  const at = arrangementAt(changed, SHOP.recommended);
  const scene = at === undefined ? undefined : tablePlan(changed, at)?.scene;
  expect(scene?.panels.map((panel) => countOf(panel, 'slot'))).toEqual([0, 0]);
  expect(scene?.notDrawn).toEqual(['Not drawn, because it is not known: the T-slots.']);
});

test('Nothing is drawn of a table that is built in', () => {
  const built = DECISIONS.flatMap(([, decision]) =>
    decision.arrangements.flatMap((arrangement, index) =>
      arrangement.rotary === null
        ? [tablePlan(decision, { arrangement, path: ['arrangements', index] })]
        : [],
    ),
  );
  expect(built.length).toBeGreaterThan(0);
  expect(built.filter((each) => each !== null)).toEqual([]);
});
