import { describe, expect, it, test } from 'vitest';
import type { Panel, Scene } from '../../../src/drawing/scene.ts';
import { arrangementAt } from '../../../src/report/checks-at.ts';
import { elevation } from '../../../src/report/figures/elevation.ts';
import { picturedArrangement } from '../../../src/report/figures/pictured.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf } from './demo-figures.ts';
import { expectTrueMeasures, faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const SHOP = new Map(DECISIONS).get('shop') as Decision;

function sceneOf(decision: Decision, id: string | null = null): Scene {
  const at = id === null ? picturedArrangement(decision) : arrangementAt(decision, id);
  const figure = at === undefined ? null : elevation(decision, at);
  if (figure === null) throw new Error(`nothing is drawn of ${id}`);
  return figure.scene;
}

/** What tilts under an upright spindle; the others have a test of their own. */
const allDrawn = drawnOf(DECISIONS, elevation).filter(
  ({ arrangement: { mounting, machine } }) => !mounting.startsWith('axis-') && machine !== 'elder',
);

const things = (panel: Panel, thing: string) => panel.shapes.filter((shape) => shape.thing === thing);
const points = (panel: Panel, thing: string) =>
  things(panel, thing).flatMap(({ form }) => ('points' in form ? form.points : []));
const measureIn = (panel: Panel, name: string) => panel.dimensions.find((each) => each.name === name);

describe.each(allDrawn)('requirement 25: the elevation of $what', ({ decision, scene }) => {
  it('has measures as long as the numbers of the verdict', () => expectTrueMeasures(scene, decision));

  it('says nothing of what is undefined, and has no empty words', () => {
    expect(faultsInWords(scene)).toEqual([]);
  });

  it('draws the nose where the verdict needs it', () => {
    const needs = scene.panels.flatMap((panel) =>
      [
        'reach above the work, needed',
        'reach down to the work, needed',
        'tilting under the tool, needed',
      ].flatMap((name) => {
        const need = measureIn(panel, name);
        return need === undefined ? [] : [{ need, noses: points(panel, 'nose').map(([, y]) => y) }];
      }),
    );
    const parts = decision.inputs.answers.parts.filter(({ name }) => scene.description.includes(name));
    if (parts.some(({ motion }) => motion === 'simultaneous')) return;
    for (const { need, noses } of needs) {
      if (noses.length === 0) continue;
      const nearest = Math.min(...noses.map((y) => Math.abs(y - need.to[1])));
      expectClose(nearest, 0, { absolute: 1e-6 });
    }
  });
});

test('Every demo shop but the one with nothing to tilt has something drawn', () => {
  expect(new Set(allDrawn.map(({ shop }) => shop)).size).toBeGreaterThanOrEqual(5);
});

describe('The elevation of the demo shop', () => {
  const scene = sceneOf(SHOP);
  const [level, side, sweep] = scene.panels as [Panel, Panel, Panel];

  it('shows the stack level, on its side, and while it tilts', () => {
    expect(scene.panels.map(({ title }) => title)).toEqual([
      'Level, as it is clamped',
      'On its side, tilted square',
      'While it tilts, from level to the most',
    ]);
    for (const panel of scene.panels) {
      for (const thing of ['table', 'base', 'faceplate', 'fixture', 'part']) {
        expect(things(panel, thing), `${thing} in ${panel.title}`).toHaveLength(1);
      }
    }
  });

  it('stacks center height, faceplate, fixture and part without a gap', () => {
    const chain = ['center height of the rotary', 'faceplate above the tilt axis', 'fixture', 'part'].map(
      (name) => measureIn(level, name),
    );
    expect(chain[0]?.from[1]).toBe(0);
    chain.slice(1).forEach((each, index) => {
      expect(each?.from[1]).toBe(chain[index]?.to[1]);
    });
    expect(Math.max(...points(level, 'part').map(([, y]) => y))).toBe(chain.at(-1)?.to[1]);
  });

  it('turns the part about the tilt axis without changing its size', () => {
    const extent = (panel: Panel, axis: 0 | 1): number => {
      const values = points(panel, 'part').map((point) => point[axis]);
      return Math.max(...values) - Math.min(...values);
    };
    expectClose(extent(side, 0), extent(level, 1), { absolute: 1e-9 });
    expectClose(extent(side, 1), extent(level, 0), { absolute: 1e-9 });
  });

  it('marks the tightest measure, and no other', () => {
    const tight = scene.panels.flatMap(({ dimensions }) => dimensions.filter((each) => each.tight));
    expect(tight.map(({ name }) => name)).toEqual(['tilting under the tool, margin']);
    expect(sweep.dimensions).toContain(tight[0]);
  });

  it('lets the sweep touch the height that the check reckons with', () => {
    const need = measureIn(sweep, 'tilting under the tool, needed');
    const { tools } = SHOP.inputs.answers;
    const below = SHOP.inputs.assume.approach + Number(tools.longest);
    const [arc] = things(sweep, 'sweep').map(({ form }) => form);
    if (arc?.kind !== 'arc') throw new Error('no arc');
    expectClose(arc.center[1] + arc.radius, (need?.to[1] ?? 0) - below, { absolute: 1e-6 });
  });
});

test('A size that is not known is not drawn, and said so', () => {
  const parts = SHOP.inputs.answers.parts.map((part) => ({
    ...part,
    holding: { ...part.holding, height: [40, 60] as const },
  }));
  const changed: Decision = {
    ...SHOP,
    inputs: { ...SHOP.inputs, answers: { ...SHOP.inputs.answers, parts } },
  };
  const scene = sceneOf(changed, SHOP.recommended);
  expect(scene.panels.flatMap((panel) => [...things(panel, 'fixture'), ...things(panel, 'part')])).toEqual(
    [],
  );
  expect(scene.panels.flatMap((panel) => things(panel, 'sweep'))).toEqual([]);
  expect(scene.notDrawn.join()).toContain('Not drawn, because it is not known: the fixture');
  expect(scene.panels.flatMap(({ dimensions }) => dimensions.map(({ name }) => name))).not.toContain('part');
});
