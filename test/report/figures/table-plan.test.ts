import { describe, expect, it, test } from 'vitest';
import type { Panel, Scene } from '../../../src/drawing/scene.ts';
import { sceneSvg } from '../../../src/drawing/svg/scene-svg.ts';
import { findAt } from '../../../src/report/blocks/path.ts';
import { type ArrangementAt, arrangementAt } from '../../../src/report/checks-at.ts';
import { picturedArrangement } from '../../../src/report/figures/pictured.ts';
import { tablePlan } from '../../../src/report/figures/table-plan.ts';
import type { CheckResult, Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf, spanOf } from './demo-figures.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const SHOP = new Map(DECISIONS).get('shop') as Decision;

const allDrawn = drawnOf(DECISIONS, tablePlan);

const countOf = (panel: Panel, thing: string): number =>
  panel.shapes.filter((each) => each.thing === thing).length;

describe.each(allDrawn)('requirement 25: the table of $what', ({ decision, arrangement, scene }) => {
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

describe('Two mountings', () => {
  const drawn = new Map(
    ['shop', 'shop-own-mill', 'shop-school-workshop'].map((shop) => {
      const decision = new Map(DECISIONS).get(shop) as Decision;
      const at = arrangementAt(decision, decision.recommended);
      const scene = at === undefined ? null : (tablePlan(decision, at)?.scene ?? null);
      if (scene === null) throw new Error(`nothing is drawn of ${shop}`);
      return [shop, { decision, scene }];
    }),
  );
  const sceneOf = (shop: string): Scene => drawn.get(shop)?.scene as Scene;

  it('stand side by side at one scale, on paper', () => {
    for (const { scene } of drawn.values()) {
      expect(scene.panels).toHaveLength(2);
      const svg = sceneSvg(scene, { lengthText: (mm) => `${mm} mm` });
      const places = [...svg.matchAll(/translate\(([\d.]+) ([\d.]+)\)/g)].map(([, x, y]) => [
        Number(x),
        Number(y),
      ]);
      const [first, second] = places as [[number, number], [number, number]];
      expect(second[0]).toBeGreaterThan(first[0]);
      expect(second[1]).toBe(first[1]);
      expect(svg.match(/1 : \d+/g)).toHaveLength(1);
    }
  });

  it('say why one of them does not pass, in its title and in a sentence with its numbers', () => {
    expect(sceneOf('shop-own-mill').panels[1]?.title).toBe(
      'Tilt axis along Y, the door below – base on the table fails',
    );
    expect(sceneOf('shop-own-mill').notDrawn[0]).toMatch(
      /does not pass: base on the table, 430 mm.* needed, 410 mm.* there\.$/,
    );
    expect(sceneOf('shop-school-workshop').panels[1]?.title).toContain('tailstock fails');
    expect(
      sceneOf('shop')
        .panels.map(({ title }) => title)
        .join(),
    ).not.toContain('fails');
  });

  it('measure the check that gives way first, its margin heavier', () => {
    for (const { decision, scene } of drawn.values()) {
      for (const panel of scene.panels) {
        const tight = panel.dimensions.filter((each) => each.tight);
        expect(tight).toHaveLength(1);
        const [check] = [tight[0]?.path.slice(0, -1) ?? []].map(
          (path) => findAt(decision, path) as CheckResult,
        );
        expect(['table-footprint', 'travel-x', 'travel-y', 'column']).toContain(check?.check);
      }
    }
  });

  it('name each measure of theirs by the mounting, so that none is taken for the other', () => {
    for (const { scene } of drawn.values()) {
      const names = scene.panels.map(({ dimensions }) => dimensions.map(({ name }) => name));
      const both = (names[0] ?? []).filter((name) => names[1]?.includes(name));
      expect(both).toEqual(['length of the table', 'X travel', 'depth of the table', 'Y travel']);
    }
  });

  it('are one with a reason where the base is held one way only', () => {
    const { decision } = drawn.get('shop') as { decision: Decision };
    const at = arrangementAt(decision, decision.recommended) as ArrangementAt;
    const { rotaries } = decision.inputs.catalog;
    const one = rotaries.map((row) =>
      row.id === at.arrangement.rotary
        ? { ...row, hold: { [at.arrangement.mounting]: { keyWidth: 18, pitches: [80] } } }
        : row,
    );
    const changed: Decision = {
      ...decision,
      arrangements: [at.arrangement],
      inputs: { ...decision.inputs, catalog: { ...decision.inputs.catalog, rotaries: one } },
    };
    const scene = tablePlan(changed, { ...at, path: ['arrangements', 0] })?.scene;
    expect(scene?.panels).toHaveLength(1);
    expect(scene?.notDrawn.join()).toMatch(
      /Not drawn is the tilt axis along X: the catalog names no way to hold the base like that\./,
    );
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
