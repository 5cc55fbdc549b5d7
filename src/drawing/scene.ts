import type { Bars } from './bars.ts';
import type { Thing } from './look.ts';

/**
 * A picture as data, before anything draws it. Lengths are mm in the shop, x to the right, y up; how large they come
 * out is for the drawers to say. Whatever it tells is in its words too: title, description, names, numbers as text.
 */
export interface Scene {
  /** short, in a file name: letters, digits, hyphens */
  readonly name: string;
  readonly title: string;
  /** all that it shows, in sentences, for whoever does not see it */
  readonly description: string;
  /** drawn beside or below each other, at one scale */
  readonly panels: readonly Panel[];
  /** false: a chart, whose lengths are no lengths in the shop */
  readonly toScale: boolean;
  /** held against each other: on a sheet side by side, however wide that is */
  readonly abreast?: boolean;
  /** what is not drawn because it is not known, a sentence each */
  readonly notDrawn: readonly string[];
}

export interface Panel {
  readonly title: string;
  readonly shapes: readonly Shape[];
  readonly marks: readonly Mark[];
  readonly dimensions: readonly Dimension[];
  readonly labels: readonly Label[];
  /** a panel of bars has nothing else in it */
  readonly bars?: Bars;
}

/** mm; x to the right, y up. */
export type Point = readonly [x: number, y: number];

export type Form =
  | { readonly kind: 'line'; readonly points: readonly Point[] }
  | { readonly kind: 'polygon'; readonly points: readonly Point[] }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number }
  /** counterclockwise, in degrees from the right */
  | {
      readonly kind: 'arc';
      readonly center: Point;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    };

export interface Shape {
  readonly thing: Thing;
  readonly form: Form;
}

export const SIDES = ['left', 'right', 'above', 'below'] as const;
export type Side = (typeof SIDES)[number];

/** Says what a thing is: a number in the picture, its name in the list beside it. */
export interface Mark {
  readonly at: Point;
  readonly name: string;
  /** where the number stands; `on`: on the thing itself */
  readonly stands: Side | 'on';
}

/**
 * A measure drawn to scale: upright where it stands to the left or right, level above or below. From the first point
 * to the second it is what its number says, downward and to the left less than nothing.
 */
export interface Dimension {
  readonly name: string;
  /** the number as it is written */
  readonly text: string;
  /** where the number stands in the decision */
  readonly path: readonly (string | number)[];
  readonly from: Point;
  readonly to: Point;
  readonly side: Side;
  /** what the picture is about: drawn heavier, and said to be so */
  readonly tight: boolean;
}

/** Words in the picture: what stands at an axis of a chart. */
export interface Label {
  readonly at: Point;
  readonly text: string;
  readonly side: Side | 'on';
}

export const line = (thing: Thing, ...points: readonly Point[]): Shape => ({
  thing,
  form: { kind: 'line', points },
});
export const polygon = (thing: Thing, ...points: readonly Point[]): Shape => ({
  thing,
  form: { kind: 'polygon', points },
});
/** From its corner at the lower left to the one at the upper right. */
export const rectangle = (thing: Thing, [left, low]: Point, [right, high]: Point): Shape =>
  polygon(thing, [left, low], [right, low], [right, high], [left, high]);
export const circle = (thing: Thing, center: Point, radius: number): Shape => ({
  thing,
  form: { kind: 'circle', center, radius },
});
export const arc = (thing: Thing, center: Point, radius: number, from: number, to: number): Shape => ({
  thing,
  form: { kind: 'arc', center, radius, from, to },
});
