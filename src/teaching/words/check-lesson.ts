/** How a check is drawn: a picture of the report, circles, a corner about the tilt axis, need and have as bars; or not, with the reason. */
export type Sketch =
  | { readonly as: 'picture' | 'circles' | 'corner' | 'bars' }
  | { readonly as: 'none'; readonly why: string };

/** A check as it is taught to somebody who knows three-axis work only. No digits: numbers are worked out. */
export interface CheckLesson {
  readonly plain: string;
  /** what people get wrong */
  readonly mistake: string;
  /** where it can hurt somebody */
  readonly careful?: string;
  readonly sketch: Sketch;
}

export const PICTURE: Sketch = { as: 'picture' };
export const CIRCLES: Sketch = { as: 'circles' };
export const CORNER: Sketch = { as: 'corner' };
export const BARS: Sketch = { as: 'bars' };
export const YES_OR_NO: Sketch = { as: 'none', why: 'It is a yes or a no, and that has no size to draw.' };
export const MONEY: Sketch = {
  as: 'none',
  why: 'It is about money: the tables of the report show what it is made of.',
};
