import type { Class, Machine, Mounting, Rotary } from '../../catalog/catalog.ts';
import type { Interval } from '../../quantities/interval.ts';
import type { Motion } from '../../questions/answers.ts';
import type { Assumed } from '../../questions/assumptions.ts';
import type { MoneyCase } from '../money/money-case.ts';
import type { Keys, Memo } from './memo.ts';
import type { SiteCase } from './site-case.ts';
import type { Hanging, Value } from './value.ts';

/** What a need or a have can depend on. Tools, assumptions and the shop are the same in a whole decision. */
export type Room =
  | 'part'
  | 'rotary'
  | 'mounting'
  | 'machine'
  | 'additions'
  | 'plates'
  | 'turn'
  | 'place'
  | 'price'
  | 'swaps';

export type ApproachCase =
  | { readonly kind: 'top' | 'sides' | 'around' }
  | { readonly kind: 'slant' | 'undercut'; readonly angle: Value };

/** One family with every choice among kinds made: an unknown kind gives several of these. */
export interface PartCase {
  readonly key: string;
  /** of its family among those of the decision, as kept work counts them */
  readonly slot: number;
  readonly name: string;
  readonly shape: 'block' | 'round';
  readonly motion: Motion;
  readonly heldByCollet: boolean;
  readonly interrupted: boolean;
  readonly approaches: readonly ApproachCase[];
  /** kinds that the user does not know */
  readonly kinds: readonly Hanging[];
  /** the extent along X and Y as it stands and its height; round and upright: the diameter twice */
  readonly length: Value;
  readonly width: Value;
  readonly height: Value;
  readonly planRadius: Value;
  readonly eccentricity: Value;
  readonly mass: Value;
  /** greatest polar angle of the approaches */
  readonly tilt: Value;
  readonly fixtureDiameter: Value;
  readonly fixtureHeight: Value;
  readonly fixtureMass: Value;
  readonly depthTop: Value;
  readonly depthSide: Value;
  readonly lowestSideFeature: Value;
  readonly tolerance: Value;
  readonly brakeSafety: Value;
  readonly cut: CutCase;
  readonly contourCut: CutCase;
  readonly drillThrust: Value | null;
  readonly drillOffset: Value | null;
  readonly contourFeed: Value;
  readonly contourRadius: Value;
  readonly chordError: Value;
}

/** What a cut asks of rotary and spindle. */
export interface CutCase {
  readonly force: Value;
  readonly power: Value;
  readonly torque: Value;
  readonly speed: Value;
}

/**
 * How gravity lies to a rotary. `tool`: along the tool, on a vertical spindle. On a horizontal one the tool is level:
 * `across`: the tilt axis is level too; `along`: the tilt axis, or the only axis there is, stands upright.
 */
export type Gravity = 'tool' | 'across' | 'along';

/** A rotary, or the table that is built into a machine. */
export interface RotaryCase {
  readonly key: string;
  readonly class: Class;
  readonly axes: 1 | 2;
  readonly row: Rotary | null;
  readonly gravity: Gravity;
  readonly hasFaceplate: boolean;
  readonly hasCollet: boolean;
  readonly faceplate: Value;
  readonly collet: Value;
  readonly swing: Value;
  readonly centerHeight: Value;
  readonly faceOffset: Value;
  readonly tiltGreatest: Value;
  readonly tiltClearRadius: Value;
  readonly payloadLevel: Value;
  readonly payloadTilted: Value;
  readonly tiltMoment: Value;
  readonly brakeRotary: Value;
  readonly brakeTilt: Value;
  readonly driveRotary: Value;
  readonly driveTilt: Value;
  readonly inertia: Value;
  readonly speedRotary: Value;
  readonly accuracyRotary: Value;
  readonly accuracyTilt: Value;
  readonly baseAlong: Value;
  readonly baseAcross: Value;
  readonly baseCenterAlong: Value;
  readonly baseCenterAcross: Value;
  readonly tailstockLength: Value;
  readonly height: Value;
  readonly mass: Value;
  readonly airBar: Value;
}

export interface MachineCase {
  readonly key: string;
  readonly row: Machine;
  readonly builtIn: boolean;
  readonly travelX: Value;
  readonly travelY: Value;
  readonly tableX: Value;
  readonly tableY: Value;
  readonly tableLoad: Value;
  readonly slotCount: Value;
  readonly slotWidth: Value;
  readonly slotPitch: Value;
  readonly slotsAlong: 'x' | 'y' | 'unknown';
  readonly noseBottom: Value;
  readonly noseTop: Value;
  /** of a horizontal mill */
  readonly spindleBottom: Value;
  readonly spindleTop: Value;
  readonly reachLeft: Value;
  readonly reachRight: Value;
  readonly reachFront: Value;
  readonly reachRear: Value;
  readonly throat: Value;
  readonly noseDiameter: Value;
  readonly power: Value;
  readonly torque: Value;
  readonly speed: Value;
  readonly positioning: Value;
  readonly drivesFitted: Value;
  readonly drivesOffered: Value;
  readonly blocks: Value;
  readonly blocksLookAhead: Value;
  readonly blocksAhead: Value;
  readonly blocksAheadLookAhead: Value;
  readonly acceleration: Value;
  readonly tableHeight: Value;
  readonly footprintX: Value;
  readonly footprintY: Value;
  readonly standsHigh: Value;
  readonly serviceLeft: Value;
  readonly serviceRight: Value;
  readonly serviceFront: Value;
  readonly serviceRear: Value;
  readonly shipsLong: Value;
  readonly shipsWide: Value;
  readonly shipsHigh: Value;
  readonly mass: Value;
  readonly kVA: Value;
  readonly volts: Value;
  readonly phases: Value;
  readonly airFlow: Value;
  readonly airBar: Value;
}

/** What is the same for every arrangement. */
export interface ShopCase {
  readonly assume: Assumed;
  readonly toolShortest: Value;
  readonly toolLongest: Value;
  readonly largestCutter: Value;
  readonly viseWidth: Value;
  readonly viseLength: Value;
  readonly byHand: Value;
  /** vises beside the rotary; nobody says how many: each one counts */
  readonly visesWanted: Interval;
  /** the same; nobody says how many: any number of them */
  readonly visesAsked: Value;
  /** changes between three-axis and five-axis work */
  readonly switchesPerWeek: Value;
  /** of one lift of the rotary on or off */
  readonly swapMinutes: Value;
  readonly budget: Value;
  readonly platePrice: Value;
  readonly site: SiteCase;
  readonly money: MoneyCase;
}

/** Where the rotary stands and which way it is turned. */
export interface PlaceCase {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** Everything that one check is judged on. */
export interface Case {
  readonly keys: Keys;
  readonly memo: Memo;
  readonly shop: ShopCase;
  readonly machine: MachineCase;
  readonly rotary: RotaryCase;
  readonly mounting: Mounting | 'built-in';
  readonly part: PartCase | null;
  /** which way a built-in table lies, where nobody says */
  readonly orientation: readonly Hanging[];
  /** the same case with each part that was put on it */
  readonly withParts: Map<PartCase, Case>;
  /** by how much the clearance additions raise the nose above the table */
  readonly raised: Value;
  /** by how much they make the machine higher */
  readonly heightened: Value;
  readonly plateThickness: Value;
  readonly plateMass: Value;
  readonly place: PlaceCase;
  readonly price: Value;
  /** lifts of the rotary a year, on or off */
  readonly swaps: Value;
}
