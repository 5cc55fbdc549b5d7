import { describe, expect, it, test } from 'vitest';
import type { Dimension, Panel } from '../../../src/drawing/scene.ts';
import { findAt } from '../../../src/report/blocks/path.ts';
import { arrangementAt } from '../../../src/report/checks-at.ts';
import { coverageChart } from '../../../src/report/figures/coverage-chart.ts';
import { paybackChart } from '../../../src/report/figures/payback-chart.ts';
import { tradeOffChart } from '../../../src/report/figures/trade-off-chart.ts';
import { jsonReport } from '../../../src/report/index.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const SHOP = new Map(DECISIONS).get('shop') as Decision;
const JSON_OF_SHOP: Decision = JSON.parse(jsonReport(SHOP));
const AT = arrangementAt(SHOP, SHOP.recommended);
const onlyPanel = (figure: { readonly scene: { readonly panels: readonly Panel[] } } | null): Panel =>
  figure?.scene.panels[0] as Panel;
const lineOf = (panel: Panel, thing: string) =>
  panel.shapes.flatMap((shape) =>
    shape.thing === thing && shape.form.kind === 'line' ? [shape.form.points] : [],
  )[0] ?? [];
const shownBy = ({ path }: Dimension): number => Number(findAt(JSON_OF_SHOP, path));

/** mm of the picture for one of the unit, by the number that a measure shows. */
const timesOf = (dimension: Dimension): number => {
  const axis = dimension.side === 'above' || dimension.side === 'below' ? 0 : 1;
  return (dimension.to[axis] - dimension.from[axis]) / shownBy(dimension);
};

describe('The curve of coverage', () => {
  const panel = onlyPanel(coverageChart(SHOP));
  const [knee] = panel.dimensions as [Dimension];
  const times = timesOf(knee);

  it('steps at each family by its share, at the scale of its measure', () => {
    const points = lineOf(panel, 'curve');
    const top = Math.max(...points.map(([, y]) => y));
    SHOP.envelope.curve.forEach(({ swing, share }) => {
      const step = points.find(
        ([x, y]) => Math.abs(x - Number(swing) * times) < 1e-6 && Math.abs(y - Number(share) * top) < 1e-6,
      );
      expect(step, `a step at ${swing}`).toBeDefined();
    });
  });

  it('has its knee at the number of the decision, on a step', () => {
    expect(shownBy(knee)).toBe(SHOP.envelope.knee);
    expect(lineOf(panel, 'curve').some(([x]) => Math.abs(x - knee.to[0]) < 1e-9)).toBe(true);
  });

  it('is not drawn where a swing is a range', () => {
    const curve = SHOP.envelope.curve.map((point, index) =>
      index === 1 ? { ...point, swing: [100, 140] as const } : point,
    );
    expect(coverageChart({ ...SHOP, envelope: { ...SHOP.envelope, curve } })).toBeNull();
  });
});

describe('The line of the payback', () => {
  const figure = AT === undefined ? null : paybackChart(SHOP, AT);
  const panel = onlyPanel(figure);
  const [paid, back] = panel.dimensions as [Dimension, Dimension];

  it('begins at what is paid and crosses nothing where the payback is', () => {
    const [[, begins], [years, ends]] = lineOf(panel, 'curve') as [
      readonly [number, number],
      readonly [number, number],
    ];
    const [zero] = lineOf(panel, 'guide') as [readonly [number, number]];
    expectClose(zero[1] - begins, shownBy(paid) * timesOf(paid), { absolute: 1e-9 });
    const crosses = (years * (zero[1] - begins)) / (ends - begins);
    expectClose(crosses, back.to[0], { absolute: 1e-6 });
    expect(back.from[1]).toBe(zero[1]);
  });

  it('says the same in words', () => {
    for (const { text } of panel.dimensions) expect(figure?.scene.description).toContain(text);
  });

  it('is not drawn where it never pays for itself, or nobody knows', () => {
    for (const payback of [null, [3, 9] as const]) {
      if (AT === undefined) throw new Error('nothing is recommended');
      const arrangement = { ...AT.arrangement, money: { ...AT.arrangement.money, payback } };
      expect(paybackChart(SHOP, { ...AT, arrangement })).toBeNull();
    }
  });
});

describe('Coverage against price', () => {
  const figure = tradeOffChart(SHOP);
  const panel = onlyPanel(figure);
  const [price, coverage] = panel.dimensions as [Dimension, Dimension];
  const shown = SHOP.arrangements.filter(({ undominated, passes }) => undominated && passes === 'yes');

  it('has a spot for each that passes and nothing beats, where its numbers are', () => {
    const spots = panel.shapes.flatMap(({ thing, form }) =>
      thing === 'spot' && form.kind === 'circle' ? [form.center] : [],
    );
    expect(spots).toHaveLength(shown.length);
    shown.forEach(({ measures }, index) => {
      expectClose(spots[index]?.[0] ?? 0, Number(measures.price) * timesOf(price), { absolute: 1e-9 });
      expectClose(spots[index]?.[1] ?? 0, Number(measures.coverage) * timesOf(coverage), { absolute: 1e-9 });
    });
  });

  it('rings the recommendation and measures it', () => {
    const rings = panel.shapes.flatMap(({ thing, form }) =>
      thing === 'curve' && form.kind === 'circle' ? [form.center] : [],
    );
    expect(rings).toEqual([[price.to[0], coverage.to[1]]]);
    expect(shownBy(price)).toBe(AT?.arrangement.measures.price);
    expect(shownBy(coverage)).toBe(AT?.arrangement.measures.coverage);
  });

  it('is not drawn where nothing is recommended', () => {
    expect(tradeOffChart({ ...SHOP, recommended: null })).toBeNull();
  });
});

test('No chart of a demo shop says anything of what is undefined, or claims to be to scale', () => {
  const scenes = DECISIONS.flatMap(([, decision]) => {
    const at = arrangementAt(decision, decision.recommended);
    return [
      coverageChart(decision),
      tradeOffChart(decision),
      at === undefined ? null : paybackChart(decision, at),
    ];
  }).flatMap((figure) => (figure === null ? [] : [figure.scene]));
  expect(scenes.length).toBeGreaterThan(5);
  for (const scene of scenes) {
    expect(faultsInWords(scene)).toEqual([]);
    expect(scene.toScale).toBe(false);
  }
});
