import { isLevel } from '../../drawing/lanes.ts';
import type { Dimension, Point, Scene, Side } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, number } from '../blocks/inline.ts';
import { textOf } from '../blocks/inline-text.ts';
import { lookUp, type Path } from '../blocks/path.ts';
import { numberText } from '../blocks/value-text.ts';

/** A picture of a decision: what it shows as data, and the same in words. */
export interface Figure {
  readonly scene: Scene;
  /** what it says, for whoever does not see it */
  readonly words: readonly Inline[];
}

const SIGNS = { ascii: false };

/** A sentence as the drawers write it: plain text. */
export const drawnText = (sentence: readonly Inline[], decision: Decision): string =>
  textOf(sentence, decision, SIGNS);

/** What a picture says of things that nobody knows well enough to draw. Nothing is said of none. */
export const notKnown = (things: readonly string[]): readonly string[] =>
  things.length === 0 ? [] : [`Not drawn, because it is not known: ${things.join(', ')}.`];

/** Whether a length that is laid out anew is the one of a verdict: to a millionth of a millimeter. */
export const isSame = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

interface Measured {
  readonly name: readonly Inline[];
  /** where the number stands */
  readonly path: Path;
  readonly unit?: string;
  readonly from: Point;
  readonly side: Side;
  readonly tight?: boolean;
  /** how many mm of the picture one of its unit is; usually 1 */
  readonly times?: number;
}

/**
 * A measure that is as long as its number in the decision, from a point upward or to the right. None where nothing is
 * known, or only a range: what is not known is not drawn.
 */
export function measured(decision: Decision, measure: Measured): readonly Dimension[] {
  const { path, unit = 'mm', from, side, tight = false, times = 1 } = measure;
  const value = lookUp(decision, path);
  if (typeof value !== 'number' || !Number.isFinite(value)) return [];
  const [x, y] = from;
  const to: Point = isLevel({ side }) ? [x + value * times, y] : [x, y + value * times];
  const text = numberText(number(path, unit), decision);
  return [{ name: drawnText(measure.name, decision), text, path, from, to, side, tight }];
}
