import type { MaterialId } from '../mechanics/forces/materials.ts';
import type { AssumptionOverrides } from './assumptions.ts';

/**
 * What the user said, in one system of units (mm, kg, N·m, degrees, kW, min), unknowns included.
 * The same shape as the answers file: written out as it stands it is an answers file in mm.
 */

/** A number, a range that it lies in, or not known. */
export type Uncertain = number | readonly [low: number, high: number] | 'unknown';

/** One of a few kinds, or not known. */
export type Choice<Kind extends string> = Kind | 'unknown';

export const SHAPES = ['block', 'round'] as const;
export const STANDS = ['upright', 'lying'] as const;
export const MOTIONS = ['positional', 'simultaneous', 'surfaces'] as const;
export const HOLDINGS = ['fixture', 'vise', 'chuck', 'collet'] as const;
export const CUT_SIZES = ['light', 'medium', 'heavy'] as const;
export const LOADINGS = ['by-hand', 'pallet', 'robot'] as const;
export const SWAPS = ['zero-point', 'keyed', 'trammed'] as const;
export const CAMS = ['none', 'threeAxis', 'fiveAxis'] as const;
export const MEASURES = [
  'coverage',
  'viseStations',
  'payback',
  'price',
  'floorArea',
  'swapHours',
  'margin',
] as const;

export type Shape = (typeof SHAPES)[number];
export type Stands = (typeof STANDS)[number];
export type Motion = (typeof MOTIONS)[number];
export type HoldingKind = (typeof HOLDINGS)[number];
export type CutSize = (typeof CUT_SIZES)[number];
export type Loading = (typeof LOADINGS)[number];
export type Swap = (typeof SWAPS)[number];
export type Cam = (typeof CAMS)[number];
/** What arrangements are compared on and the user can put in order. */
export type Measure = (typeof MEASURES)[number];

/** A direction from which the tool comes. Angles are measured from the part's axis, in degrees. */
export type Approach =
  | 'top'
  | 'sides'
  | 'around'
  | { readonly slant: Uncertain }
  | { readonly undercut: Uncertain };

export interface CutDetail {
  readonly diameter: Uncertain;
  readonly teeth: Uncertain;
  readonly ap: Uncertain;
  readonly ae: Uncertain;
  /** mm per tooth */
  readonly fz: Uncertain;
  /** m/min */
  readonly vc: Uncertain;
  readonly interrupted: boolean;
}
export type Cut = Choice<CutSize> | CutDetail;

export interface Drill {
  readonly diameter: Uncertain;
  /** mm/rev */
  readonly feed: Uncertain;
  /** distance of the hole from the axis that has to hold it, mm */
  readonly offset: Uncertain;
}

export interface Contour {
  /** mm/min */
  readonly feed: Uncertain;
  readonly radius: Uncertain;
  readonly chordError: Uncertain;
}

interface Holding {
  readonly by: Choice<HoldingKind>;
  readonly diameter: Uncertain;
  readonly height: Uncertain;
  readonly mass: Uncertain;
}

interface Yearly {
  readonly quantity: Uncertain;
  readonly lots: Uncertain;
  readonly setups: Uncertain;
  readonly setupMinutes: Uncertain;
  readonly cycleMinutes: Uncertain;
  readonly handlingMinutes: Uncertain;
}

export interface Part {
  readonly name: string;
  readonly shape: Choice<Shape>;
  /** block: length, width, height as it stands */
  readonly size: readonly [Uncertain, Uncertain, Uncertain];
  /** round */
  readonly diameter: Uncertain;
  /** round */
  readonly length: Uncertain;
  /** round; a block stands upright */
  readonly stands: Choice<Stands>;
  readonly material: Choice<MaterialId>;
  /** kg; unknown: size × density × fill */
  readonly mass: Uncertain;
  /** share of the block or cylinder that is material, 0 to 1 */
  readonly fill: Uncertain;
  readonly approaches: readonly Approach[] | 'unknown';
  readonly bottom: boolean | 'unknown';
  readonly motion: Choice<Motion>;
  readonly depthTop: Uncertain;
  readonly depthSide: Uncertain;
  readonly lowestSideFeature: Uncertain;
  /** ±, between faces */
  readonly tolerance: Uncertain;
  readonly holding: Holding;
  readonly eccentricity: Uncertain;
  readonly cut: Cut;
  /** of the moving axes; only simultaneous work asks for it */
  readonly contourCut: Cut;
  readonly drill: Drill | null;
  readonly contour: Contour;
  readonly yearly: Yearly;
  readonly must: boolean;
}

export interface Lifting {
  readonly by: 'hand' | 'hoist' | 'forklift';
  readonly capacity: Uncertain;
  readonly hookHeight: Uncertain;
  readonly legs: Uncertain;
  readonly slingAngle: Uncertain;
  readonly slingHeight: Uncertain;
  readonly rigging: Uncertain;
  readonly loadCenter: Uncertain;
  readonly people: Uncertain;
  readonly reach: Uncertain;
  readonly from: Uncertain;
  readonly lift: Uncertain;
}

export interface Shop {
  /** id of the mill that is owned already */
  readonly machine: string | 'none' | 'unknown';
  readonly bay: readonly [Uncertain, Uncertain];
  readonly ceiling: Uncertain;
  readonly doorway: { readonly width: Uncertain; readonly height: Uncertain };
  readonly doorSill: Uncertain;
  /** kPa */
  readonly floorRating: Uncertain;
  readonly power: { readonly kVA: Uncertain; readonly volts: Uncertain; readonly phases: Uncertain };
  /** L/min, bar */
  readonly air: { readonly flow: Uncertain; readonly bar: Uncertain };
  readonly lifting: readonly Lifting[] | 'unknown';
}

export interface Work {
  readonly threeAxisShare: Uncertain;
  readonly switchesPerWeek: Uncertain;
  readonly visesWanted: Uncertain;
  readonly vise: { readonly width: Uncertain; readonly length: Uncertain; readonly height: Uncertain };
  readonly loading: Choice<Loading>;
  readonly swap: Choice<Swap>;
}

export interface Money {
  readonly budget: Uncertain;
  readonly shopRate: Uncertain;
  readonly years: Uncertain;
  readonly interest: Uncertain;
  readonly rigging: Uncertain;
  readonly training: Uncertain;
  readonly yearlyCosts: Uncertain;
  readonly residual: Uncertain;
  /** a plate under the rotary or the vises, each */
  readonly plates: Uncertain;
}

export interface Answers {
  readonly format: 'fivesides-answers/1';
  readonly units: 'mm';
  readonly currency: string | 'unknown';
  readonly parts: readonly Part[];
  readonly tools: {
    readonly shortest: Uncertain;
    readonly longest: Uncertain;
    readonly largestCutter: Uncertain;
  };
  readonly shop: Shop;
  readonly work: Work;
  readonly money: Money;
  readonly control: { readonly cam: Choice<Cam> };
  readonly matters: readonly Measure[];
  readonly assume: AssumptionOverrides;
}
