import type { Span, TipBox } from './tip-box.ts';

function unionSpan(spans: readonly Span[]): Span {
  return [Math.min(...spans.map(([low]) => low)), Math.max(...spans.map(([, high]) => high))];
}

/**
 * The smallest box that holds all of the boxes, mm.
 *
 * Formula: [min of the low ends, max of the high ends], for u, v and w
 * Symbols: boxes the tip boxes, mm
 * Valid: one box at least
 * Source: definition
 * Example: unionBox([{ u: [0, 1], v: [0, 1], w: [0, 1] }, { u: [-1, 0], v: [2, 3], w: [0, 1] }]) → { u: [-1, 1], v: [0, 3], w: [0, 1] }
 */
export function unionBox(boxes: readonly TipBox[]): TipBox {
  if (boxes.length === 0) throw new RangeError('There is no box around no boxes.');
  return {
    u: unionSpan(boxes.map((box) => box.u)),
    v: unionSpan(boxes.map((box) => box.v)),
    w: unionSpan(boxes.map((box) => box.w)),
  };
}
