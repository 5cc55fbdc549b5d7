import { JSDOM } from 'jsdom';
import { describe, expect, it, test } from 'vitest';
import type { Scene } from '../../../src/drawing/scene.ts';
import { sceneSvg } from '../../../src/drawing/svg/scene-svg.ts';
import type { Block } from '../../../src/report/blocks/block.ts';
import type { Figure } from '../../../src/report/figures/figure.ts';
import { figureRows } from '../../../src/report/figures/figure-rows.ts';
import { lengthText } from '../../../src/report/figures/length-text.ts';
import { wholeReport } from '../../../src/report/whole-report.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { levelSpindle } from './level-spindle.ts';

const figuresIn = (blocks: readonly Block[]): readonly Figure[] =>
  blocks.flatMap((block) =>
    block.kind === 'figure' ? [block.figure] : block.kind === 'details' ? figuresIn(block.blocks) : [],
  );

const SHOPS: readonly (readonly [string, Decision])[] = [
  ...demoDecisions(),
  ['shop-school-workshop, level spindles', levelSpindle('shop-school-workshop')],
];

const every = SHOPS.flatMap(([shop, decision]) =>
  figuresIn(wholeReport(decision)).map((figure) => ({
    what: `${figure.scene.name} of ${shop}`,
    decision,
    figure,
  })),
);

const { window } = new JSDOM('');
const read = (scene: Scene, decision: Decision): Document => {
  const svg = sceneSvg(scene, { lengthText: lengthText(decision) });
  return new window.DOMParser().parseFromString(svg, 'image/svg+xml');
};

const circlesIn = ({ panels }: Scene): readonly number[] =>
  panels.flatMap(({ shapes }) => shapes.flatMap(({ form }) => (form.kind === 'circle' ? [form.radius] : [])));

test('All kinds of figures are among them', () => {
  const names = new Set(every.map(({ figure }) => figure.scene.name));
  expect([...names].sort()).toEqual([
    'bay-and-doorway',
    'coverage-against-price',
    'coverage-against-swing',
    'margins',
    'payback-over-years',
    'stack-from-the-side',
    'table-from-above',
    'work-on-the-faceplate',
  ]);
});

describe.each(every)('requirement 25: $what', ({ decision, figure }) => {
  const { scene } = figure;
  const document = read(scene, decision);
  const texts = [...document.querySelectorAll('text')].map(({ textContent }) => textContent ?? '');
  const sketch = figureRows(figure, decision, { width: 120, ascii: false }).join('\n');

  it('is an SVG that is well-formed, with title and description', () => {
    expect(document.querySelector('parsererror')).toBeNull();
    expect(document.querySelector('svg > title')?.textContent).toBe(scene.title);
    expect(document.querySelector('svg > desc')?.textContent).toBe(scene.description);
    expect(scene.description.length).toBeGreaterThan(30);
  });

  it('has a line that shows its scale, on paper and on the screen, unless it is a chart', () => {
    expect(texts.some((text) => text.includes('in print at its own size'))).toBe(scene.toScale);
    expect(sketch.includes('one dot is')).toBe(scene.toScale);
  });

  it('has every number of its measures in its list, on paper and on the screen', () => {
    const written = texts.join(' ').replace(/\s+/g, ' ');
    const shown = sketch.replace(/\s+/g, ' ');
    for (const { name, text } of scene.panels.flatMap(({ dimensions }) => dimensions)) {
      const entry = `${name}: ${text}`.replace(/\s+/g, ' ');
      expect(written).toContain(entry);
      expect(shown).toContain(entry);
    }
  });

  it('has its circles round and at its scale', () => {
    const scale = Number(/1 : (\d+)/.exec(texts.join('\n'))?.[1]);
    const drawn = [...document.querySelectorAll('circle[stroke-linejoin]')].map((each) =>
      Number(each.getAttribute('r')),
    );
    const wanted = circlesIn(scene);
    expect(drawn).toHaveLength(wanted.length);
    expect(document.querySelectorAll('ellipse')).toHaveLength(0);
    wanted.forEach((radius, index) => {
      expectClose(drawn[index] ?? 0, scene.toScale ? radius / scale : radius, { absolute: 0.006 });
    });
  });

  it('has a name for every thing in it that is marked, once', () => {
    const names = new Set(scene.panels.flatMap(({ marks }) => marks.map(({ name }) => name)));
    for (const name of names) expect(texts.filter((text) => text.endsWith(`\u2002${name}`))).toHaveLength(1);
  });
});

test('Every figure of a report stands in it once', () => {
  for (const [shop, decision] of SHOPS) {
    const names = figuresIn(wholeReport(decision)).map(({ scene }) => scene.name);
    expect(names, shop).toEqual([...new Set(names)]);
  }
});
