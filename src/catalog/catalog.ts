/**
 * What can be bought, in mm, kg, N·m, degrees, kW. A value that a row lacks is 'unknown';
 * null is a plain "has none". The reader fills both in, so nothing here is optional.
 */
export type Stated = number | 'unknown';
type Pair = readonly [low: number, high: number];
export type StatedPair = Pair | 'unknown';

/** The lists of a catalog. */
export type List = 'rotaries' | 'machines';

export const ROTARY_CLASSES = ['collet-indexer', 'single-axis', 'single-support', 'trunnion'] as const;
export const MACHINE_KINDS = ['mill', 'convertible', 'five-axis'] as const;
export const MOUNTINGS = ['tilt-along-x', 'tilt-along-y', 'axis-along-x', 'axis-along-y'] as const;
/** Across a tilt axis along X: door and column, on a horizontal spindle downward and upward; along Y: left and right. */
export const LEANS = [
  'toward-door',
  'toward-column',
  'toward-left',
  'toward-right',
  'downward',
  'upward',
] as const;
export const FEATURES = [
  'toolCenterPoint',
  'rotatingWorkOffset',
  'tiltedWorkPlane',
  'spindleProbe',
  'toolSetter',
  'lookAhead',
] as const;
export const CLEARANCE_KINDS = ['lowered-table', 'column-spacer'] as const;

export type RotaryClass = (typeof ROTARY_CLASSES)[number];
/** The classes of the decision; the last is a five-axis machine's own table. */
export type Class = RotaryClass | 'built-in';
export type MachineKind = (typeof MACHINE_KINDS)[number];
export type Mounting = (typeof MOUNTINGS)[number];
export type Feature = (typeof FEATURES)[number];
export type ClearanceKind = (typeof CLEARANCE_KINDS)[number];

/** Where a row comes from; `line` is where it begins in the file. */
export interface Provenance {
  readonly file: string;
  readonly line: number;
  readonly maker: string | 'unknown';
  readonly document: string | 'unknown';
  readonly date: string | 'unknown';
}

export interface HousingBox {
  readonly along: Pair;
  readonly across: Pair;
  /** above the base */
  readonly top: number;
}

export interface Hold {
  readonly keyWidth: Stated;
  readonly pitches: readonly number[] | 'unknown';
}

/** What a rotary and a built-in table have in common. */
export interface TableMechanics {
  readonly faceplate: Stated | null;
  readonly swing: Stated;
  readonly faceOffset: Stated;
  /** null: it does not tilt */
  readonly tilt: StatedPair | null;
  readonly tiltClearRadius: Stated;
  readonly payload: { readonly level: Stated; readonly tilted: Stated };
  readonly tiltMoment: Stated;
  readonly brakeTorque: { readonly rotary: Stated; readonly tilt: Stated };
  readonly driveTorque: { readonly rotary: Stated; readonly tilt: Stated };
  readonly inertia: Stated;
  readonly speed: { readonly rotary: Stated; readonly tilt: Stated };
  /** ± arc seconds */
  readonly accuracy: { readonly rotary: Stated; readonly tilt: Stated };
}

export interface Rotary extends TableMechanics {
  readonly id: string;
  readonly name: string;
  readonly class: RotaryClass;
  /** 'none', or the designation of the spindle nose that takes chucks without an adapter */
  readonly nose: string | 'unknown';
  readonly collet: Stated | null;
  readonly centerHeight: Stated;
  readonly base: {
    readonly along: Stated;
    readonly across: Stated;
    readonly centerAlong: Stated;
    readonly centerAcross: Stated;
  };
  /** null: no outline published */
  readonly housing: readonly HousingBox[] | null;
  readonly mass: Stated;
  /** 'unknown': nothing is said of how it is held; a mounting left out: not possible */
  readonly hold: Readonly<Partial<Record<Mounting, Hold>>> | 'unknown';
  readonly height: Stated;
  readonly tailstock: { readonly length: Stated; readonly price: Stated } | null;
  readonly liftingPoints: Stated;
  readonly air: { readonly bar: Stated };
  readonly price: Stated;
  readonly from: Provenance;
}

export interface BuiltIn extends TableMechanics {
  readonly tiltAxis: 'along-x' | 'along-y' | 'unknown';
  /** which way the top of the work (on a horizontal spindle: its end toward the spindle) leans at positive tilt */
  readonly leans: (typeof LEANS)[number] | 'unknown';
  readonly reach: { readonly x: StatedPair; readonly y: StatedPair; readonly noseToFace: StatedPair };
  readonly removable: boolean | 'unknown';
  readonly slots: { readonly width: Stated; readonly pitch: Stated };
}

export interface Slots {
  readonly count: Stated;
  readonly width: Stated;
  readonly pitch: Stated;
  readonly center: boolean | 'unknown';
  readonly along: 'x' | 'y' | 'unknown';
}

export interface ClearanceAddition {
  readonly kind: ClearanceKind;
  readonly adds: number;
  readonly price: Stated;
  /** what it adds to the height of the machine */
  readonly height: number;
}

export interface Machine {
  readonly id: string;
  readonly name: string;
  readonly kind: MachineKind;
  readonly spindle: 'vertical' | 'horizontal' | 'unknown';
  readonly travel: readonly [Stated, Stated, Stated];
  /** null on a machine whose table is built in */
  readonly table: {
    readonly size: readonly [Stated, Stated];
    readonly height: Stated;
    readonly load: Stated;
    readonly slots: Slots;
  } | null;
  /** of the spindle nose, at both ends of Z: above the table; on a horizontal mill from the middle of the table's depth */
  readonly noseToTable: StatedPair;
  /** horizontal mill: height of the spindle's center above the table, at both ends of Y; else null */
  readonly spindleToTable: StatedPair | null;
  readonly builtIn: BuiltIn | null;
  readonly rotaryIncluded: string | null;
  readonly throat: Stated;
  readonly noseDiameter: Stated;
  readonly spindleDrive: {
    readonly power: Stated;
    readonly torque: Stated;
    readonly speed: Stated;
    readonly taper: string | 'unknown';
  };
  readonly positioning: Stated;
  readonly axisDrives: { readonly fitted: Stated; readonly offered: Stated; readonly priceEach: Stated };
  /** a feature left out is not offered */
  readonly features: Readonly<Partial<Record<Feature, 'standard' | Stated>>>;
  readonly blocks: {
    readonly standard: Stated;
    readonly lookAhead: Stated;
    readonly ahead: Stated;
    readonly aheadWithLookAhead: Stated;
  };
  /** m/s² */
  readonly acceleration: Stated;
  readonly clearance: readonly ClearanceAddition[];
  readonly footprint: readonly [Stated, Stated, Stated];
  readonly service: {
    readonly left: Stated;
    readonly right: Stated;
    readonly front: Stated;
    readonly rear: Stated;
  };
  readonly shipping: readonly [Stated, Stated, Stated];
  readonly mass: Stated;
  readonly power: { readonly kVA: Stated; readonly volts: Stated; readonly phases: Stated };
  readonly air: { readonly flow: Stated; readonly bar: Stated };
  readonly price: Stated;
  readonly from: Provenance;
}

export interface Catalog {
  readonly format: 'fivesides-catalog/1';
  readonly units: 'mm';
  readonly currency: string | 'unknown';
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
}
