import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { CsvError, type Options, parse } from 'csv-parse';
import { parse as parseAtOnce } from 'csv-parse/sync';
import { cleaned, SEPARATORS, type Separator, type SheetRow } from '../../documents/sheet-row.ts';
import { findHeadings, ROWS_BEFORE_DATA } from '../mapping/find-headings.ts';
import { MOST_ROWS, tooManyRows, UnreadableSheet } from './unreadable-sheet.ts';

/**
 * The rows of a text with tabs, commas or semicolons between its cells, one after the other, so that a long file is never
 * held as a whole. What does not look like a table in UTF-8 throws an UnreadableSheet, with its line where one is known.
 */
export async function* csvRows(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<SheetRow> {
  const texts = decoded(bytes);
  const begun: string[] = [];
  let length = 0;
  while (length < ENOUGH) {
    const { done, value } = await texts.next();
    if (done === true) break;
    begun.push(value);
    length += value.length;
  }
  const head = begun.join('');
  if (head.trim() === '')
    throw new UnreadableSheet('the file is empty', 'expected a row of headings and rows under it');
  const parser = parse({ ...OPTIONS, delimiter: separatorOf(head) });
  const source = Readable.from(
    (async function* () {
      yield head;
      yield* texts;
    })(),
  );
  // what goes wrong comes out of the parser below as well
  const flow = pipeline(source, parser).catch(() => undefined);
  let row = 0;
  try {
    for await (const cells of parser as AsyncIterable<readonly string[]>) {
      row += 1;
      if (row > MOST_ROWS) throw tooManyRows();
      yield { row, cells: cells.map(cleaned) };
    }
  } catch (error) {
    throw error instanceof CsvError ? brokenTable(error, row + 1) : error;
  } finally {
    source.destroy();
    await flow;
  }
}

/** Characters in which the headings stand. */
const ENOUGH = 65_536;

const OPTIONS: Options = {
  record_delimiter: ['\r\n', '\n', '\r'],
  bom: true,
  // an inch mark inside a cell is no quotation mark
  relax_quotes: true,
  relax_column_count: true,
  // a quotation mark that is never closed would hold all that follows
  max_record_size: 1_000_000,
};

async function* decoded(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let [line, first] = [1, true];
  const checked = (text: () => string, chunk: Uint8Array): string => {
    try {
      return text();
    } catch {
      const before = new TextDecoder().decode(chunk).split('\ufffd')[0] ?? '';
      const expected = 'expected UTF-8: save the table as "CSV UTF-8"';
      throw new UnreadableSheet('a byte that is not UTF-8 stands here', expected, line + linesIn(before));
    }
  };
  for await (const chunk of bytes) {
    if (first) refuseOthers(chunk);
    first = false;
    const text = checked(() => decoder.decode(chunk, { stream: true }), chunk);
    if (text.includes('\0')) throw new UnreadableSheet('the file is no text', 'expected CSV or .xlsx', line);
    yield text;
    line += linesIn(text);
  }
  yield checked(() => decoder.decode(), new Uint8Array());
}

const linesIn = (text: string): number => text.split('\n').length - 1;

function refuseOthers(chunk: Uint8Array): void {
  const [one, two] = chunk;
  if ((one === 0xff && two === 0xfe) || (one === 0xfe && two === 0xff))
    throw new UnreadableSheet('the file is in UTF-16', 'expected UTF-8: save the table as "CSV UTF-8"');
  if (one === 0xd0 && two === 0xcf)
    throw new UnreadableSheet('this is a workbook of an old kind', 'expected .xlsx: save it as one');
}

/** The sign between cells with which most headings are understood; else the one that makes most cells. */
function separatorOf(head: string): Separator {
  const whole = head.slice(0, Math.max(head.lastIndexOf('\n'), 0)) || head;
  let best: Separator = SEPARATORS[0];
  let most = -1;
  for (const delimiter of SEPARATORS) {
    const rows = firstRows(whole, delimiter);
    const known = findHeadings(rows)?.known ?? 0;
    const cells = Math.max(0, ...rows.map((each) => each.cells.length));
    const score = known * 10_000 + cells;
    if (score > most) [best, most] = [delimiter, score];
  }
  return best;
}

function firstRows(text: string, delimiter: Separator): readonly SheetRow[] {
  try {
    const records = parseAtOnce(text, {
      ...OPTIONS,
      delimiter,
      to: ROWS_BEFORE_DATA,
    }) as readonly (readonly string[])[];
    return records.map((cells, index) => ({ row: index + 1, cells: cells.map(cleaned) }));
  } catch {
    return [];
  }
}

function brokenTable(error: CsvError, row: number): UnreadableSheet {
  const line = Number(/line (\d+)/.exec(error.message)?.[1] ?? row);
  if (error.code === 'CSV_MAX_RECORD_SIZE') {
    return new UnreadableSheet(
      'a row that begins here has more than a million characters',
      'expected a line for each row; perhaps a quotation mark in it is never closed',
      line,
    );
  }
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') {
    return new UnreadableSheet(
      'a quotation mark that is opened here is never closed',
      'expected one at the end of the cell, or "" for an inch mark in a quoted cell',
      line,
    );
  }
  return new UnreadableSheet(`the table cannot be read (${error.message})`, 'expected CSV', line);
}
