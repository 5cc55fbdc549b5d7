import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../../src/drawing/outline.ts';
import { arc, circle, line, type Panel, rectangle } from '../../../src/drawing/scene.ts';
import { onItsSide } from '../../../src/report/figures/on-its-side.ts';
import { expectClose } from '../../close-to.ts';
import { measureOf, panelOf } from '../../drawing/scenes.ts';

const PANEL: Panel = panelOf(
  [
    line('nose', [-20, 80], [20, 80]),
    rectangle('part', [-30, 10], [30, 50]),
    circle('faceplate', [5, 7], 40),
    arc('sweep', [0, 0], 60, 30, 110),
  ],
  {
    marks: [{ at: [3, 90], name: 'spindle nose', stands: 'above' }],
    dimensions: [measureOf({ from: [40, 0], to: [40, 80], side: 'right' })],
    labels: [{ at: [1, 2], text: 'words', side: 'left' }],
  },
);

describe('A panel laid over', () => {
  const over = onItsSide(PANEL);

  it('has to the right what was above', () => {
    expect(over.shapes[0]?.form).toMatchObject({
      points: [
        [80, -20],
        [80, 20],
      ],
    });
    expect(over.marks).toEqual([{ at: [90, 3], name: 'spindle nose', stands: 'right' }]);
    expect(over.dimensions[0]).toMatchObject({ from: [0, 40], to: [80, 40], side: 'above' });
    expect(over.labels).toEqual([{ at: [2, 1], text: 'words', side: 'below' }]);
  });

  it('has arcs where their points come to lie', () => {
    const [before, after] = [PANEL, over].map(({ shapes }) => shapes[3]?.form);
    if (before?.kind !== 'arc' || after?.kind !== 'arc') throw new Error('no arc');
    const ends = [outlineOf(before, 5), outlineOf(after, 5)].map((points) => [points[0], points.at(-1)]);
    const [[first, last] = [], [newFirst, newLast] = []] = ends;
    for (const [old, now] of [
      [first, newLast],
      [last, newFirst],
    ]) {
      expectClose(now?.[0] ?? 0, old?.[1] ?? Number.NaN, { absolute: 1e-9 });
      expectClose(now?.[1] ?? 0, old?.[0] ?? Number.NaN, { absolute: 1e-9 });
    }
  });

  it('is as it was when it is laid over once more', () => {
    expect(onItsSide(over)).toEqual(PANEL);
  });
});
