import type { Dimension, Panel, Scene, Shape } from '../../src/drawing/scene.ts';

export const panelOf = (shapes: readonly Shape[], rest: Partial<Panel> = {}): Panel => ({
  title: 'A panel',
  shapes,
  marks: [],
  dimensions: [],
  labels: [],
  ...rest,
});

export const sceneOf = (...panels: readonly Panel[]): Scene => ({
  name: 'a-scene',
  title: 'A scene',
  description: 'Something that is drawn.',
  panels,
  toScale: true,
  notDrawn: [],
});

export const measureOf = (rest: Partial<Dimension>): Dimension => ({
  name: 'length',
  text: '100 mm',
  path: ['count'],
  from: [0, 0],
  to: [100, 0],
  side: 'below',
  tight: false,
  ...rest,
});

export const LENGTHS = { lengthText: (mm: number): string => `${mm} mm` };
