import type { Figure } from '../figures/figure.ts';
import type { Inline } from './inline.ts';

/** A piece of a report: what it is, not how it looks. Exports give it looks. */
export type Block =
  | Heading
  | Paragraph
  | List
  | Table
  | Details
  | Flowchart
  | FigureBlock
  | Command
  | AnswersFile
  | InputsFile;

export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: readonly Inline[];
}

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: readonly Inline[];
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly (readonly Inline[])[];
  /** a box before each, to be crossed on paper */
  readonly boxes?: boolean;
}

export type Cell = readonly Inline[];

export interface Table {
  readonly kind: 'table';
  readonly head: readonly Cell[];
  /** columns of numbers stand to the right */
  readonly align: readonly ('left' | 'right')[];
  readonly rows: readonly (readonly Cell[])[];
}

/** What only a reader who checks line by line wants to open. */
export interface Details {
  readonly kind: 'details';
  readonly summary: readonly Inline[];
  readonly blocks: readonly Block[];
}

export interface FlowNode {
  /** letters only */
  readonly id: string;
  /** the taken path and its end differ from the rest by shape, not by color */
  readonly shape: 'step' | 'aside' | 'end';
  readonly lines: readonly (readonly Inline[])[];
}

export interface FlowEdge {
  readonly from: string;
  readonly to: string;
  readonly taken: boolean;
  readonly label: readonly Inline[];
}

export interface Flowchart {
  readonly kind: 'flowchart';
  readonly nodes: readonly FlowNode[];
  readonly edges: readonly FlowEdge[];
}

/** A picture with its words; what cannot show the one says the other. */
interface FigureBlock {
  readonly kind: 'figure';
  readonly figure: Figure;
}

/** A line to be typed. */
interface Command {
  readonly kind: 'command';
  readonly line: readonly Inline[];
}

/** The answers of the decision, written out as a file that can be read again. */
interface AnswersFile {
  readonly kind: 'answers-file';
}

/** Answers and catalog of the decision, so that a paper alone is enough to work out its numbers again. */
interface InputsFile {
  readonly kind: 'inputs-file';
}

export const heading = (level: Heading['level'], text: readonly Inline[]): Heading => ({
  kind: 'heading',
  level,
  text,
});
export const paragraph = (text: readonly Inline[]): Paragraph => ({
  kind: 'paragraph',
  text,
});
export const figureBlock = (figure: Figure | null): readonly Block[] =>
  figure === null ? [] : [{ kind: 'figure', figure }];
export const list = (items: List['items']): List => ({ kind: 'list', items });
/** What is chosen from, on paper. */
export const boxes = (items: List['items']): List => ({ kind: 'list', items, boxes: true });
export const details = (summary: readonly Inline[], blocks: readonly Block[]): Details => ({
  kind: 'details',
  summary,
  blocks,
});

/** A table from its columns: heading and side each. */
export const table = (
  columns: readonly (readonly [head: Cell, align: 'left' | 'right'])[],
  rows: Table['rows'],
): Table => ({
  kind: 'table',
  head: columns.map(([head]) => head),
  align: columns.map(([, align]) => align),
  rows,
});
