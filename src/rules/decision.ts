import type { Catalog, Class, ClearanceKind, Mounting } from '../catalog/catalog.ts';
import type { MaterialId, MaterialRow } from '../mechanics/forces/materials.ts';
import type { Answers, Measure } from '../questions/answers.ts';
import type { Assumed } from '../questions/assumptions.ts';
import type { CautionId } from './cautions.ts';
import type { Bounded, CheckResult, Verdict } from './check-result.ts';
import type { CheckId } from './checks/ids.ts';
import type { Bigger, ClassFinding, Route } from './decision-classes.ts';
import type { MarketCount, RotaryCount, StageCount } from './decision-counts.ts';
import type { FeatureNeed } from './decision-features.ts';
import type { LiftingDecision } from './decision-lifting.ts';
import type { Money, MoneyFormulas } from './decision-money.ts';
import type { Stability } from './decision-stability.ts';
import type { StageId } from './stages/index.ts';

export * from './check-result.ts';
export * from './decision-classes.ts';
export * from './decision-counts.ts';
export * from './decision-features.ts';
export * from './decision-money.ts';
export * from './decision-stability.ts';

/** The whole result, as data: `decide` makes it, everything downstream only prints it. */

export interface Plate {
  readonly under: 'rotary';
  readonly thickness: number;
  readonly why: 'adapter' | 'riser';
  readonly mass: Bounded;
}

export interface Measures {
  readonly coverage: Bounded;
  readonly viseStations: Bounded;
  readonly price: Bounded;
  readonly payback: Bounded;
  readonly netPresentValue: Bounded;
  readonly floorArea: Bounded;
  readonly swapHours: Bounded;
  readonly margin: Bounded;
}

export interface PriceItem {
  readonly item:
    | 'machine'
    | 'rotary'
    | 'clearance'
    | 'axis-drives'
    | 'plates'
    | 'feature'
    | 'tailstock'
    | 'power';
  /** which one, e.g. the kind of addition or the feature; empty where there is only one */
  readonly which: string;
  readonly price: Bounded;
}

export interface Drop {
  readonly stage: StageId;
  readonly check: CheckId;
}

export interface Tried {
  readonly clearance: readonly ClearanceKind[];
  readonly plates: readonly number[];
  /** hours of the families that surely hold with it */
  readonly sureHours: number;
  /** what fails or is open with it, as far as additions and plates can change it: what it is left for */
  readonly stops: readonly { readonly check: CheckId; readonly part: string | null }[];
}

/** What stays free of the table on each side along X, mm (less than nothing: rotary or work stand over it), and the vises there. */
export interface TableSpaceShown {
  readonly left: Bounded;
  readonly right: Bounded;
  readonly stationsLeft: Bounded;
  readonly stationsRight: Bounded;
}

export interface Arrangement {
  readonly id: string;
  readonly machine: string;
  readonly rotary: string | null;
  readonly class: Class;
  readonly mounting: Mounting | 'built-in';
  /** of the rotary center, from the middle of the table; slack: width of the interval of places */
  readonly place: {
    readonly x: number;
    readonly y: number;
    readonly slackX: number;
    readonly slackY: number;
  } | null;
  /** of the table beside rotary and work; null: there is none, or a vise on it would be of no use */
  readonly space: TableSpaceShown | null;
  /** the rotary is turned end for end, so that the work leans the other way */
  readonly turned: boolean;
  readonly clearance: readonly ClearanceKind[];
  readonly plates: readonly Plate[];
  readonly tried: readonly Tried[];
  readonly verdict: Verdict;
  readonly passes: 'yes' | 'no' | 'open';
  readonly parts: Readonly<Record<string, Verdict>>;
  readonly measures: Measures;
  readonly prices: readonly PriceItem[];
  readonly features: readonly FeatureNeed[];
  readonly later: LaterCost | null;
  /** null: nothing has to be lifted */
  readonly lifting: LiftingDecision | null;
  readonly money: Money;
  readonly checks: readonly CheckResult[];
  readonly undominated: boolean;
  readonly dropped: Drop | null;
  readonly flips: readonly Flip[];
}

/** What the clearance additions cost once the rotary is off again. */
export interface LaterCost {
  readonly raised: number;
  /** mm of subplate or risers under the work */
  readonly subplate: Bounded;
  readonly price: Bounded;
}

