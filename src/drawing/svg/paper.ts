import type { Point } from '../scene.ts';

/** Where mm in the shop come to lie on the paper, mm from its upper left. */
export interface Paper {
  /** mm in the shop that a mm on paper shows */
  readonly scale: number;
  /** of the paper's upper left, in the shop */
  readonly left: number;
  readonly high: number;
}

/** A length on paper as SVG writes it: hundredths of a millimeter are finer than any printer. */
export const length = (mm: number): string => String(Math.round(mm * 100) / 100);

export const onPaper = ({ scale, left, high }: Paper, [x, y]: Point): Point => [
  (x - left) / scale,
  (high - y) / scale,
];

/** Points as the commands of a path. */
export const pathOf = (points: readonly Point[], closed = false): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${length(x)} ${length(y)}`).join('') +
  (closed ? 'Z' : '');

/** Width of a text, nearly: letters of a sans serif are about half as wide as high. */
export const textWidth = (text: string, size: number): number => [...text].length * size * 0.56;

export const TEXT_SIZE = 3.2;
export const LINE_HEIGHT = 4.6;
