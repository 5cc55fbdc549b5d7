import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { LOOKS } from '../../src/drawing/look.ts';
import { arc, circle, line, rectangle, type Scene } from '../../src/drawing/scene.ts';
import { sceneSvg } from '../../src/drawing/svg/scene-svg.ts';
import { expectClose } from '../close-to.ts';
import { LENGTHS, measureOf, panelOf, sceneOf } from './scenes.ts';

const HOSTILE = `a <b> & "c" 'd' ]]> <!-- &amp; \u202f`;

function read(scene: Scene): Document {
  const { window } = new JSDOM('');
  const document = new window.DOMParser().parseFromString(sceneSvg(scene, LENGTHS), 'image/svg+xml');
  expect(document.querySelector('parsererror')?.textContent).toBeUndefined();
  return document;
}

const attribute = (document: Document, selector: string, name: string): string =>
  document.querySelector(selector)?.getAttribute(name) ?? '';

describe('An SVG', () => {
  const scene = sceneOf(
    panelOf(
      [
        rectangle('part', [0, 0], [200, 100]),
        circle('sweep', [0, 0], 90),
        rectangle('plate', [0, 0], [9, 9]),
      ],
      {
        marks: [{ at: [100, 50], name: 'the part', stands: 'on' }],
        dimensions: [measureOf({ from: [0, 0], to: [200, 0], text: '200 mm' })],
      },
    ),
  );

  it('is well-formed, and says its title and description first', () => {
    const root = read(scene).documentElement;
    expect(root.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect([...root.children].slice(0, 2).map(({ tagName, textContent }) => [tagName, textContent])).toEqual([
      ['title', 'A scene'],
      ['desc', 'Something that is drawn.'],
    ]);
    const named = root.getAttribute('aria-labelledby')?.split(' ') ?? [];
    expect(named.map((id) => root.querySelector(`#${id}`)?.tagName)).toEqual(['title', 'desc']);
  });

  it('holds text from outside as text', () => {
    const panel = panelOf([line('table', [0, 0], [100, 0])], {
      title: HOSTILE,
      marks: [{ at: [0, 0], name: HOSTILE, stands: 'above' }],
      dimensions: [measureOf({ name: HOSTILE, text: HOSTILE })],
      labels: [{ at: [0, 0], text: HOSTILE, side: 'left' }],
    });
    const hostile = { ...sceneOf(panel), title: HOSTILE, description: HOSTILE, notDrawn: [HOSTILE] };
    const document = read(hostile);
    expect(document.querySelector('title')?.textContent).toBe(HOSTILE);
    expect(document.querySelector('desc')?.textContent).toBe(HOSTILE);
    const texts = [...document.querySelectorAll('text')].map(({ textContent }) => textContent);
    expect(texts.filter((text) => text?.includes('<b> & "c"')).length).toBeGreaterThanOrEqual(6);
  });

  it('is in millimeters, at the scale that it says', () => {
    const document = read(scene);
    const scale = Number(/1 : (\d+)/.exec(document.documentElement.textContent ?? '')?.[1]);
    expect([1, 2, 5, 10]).toContain(scale);
    expectClose(Number(attribute(document, 'circle', 'r')) * scale, 90, { absolute: 0.005 * scale });
    const [, , width] = attribute(document, 'svg', 'viewBox').split(' ');
    expect(attribute(document, 'svg', 'width')).toBe(`${width}mm`);
    const corners = [
      ...attribute(document, 'path[fill="url(#fivesides-rising)"]', 'd').matchAll(/[ML]([\d.]+) ([\d.]+)/g),
    ];
    const xs = corners.map(([, x]) => Number(x));
    expectClose((Math.max(...xs) - Math.min(...xs)) * scale, 200, { absolute: 0.02 * scale });
  });

  it('draws an arc from its one end to the other, the way that it runs', () => {
    const panel = panelOf([arc('limit', [0, 0], 50, 0, 90), line('axis', [-50, -50], [50, 50])]);
    const d = attribute(read(sceneOf(panel)), 'path[stroke-dasharray="2.4 1.2"]', 'd');
    const [x1, y1, r, , , , sweep, x2, y2] = (d.match(/-?[\d.]+/g) ?? []).map(Number);
    expect([r, sweep]).toEqual([50, 0]);
    expect([(x2 ?? 0) - (x1 ?? 0), (y2 ?? 0) - (y1 ?? 0)]).toEqual([-50, -50]);
  });

  it('has no color but black and white', () => {
    const colors = [...sceneSvg(scene, LENGTHS).matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(
      ([, color]) => color,
    );
    expect(new Set(colors.filter((color) => !color?.startsWith('url(')))).toEqual(
      new Set(['#000', '#fff', 'none']),
    );
  });

  it('holds the patterns that it uses and no others', () => {
    const document = read(scene);
    const patterns = [...document.querySelectorAll('pattern')].map(({ id }) => id);
    const used = [...sceneSvg(scene, LENGTHS).matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id);
    expect(patterns).toEqual(['fivesides-rising', 'fivesides-level']);
    expect(new Set(used)).toEqual(new Set(patterns));
  });

  it('is the same for the same scene', () => {
    expect(sceneSvg(structuredClone(scene), LENGTHS)).toBe(sceneSvg(scene, LENGTHS));
  });
});

it('What stands on each other differs by its hatching', () => {
  const things = ['plate', 'housing', 'fixture', 'part', 'vise'] as const;
  expect(new Set(things.map((thing) => LOOKS[thing].hatch)).size).toBe(things.length);
});
