import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, details, heading, paragraph, table } from '../blocks/block.ts';
import { data, enumerate, type Inline, say, strong, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { catalogPlace, catalogValue } from '../catalog-value.ts';
import { machineName, rotaryName } from '../names.ts';
import { type QuoteLine, type QuoteRow, type QuoteSheet, quoteSheets } from '../quote-lines.ts';
import { splitValuePath, valueWords } from '../value-words.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MACHINE_PURPOSES, ROTARY_PURPOSES } from '../wording/quote-purposes.ts';
import { MACHINE_QUESTIONS, type QuoteQuestion, ROTARY_QUESTIONS } from '../wording/quote-questions.ts';
import { sentenceCase } from '../wording/sentence-case.ts';

/** Room to write on paper. */
const ROOM = say`……………………………`;

/** What every seller has to confirm in writing, a sheet each, with room for the answer. */
export function quoteSheetsForSellers(decision: Decision): readonly Block[] {
  const sheets = quoteSheets(decision);
  if (sheets.length === 0) return [];
  const folded = decision.recommended === null;
  return [
    heading(2, say`Quote sheets for the sellers`),
    paragraph(
      say`${words(LEADS[decision.outcome])} Copy each sheet into the request for a quote. Every number in it came from a
        catalog; what it says counts once the seller has written it down. Where the seller writes another number, put
        that into the catalog and decide again.`,
    ),
    ...sheets.flatMap((sheet) => {
      const blocks = sheetBlocks(decision, sheet);
      return folded
        ? [details(to(decision, sheet), blocks)]
        : [paragraph(say`${to(decision, sheet)}:`), ...blocks];
    }),
  ];
}

const LEADS: Readonly<Record<Decision['outcome'], string>> = {
  recommended: 'One sheet for each maker of what is recommended.',
  open: 'It is still open which arrangement wins, so there is a sheet for each maker of what may still win.',
  none: 'Nothing can be ordered as things stand; these values were left out by a catalog and are worth asking for.',
};

/** Whom it goes to, and about what. */
function to(decision: Decision, { rows }: QuoteSheet): readonly Inline[] {
  const names = enumerate(rows.map((row) => nameOf(decision, row)));
  const [first] = rows;
  const maker = first === undefined ? null : fromOf(decision, first, 'maker');
  const owned = rows.some(
    ({ list, id }) => list === 'machines' && id === decision.inputs.answers.shop.machine,
  );
  const by = maker === null ? [] : say`, made by ${maker}`;
  return owned
    ? say`To whoever sells drives and options for ${strong(names)}${by}; it is owned already, so measure on it what can be measured`
    : say`To the seller of ${strong(names)}${by}`;
}

function nameOf(decision: Decision, row: QuoteRow): readonly Inline[] {
  const id: Path = [...rowPath(decision, row), 'id'];
  return row.list === 'machines' ? machineName(decision, row.id, id) : rotaryName(decision, row.id, id);
}

const rowPath = (decision: Decision, { list, id }: QuoteRow): Path =>
  (catalogPlace(decision, `${list}[${id}].id`) ?? []).slice(0, -1);

/** Who says so; null where the row does not. */
function fromOf(decision: Decision, row: QuoteRow, key: 'maker' | 'document' | 'date'): Inline | null {
  const found = decision.inputs.catalog[row.list].find(({ id }) => id === row.id)?.from[key];
  return found === undefined || found === 'unknown' ? null : data([...rowPath(decision, row), 'from', key]);
}

function sheetBlocks(decision: Decision, sheet: QuoteSheet): readonly Block[] {
  const wanted = sheet.rows.filter((row) => row.wanted);
  const asks = (list: QuoteRow['list'], questions: readonly QuoteQuestion[]): readonly QuoteQuestion[] =>
    wanted.some((row) => row.list === list) ? questions : [];
  const questions = [...asks('machines', MACHINE_QUESTIONS), ...asks('rotaries', ROTARY_QUESTIONS)];
  return [
    ...sheet.rows.map((row) => rowTable(decision, row)),
    ...(questions.length === 0 ? [] : [questionTable(questions)]),
  ];
}

function rowTable(decision: Decision, row: QuoteRow): Block {
  return table(
    [
      [say`${nameOf(decision, row)}: number`, 'left'],
      [say`The catalog says`, 'right'],
      [say`What hangs on it`, 'left'],
      [say`Confirmed in writing`, 'left'],
    ],
    row.lines.map((line) => [lineName(line), saysOf(decision, line), servesOf(line), ROOM]),
  );
}

function lineName({ value }: QuoteLine): Cell {
  const title = sentenceCase(valueWords(value)?.words ?? 'another value of its row');
  const isFeature = splitValuePath(value).key.startsWith('features.');
  return [words(isFeature ? `${title}: its price, or standard` : title)];
}

function saysOf(decision: Decision, { value }: QuoteLine): Cell {
  const said = catalogValue(decision, value);
  const isMissing = said.length === 1 && said[0]?.kind === 'words' && said[0].text.startsWith('not ');
  return isMissing ? [strong(said)] : said;
}

function servesOf({ value, checks }: QuoteLine): Cell {
  if (checks.length > 0) return enumerate(checks.map((check) => words(CHECK_WORDS[check].name)));
  const { list, key } = splitValuePath(value);
  const purposes: Readonly<Record<string, { readonly serves: string }>> =
    list === 'machines' ? MACHINE_PURPOSES : ROTARY_PURPOSES;
  return [words(Object.hasOwn(purposes, key) ? (purposes[key]?.serves ?? '') : 'the price')];
}

const questionTable = (questions: readonly QuoteQuestion[]): Block =>
  table(
    [
      [say`No data sheet says this`, 'left'],
      [say`Question`, 'left'],
      [say`Answer in writing`, 'left'],
    ],
    questions.map(({ about, asks }) => [[words(about)], [words(asks)], ROOM]),
  );
