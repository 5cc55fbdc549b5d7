import type { Limits } from '../quantities/faults.ts';
import type { Interval } from '../quantities/interval.ts';
import type { QuantityKind } from '../quantities/kinds.ts';
import type { Answers, Part, Uncertain } from './answers.ts';

/** The parts of the interview, in order. Those about a part are gone through once for each part. */
export const SECTIONS = [
  'start',
  'parts',
  'holding',
  'cut',
  'contour',
  'drill',
  'yearly',
  'tools',
  'building',
  'supply',
  'lifting',
  'work',
  'money',
  'programming',
  'matters',
] as const;
export type Section = (typeof SECTIONS)[number];

/** One thing that can be chosen: what is stored, what is shown, and a few words on what it means. */
export interface Option<Id extends string = string> {
  readonly value: Id;
  readonly label: string;
  readonly about: string;
}

/** What there is to choose from, beyond what every user is offered: the machines of the catalog. */
export interface Offer {
  readonly machines: readonly {
    readonly id: string;
    readonly name: string;
    readonly kind: string;
  }[];
}

/** How a question is answered. */
export type Field =
  | {
      readonly kind: 'choice';
      readonly options: (offer: Offer) => readonly Option[];
    }
  | { readonly kind: 'yes-no' }
  | {
      readonly kind: 'quantity';
      readonly of: QuantityKind;
      readonly limits: Limits;
    }
  | {
      readonly kind: 'quantities';
      readonly of: QuantityKind;
      readonly limits: Limits;
      /** what the numbers are, in order; null: any number of them, at least one */
      readonly names: readonly string[] | null;
    }
  | { readonly kind: 'text'; readonly longest: number }
  /** several of the options; `alone`: one that says that there are no others */
  | {
      readonly kind: 'list';
      readonly options: (offer: Offer) => readonly Option[];
      readonly alone?: string;
    }
  /** all of the options, the most important first */
  | {
      readonly kind: 'order';
      readonly options: (offer: Offer) => readonly Option[];
    };

/** An answer as the interview keeps it. Quantities in the units of the answers (mm, kg, degrees, minutes). */
export type Value = Uncertain | boolean | string | readonly string[] | readonly Uncertain[];

/** What 'not sure' stands for. */
type Unsure =
  /** any value of this range */
  | { readonly as: 'range'; readonly range: Interval }
  /** each of the kinds is considered */
  | { readonly as: 'each-kind' }
  /** it is worked out from other answers */
  | { readonly as: 'computed'; readonly words: string }
  /** this value is taken, and said */
  | { readonly as: 'value'; readonly value: Value; readonly words: string };

/** What is taken, and shown as taken, while the question has no answer. */
interface Preset {
  readonly value: Value;
  readonly words: string;
}

/** What a question's text may speak of. */
interface About {
  /** the part's name, or 'the part' while it has none */
  readonly part: string;
  readonly units: 'mm' | 'inch';
  readonly currency: string;
}

export interface Question {
  /** as the file is named */
  readonly id: string;
  readonly section: Section;
  /** asked once, or once for each part */
  readonly of: 'shop' | 'part';
  /** a few words that name it in lists */
  readonly title: string;
  /** path in the answers; a part's paths begin with `parts.` */
  readonly path: string;
  readonly ask: (about: About) => string;
  /** how to find it or how to write it, with an example; empty where the question says it all */
  readonly hint: string;
  /** the same for whoever works in inches */
  readonly hintInch: string;
  readonly why: string;
  /** ids of the checks, stages and measures that read the answer */
  readonly readBy: readonly string[];
  readonly field: Field;
  readonly unsure: Unsure;
  readonly preset: Preset | null;
  /** whether it is asked, given the other answers. A part question is asked about the part with this index. */
  readonly applies: (answers: Answers, index: number) => boolean;
  /** why a value cannot be, given the other answers; null where it can */
  readonly objection: (answers: Answers, index: number, value: Value) => string | null;
  readonly get: (answers: Answers, index: number) => Value;
  /** New answers with this one put in; TypeError where the value is none for this question. */
  readonly set: (answers: Answers, index: number, value: Value) => Answers;
}

/** What `Subject` (a part, or all answers) a question reads and writes, typed by its field. */
export interface Draft<Kind extends Value, Subject> {
  readonly id: string;
  readonly section: Section;
  readonly title: string;
  readonly path: string;
  readonly ask: (about: About) => string;
  readonly hint?: string;
  /** where the example is another one in inches */
  readonly hintInch?: string;
  readonly why: string;
  readonly readBy: readonly string[];
  readonly field: Field;
  readonly unsure: Unsure;
  readonly preset?: Preset;
  readonly applies?: (subject: Subject) => boolean;
  readonly objection?: (subject: Subject, value: Kind) => string | null;
  readonly get: (subject: Subject) => Kind;
  readonly set: (subject: Subject, value: Kind) => Subject;
}

export type PartDraft<Kind extends Value> = Draft<Kind, Part>;
export type ShopDraft<Kind extends Value> = Draft<Kind, Answers>;