/** One value that, changed alone, lets an arrangement through. */
export interface Flip {
  /** path of an answer or of a catalog value */
  readonly change: string;
  readonly from: Bounded;
  readonly to: number;
}

/** A check that stops arrangements which nothing else stops, and how many. */
export interface SingleLimit {
  readonly check: CheckId;
  readonly lets: number;
}

/** One family on the coverage curve, smallest swing first. */
export interface CurvePoint {
  readonly part: string;
  readonly swing: Bounded;
  readonly hours: Bounded;
  /** share of the five-axis hours that a swing of this size holds */
  readonly share: Bounded;
  /** beyond the knee: what the size for it costs more than the size at the knee, from the catalog */
  readonly beyondKnee: boolean;
}

export interface Envelope {
  readonly curve: readonly CurvePoint[];
  /** swing at the knee, null where an unknown answer decides */
  readonly knee: number | null;
  /** the smallest rotary or built-in table with at least that swing; null where there is none */
  readonly atKnee: SizeCost | null;
  readonly forAll: SizeCost | null;
}

export interface SizeCost {
  readonly id: string;
  readonly swing: number;
  readonly price: Bounded;
  readonly mass: Bounded;
}

/** One step of the ranking, as data for a sentence. */
export interface RankStep {
  readonly measure: Measure;
  readonly best: Bounded;
  readonly stays: readonly string[];
  readonly drops: readonly string[];
}

export interface RunnerUp {
  readonly id: string;
  /** the measure at which it fell behind; null: tied to the end */
  readonly lostOn: Measure | null;
  /** what the winner gives up against it, in the measure's own unit */
  readonly gives: readonly {
    readonly measure: Measure;
    readonly winner: Bounded;
    readonly other: Bounded;
  }[];
}

export interface Unknown {
  readonly answer: string;
  readonly decides: boolean;
  /** whom to ask */
  readonly ask: 'you' | 'seller';
  /** checks that it leaves open */
  readonly checks: readonly CheckId[];
}

export interface Decision {
  readonly format: 'fivesides-decision/1';
  readonly inputs: {
    readonly answers: Answers;
    readonly catalog: Catalog;
    readonly assume: Assumed;
    readonly materials: Readonly<Record<MaterialId, MaterialRow>>;
    /** units in which the user wants to read lengths and masses */
    readonly shownIn: 'mm' | 'inch';
    /** what 'not sure' stands for, by the keys of NOT_SURE; null where nothing bounds it */
    readonly notSure?: Readonly<Record<string, readonly [low: number | null, high: number | null]>>;
  };
  readonly outcome: 'recommended' | 'none' | 'open';
  readonly recommended: string | null;
  /** may still win, where the outcome is open */
  readonly contenders: readonly string[];
  readonly arrangements: readonly Arrangement[];
  /** how many arrangements there are, listed or not */
  readonly count: number;
  /** of a catalog too large to judge all of it one by one: null where all of them were */
  readonly market: MarketCount | null;
  readonly stages: readonly StageCount[];
  /** what became of each rotary and built-in table over all machines and mountings */
  readonly byRotary: readonly RotaryCount[];
  readonly envelope: Envelope;
  readonly hours: Readonly<Record<string, Bounded>>;
  /** families cut from the top alone: three-axis work, judged on no rotary */
  readonly threeAxis: readonly string[];
  readonly ranking: readonly RankStep[];
  readonly runnersUp: readonly RunnerUp[];
  readonly nearestMisses: readonly string[];
  /** where none passes: which one check, dropped alone, would let most through; empty where no single one does */
  readonly singleLimits: readonly SingleLimit[];
  readonly classes: readonly ClassFinding[];
  readonly route: Route;
  readonly bigger: Bigger | null;
  /** the same machine and rotary the other way round on the table; null: its base allows one way, or nothing is recommended */
  readonly otherWay: string | null;
  readonly features: readonly FeatureNeed[];
  /** empty too where it was not asked for */
  readonly stability: readonly Stability[];
  readonly unknowns: readonly Unknown[];
  readonly cautions: readonly CautionId[];
  readonly moneyFormulas: MoneyFormulas;
}
