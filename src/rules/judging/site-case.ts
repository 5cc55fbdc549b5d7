import type { Coupling } from '../../mechanics/lifting/coupling-multiplier.ts';
import type { Value } from './value.ts';

/** A means of lifting. What a means by hand leaves out is assumed; the rest is not known. */
export type MeansCase =
  | {
      readonly by: 'hand';
      readonly people: Value;
      readonly reach: Value;
      readonly from: Value;
      readonly lift: Value;
      readonly coupling: Coupling;
    }
  | { readonly by: 'forklift'; readonly capacity: Value; readonly loadCenter: Value }
  | {
      readonly by: 'hoist';
      readonly capacity: Value;
      readonly rigging: Value;
      readonly legs: Value;
      readonly slingAngle: Value;
      readonly slingHeight: Value;
      readonly hookHeight: Value;
    };

export type HoistCase = Extract<MeansCase, { by: 'hoist' }>;

/** The building and what is in it. */
export interface SiteCase {
  /** id of the mill that stands in its bay already */
  readonly owned: string;
  readonly bay: readonly [Value, Value];
  readonly ceiling: Value;
  readonly doorWidth: Value;
  readonly doorHeight: Value;
  readonly doorSill: Value;
  readonly floorRating: Value;
  readonly kVA: Value;
  readonly volts: Value;
  readonly phases: Value;
  readonly airFlow: Value;
  readonly airBar: Value;
  /** nobody says what there is: what a trade has to be asked enters no verdict */
  readonly silent: { readonly floor: boolean; readonly power: boolean; readonly air: boolean };
  /** null: nobody says what means there are */
  readonly lifting: readonly MeansCase[] | null;
}
