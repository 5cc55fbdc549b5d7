import { SEPARATORS, type SheetRow } from '../../documents/sheet-row.ts';
import type { Uncertain } from '../answers.ts';
import { QUESTIONS } from '../index.ts';
import type { Question, Value } from '../question.ts';
import { isNotSure, type ReplyContext, readReply } from '../read-reply.ts';
import { type Column, readHeading } from './read-heading.ts';
import { type TableRows, tableRows } from './table-rows.ts';

/** What is wrong in a table: the row as the spreadsheet counts, the heading of the column, and one sentence on it. */
export interface CellProblem {
  readonly row: number;
  /** null: the row as a whole */
  readonly heading: string | null;
  readonly why: string;
}

/** An answer that stands in a cell, or (the size) in several. */
interface CellAnswer {
  readonly question: Question;
  readonly heading: string;
  /** 'unknown': the cell says "not sure" */
  readonly value: Value;
}

export interface PartRow {
  readonly row: number;
  readonly answers: readonly CellAnswer[];
}

export interface PartsTable {
  /** whether any heading names a question about a part; without one nothing is read */
  readonly known: boolean;
  readonly parts: readonly PartRow[];
  /** in the order of the rows */
  readonly problems: readonly CellProblem[];
}

interface Heading {
  readonly at: number;
  readonly heading: string;
  readonly column: Column;
  readonly unit: string | null;
}

/**
 * Reads a table of parts, one a row under a row of headings that are titles of questions, separated by tabs, commas or
 * semicolons. Each cell is read as a reply to its question would be; an empty one says nothing. What is right is read
 * whatever else is wrong.
 * Example: readPartsTable('Name\tMass (kg)\nHinge\t0,8', …).parts[0].answers → the name "Hinge", the mass 0.8.
 */
export function readPartsTable(text: string, context: ReplyContext): PartsTable {
  const { rows, unclosed } = bestRows(text);
  const [first, ...others] = rows;
  const { headings, problems } = headingsOf(first);
  if (headings.length === 0) return { known: false, parts: [], problems: [] };
  const inCell = { ...context, inCell: true } as const;
  const read = others.map((each) => readRow(each, headings, first?.cells.length ?? 0, inCell));
  const broken = unclosed ? [{ row: first?.row ?? 1, heading: null, why: UNCLOSED }] : [];
  return {
    known: true,
    parts: read.map(({ part }) => part).filter(({ answers }) => answers.length > 0),
    problems: [...broken, ...problems, ...read.flatMap((each) => each.problems)],
  };
}

const UNCLOSED = 'A quotation mark in the table is never closed: all of them are taken as text.';

/** The rows with the separator that gives most headings a meaning. */
function bestRows(text: string): TableRows {
  let best: TableRows = { rows: [], unclosed: false };
  let most = 0;
  for (const separator of SEPARATORS) {
    const rows = tableRows(text, separator);
    const known = headingsOf(rows.rows[0]).headings.length;
    if (known > most) [best, most] = [rows, known];
  }
  return best;
}

function headingsOf(first: SheetRow | undefined) {
  const headings: Heading[] = [];
  const problems: CellProblem[] = [];
  for (const [at, heading] of (first?.cells ?? []).entries()) {
    if (heading === '') continue;
    const reading = readHeading(heading);
    const twin = reading.ok && headings.find(({ column }) => column === reading.column);
    const row = first?.row ?? 1;
    if (!reading.ok) problems.push({ row, heading, why: reading.why });
    else if (twin) {
      problems.push({ row, heading, why: `"${twin.heading}" is the same: this column is left out.` });
    } else headings.push({ at, heading, column: reading.column, unit: reading.unit });
  }
  return { headings, problems };
}

function readRow(
  { row, cells }: SheetRow,
  headings: readonly Heading[],
  columns: number,
  context: ReplyContext,
) {
  const answers: CellAnswer[] = [];
  const problems: CellProblem[] = [];
  const filled = headings
    .map((each) => ({ ...each, text: withUnit(cells[each.at] ?? '', each.unit) }))
    .filter(({ text }) => text !== '');
  const sides = sidesOf(filled, context);
  for (const { column, heading, text } of filled) {
    if (sides !== null && SIDES.includes(column)) continue;
    if (typeof column === 'string') problems.push({ row, heading, why: ALONE });
    else {
      const reading = readReply(column.field, text, context);
      if (reading.ok) answers.push({ question: column, heading, value: reading.value });
      else problems.push({ row, heading, why: reading.why });
    }
  }
  if (sides !== null) {
    answers.push(...sides.answers);
    problems.push(...sides.problems.map((each) => ({ row, ...each })));
  }
  const beyond = cells.slice(columns).filter((cell) => cell !== '');
  if (beyond.length > 0) {
    const words = beyond.length === 1 ? 'One cell stands' : `${beyond.length} cells stand`;
    problems.push({
      row,
      heading: null,
      why: `${words} beyond the last heading, and nothing says what it is.`,
    });
  }
  return { part: { row, answers }, problems };
}

type Filled = Heading & { readonly text: string };

const questionOf = (id: string): Question | undefined => QUESTIONS.find((each) => each.id === id);
const SIZE = questionOf('size');
const LENGTH = questionOf('length');
const SHAPE = questionOf('shape');
const SIDES: readonly (Column | undefined)[] = [LENGTH, 'width', 'height'];
const ALONE = 'Width and height are read beside the length of a block that has no size in another column.';

/** Length, width and height in columns of their own are the size of a block; null where that is not what they are. */
function sidesOf(filled: readonly Filled[], context: ReplyContext) {
  const three = SIDES.flatMap((side) => filled.find(({ column }) => column === side) ?? []);
  const shape = filled.find(({ column }) => column === SHAPE);
  const round = shape !== undefined && SHAPE !== undefined && readReply(SHAPE.field, shape.text, context);
  const isRound = round !== false && round.ok && round.value === 'round';
  const given = filled.some(({ column }) => column === SIZE);
  if (three.length < SIDES.length || given || isRound || SIZE === undefined || LENGTH === undefined)
    return null;
  const problems: Omit<CellProblem, 'row'>[] = [];
  const values: Uncertain[] = [];
  for (const { heading, text } of three) {
    const reading = readReply(LENGTH.field, text, context);
    if (reading.ok) values.push(reading.value as Uncertain);
    else problems.push({ heading, why: `${reading.why} The whole size is left open.` });
  }
  const heading = three.map((each) => each.heading).join(', ');
  const value: Value = values.every((each) => each === 'unknown') ? 'unknown' : values;
  return { answers: problems.length > 0 ? [] : [{ question: SIZE, heading, value }], problems };
}

/** A number without a unit has that of its column. Example: ('90 x 60', 'mm') → '90 x 60 mm'. */
const withUnit = (text: string, unit: string | null): string =>
  unit === null || isNotSure(text) || !/\d$/.test(text) ? text : `${text} ${unit}`;
