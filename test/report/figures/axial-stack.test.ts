import { describe, expect, it, test } from 'vitest';
import type { Dimension, Panel } from '../../../src/drawing/scene.ts';
import { elevation } from '../../../src/report/figures/elevation.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf, spanOf } from './demo-figures.ts';
import { levelSpindle } from './level-spindle.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const LEVEL: readonly (readonly [string, Decision])[] = [
  ['shop-school-workshop, level spindles', levelSpindle('shop-school-workshop')],
  ['shop-nothing-passes, level spindles', levelSpindle('shop-nothing-passes')],
];

const axial = drawnOf([...DECISIONS, ...LEVEL], elevation).filter(({ arrangement }) =>
  arrangement.mounting.startsWith('axis-'),
);
const builtIn = drawnOf(LEVEL, elevation).filter(({ arrangement }) => arrangement.mounting === 'built-in');

const isUpright = (arrangement: { readonly machine: string }): boolean => arrangement.machine === 'yew';
const measuresOf = (panels: readonly Panel[]): readonly Dimension[] =>
  panels.flatMap(({ dimensions }) => dimensions);
const named = (panels: readonly Panel[], name: string): Dimension | undefined =>
  measuresOf(panels).find((each) => each.name === name);

test('Single axes are drawn under both kinds of spindle, and a tilting table before a level one', () => {
  expect(axial.filter(({ arrangement }) => isUpright(arrangement)).length).toBeGreaterThan(0);
  expect(axial.filter(({ arrangement }) => !isUpright(arrangement)).length).toBeGreaterThan(3);
  expect(builtIn.length).toBeGreaterThan(0);
});

test('Nothing with a single axis is left without a stack where its sizes are known', () => {
  const missing = [...DECISIONS, ...LEVEL].flatMap(([shop, decision]) =>
    decision.arrangements.flatMap((arrangement, index) =>
      arrangement.mounting.startsWith('axis-') &&
      elevation(decision, { arrangement, path: ['arrangements', index] }) === null
        ? [`${arrangement.id} of ${shop}`]
        : [],
    ),
  );
  expect(missing).toEqual([]);
});

describe.each([...axial, ...builtIn])('requirement 25: the stack of $what', ({ decision, scene }) => {
  it('has measures as long as the numbers of the verdict', () => expectTrueMeasures(scene, decision));

  it('says nothing of what is undefined, and has no empty words', () => {
    expect(faultsInWords(scene)).toEqual([]);
  });
});

describe.each(axial.filter(({ arrangement }) => !isUpright(arrangement)))(
  'The level axis of $what',
  ({ scene }) => {
    const [across, along] = scene.panels as [Panel, Panel];

    it('is seen across and along, at one height', () => {
      expect(scene.panels.map(({ title }) => title)).toEqual([
        'Across the rotary axis',
        'Along the rotary axis, while it turns',
      ]);
      const center = named([across], 'center height of the rotary')?.to[1];
      const sweep = spanOf(along, 'sweep');
      if (sweep.high > sweep.low)
        expectClose((sweep.low + sweep.high) / 2, center ?? Number.NaN, { absolute: 1e-9 });
    });

    it('has the nose at the height that turning needs, and over the work at that of reaching it', () => {
      for (const [panel, name] of [
        [along, 'tilting under the tool, needed'],
        [across, 'reach above the work, needed'],
      ] as const) {
        const need = named([panel], name);
        const noses = panel.shapes.flatMap(({ thing, form }) =>
          thing === 'nose' && form.kind === 'line' ? form.points.map(([, y]) => y) : [],
        );
        if (need === undefined || noses.length === 0) continue;
        expectClose(Math.min(...noses.map((y) => Math.abs(y - need.to[1]))), 0, { absolute: 1e-6 });
      }
    });

    it('has fixture and part in front of the faceplate, as long as what stands out', () => {
      const out = named([across], 'tailstock, needed');
      const parts = spanOf(across, 'part');
      if (out === undefined || parts.right === parts.left) return;
      const [near, far] = [out.from[0], out.to[0]].sort((a, b) => a - b) as [number, number];
      expectClose(Math.min(Math.abs(parts.right - far), Math.abs(parts.left - near)), 0, { absolute: 1e-6 });
    });
  },
);

describe.each(axial.filter(({ arrangement }) => isUpright(arrangement)))(
  'The upright axis of $what',
  ({ scene }) => {
    const [panel] = scene.panels as [Panel];

    it('has the table below, the spindle to the right, between its lowest and highest place', () => {
      const [low, high] = ['lowest height of the spindle', 'highest height of the spindle'].map((name) =>
        named([panel], name),
      );
      expect(low?.from).toEqual(high?.from);
      expectClose(low?.from[1] ?? 0, spanOf(panel, 'table').high, { absolute: 1e-9 });
      const nose = spanOf(panel, 'nose');
      const part = spanOf(panel, 'part');
      if (part.right > part.left && nose.right > nose.left) expect(nose.left).toBeGreaterThan(part.left);
    });

    it('names what is not drawn', () => {
      expect(scene.notDrawn.join()).toContain('The body of the rotary below its faceplate is not drawn');
    });
  },
);

test.each(builtIn)('A table built in before a level spindle lies over: $what', ({ scene }) => {
  for (const need of measuresOf(scene.panels).filter(({ name }) => name.includes('reach above'))) {
    expect(['above', 'below']).toContain(need.side);
  }
  expect(scene.description).toContain('the spindle on the right');
});
