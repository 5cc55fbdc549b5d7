import type { Machine, Mounting, Rotary } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { Verdict } from '../decision.ts';

export type Loose<T> = T extends readonly unknown[]
  ? T
  : T extends object
    ? { readonly [Key in keyof T]?: Loose<T[Key]> | undefined }
    : T;

/** What an example changes in the example shop (test/rules/example-shop.ts): one part, one rotary, one mill. */
export interface ExampleGiven {
  readonly part?: Loose<Part>;
  readonly rotary?: Loose<Rotary>;
  readonly machine?: Loose<Machine>;
  readonly tools?: Loose<Answers['tools']>;
  readonly work?: Loose<Answers['work']>;
  readonly money?: Loose<Answers['money']>;
  readonly shop?: Loose<Answers['shop']>;
  readonly mounting?: Mounting;
  /** millimeters that clearance additions raise the nose */
  readonly raised?: number;
  /** millimeters that they make the machine higher */
  readonly heightened?: number;
  /** lifts of the rotary a year, on or off */
  readonly swaps?: number;
  /** millimeters of plates under the rotary */
  readonly plates?: number;
  readonly place?: {
    readonly x?: number;
    readonly y?: number;
    readonly turned?: boolean;
  };
}

/** A case with its verdict: run by the tests, printed by the explanations. */
export interface CheckExample {
  readonly what: string;
  readonly given: ExampleGiven;
  readonly verdict: Verdict;
  /** left out where the verdict is open */
  readonly need?: number;
  readonly have?: number;
}
