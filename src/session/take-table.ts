import { MOST_PARTS } from '../questions/most-parts.ts';
import { type CellProblem, type PartRow, readPartsTable } from '../questions/table/read-parts-table.ts';
import { sameName } from './answer.ts';
import { basedWithPart } from './base.ts';
import { type Given, type GivenAnswers, isBegun, type Kept } from './kept.ts';
import { detour } from './move.ts';
import { withoutPart } from './parts.ts';
import { refused, type Session, type Step } from './session.ts';
import { PARTS, samePlace } from './walk.ts';
import { unitsOf, type World } from './world.ts';

/**
 * Adds the parts of a table, one a row, and stands at the list of parts. Each answer has to fit beside the others as if it
 * had been typed; what does not is left open and listed. A part whose name is there already is not taken, and nothing
 * that is there changes.
 */
export function takeTable(session: Session, text: string, world: World): Step {
  if (session.at.at === 'resume') return refused(session, '', RESUME_FIRST);
  if (session.trial !== null) return refused(session, '', TRIAL_FIRST);
  const table = readPartsTable(text, { units: unitsOf(session.kept), offer: world.setting.offer });
  if (!table.known) return refused(session, '', NO_TABLE);
  const begun = withoutBegunPart(session);
  const added = addRows(begun.kept, table.parts, world);
  const problems = [...table.problems, ...added.problems].toSorted((one, other) => one.row - other.row);
  const names = new Map(table.parts.map((each) => [each.row, nameIn(each)]));
  const lines = problems.map((each) => problemLine(each, names.get(each.row) ?? null));
  const taken = added.kept.parts.length - begun.kept.parts.length;
  if (taken === 0) {
    const [first = 'It has no row with an answer under its headings.'] = lines;
    const more = lines.length > 1 ? ` There are ${lines.length - 1} more faults.` : '';
    return refused(session, '', `No part of the table is taken. ${first}${more}`);
  }
  const there: Session = { ...begun, kept: added.kept };
  const at = samePlace(there.at, PARTS) ? there : detour(there, PARTS);
  const said = takenWords(
    namesOf(added.kept, world).slice(-taken),
    problems.map((each) => placeWords(each, names.get(each.row) ?? null)),
  );
  const words = begun.kept.shop.units === undefined ? `${UNITS_TAKEN} ${said}` : said;
  return [{ ...at, note: { kind: 'said', words, lines } }, [{ kind: 'save' }]];
}

const RESUME_FIRST =
  'There is a saved interview: go on with it or begin a new one before a table is taken in.';
const TRIAL_FIRST = 'Other answers are tried: keep or drop them before a table is taken in.';
const NO_TABLE =
  'That is no table of parts: its first row has to name questions about a part, such as Name, Shape, Size (mm), ' +
  'Material, with tabs, semicolons or commas between them, and a part in each row below.';

const UNITS_TAKEN = 'Numbers without a unit are read in millimeters and kilograms.';

/** A part that was only just begun makes room: the table brings its own. */
function withoutBegunPart(session: Session): Session {
  const { at, kept } = session;
  if (at.at !== 'question' || at.subject === null) return session;
  return isBegun(kept.parts[at.subject]) ? session : withoutPart(session, at.subject);
}

const namesOf = (kept: Kept, world: World): readonly string[] =>
  world.survey(kept).answers.parts.map(({ name }) => name);

interface Added {
  readonly kept: Kept;
  readonly problems: readonly CellProblem[];
}

function addRows(start: Kept, rows: readonly PartRow[], world: World): Added {
  const names = [...namesOf(start, world)];
  const problems: CellProblem[] = [];
  let kept = start;
  const rowOf = new Map<number, PartRow>();
  for (const row of rows) {
    const name = nameIn(row);
    const twin = name === null ? undefined : names.find((each) => sameName(each, name));
    if (twin !== undefined) {
      const why = `There is a part called "${twin}" already: this row is not taken. Give it another name.`;
      problems.push({ row: row.row, heading: headingOf('name', row), why });
    } else if (kept.parts.length >= MOST_PARTS) {
      const why = `There is room for ${MOST_PARTS} parts: this row is not taken.`;
      problems.push({ row: row.row, heading: null, why });
    } else {
      if (name !== null) names.push(name);
      rowOf.set(kept.parts.length, row);
      kept = { ...kept, parts: [...kept.parts, givenIn(row)], ...basedWithPart(kept, null) };
    }
  }
  return withoutObjections({ kept, problems }, rowOf, world);
}

const givenIn = ({ answers }: PartRow): GivenAnswers =>
  Object.fromEntries(
    answers.map(({ question, value }): [string, Given] => [
      question.id,
      value === 'unknown' ? { from: 'not sure' } : { from: 'typed', value },
    ]),
  );

/** What cannot stand beside the other answers is left open; what is not asked of such a part is kept and told. */
function withoutObjections(
  { kept, problems }: Added,
  rowOf: ReadonlyMap<number, PartRow>,
  world: World,
): Added {
  const { items, answers } = world.survey(kept);
  const found: CellProblem[] = [...problems];
  const parts = [...kept.parts];
  for (const { question, subject, given, applies, objection } of items) {
    const row = subject === null ? undefined : rowOf.get(subject);
    if (subject === null || row === undefined || given === undefined) continue;
    const heading = headingOf(question.id, row);
    const name = answers.parts[subject]?.name ?? '';
    if (!applies) {
      const why = `That is not asked about ${name} as it is described: it is kept, and changes nothing.`;
      found.push({ row: row.row, heading, why });
    } else if (objection !== null) {
      const { [question.id]: _, ...others } = parts[subject] ?? {};
      parts[subject] = others;
      found.push({ row: row.row, heading, why: objection });
    }
  }
  return { kept: { ...kept, parts }, problems: found };
}

/** What the part of a row is called; null where its row does not say so. */
function nameIn({ answers }: PartRow): string | null {
  const named = answers.find(({ question }) => question.id === 'name')?.value;
  return named === undefined || named === 'unknown' ? null : String(named);
}

const headingOf = (id: string, { answers }: PartRow): string | null =>
  answers.find(({ question }) => question.id === id)?.heading ?? null;

/** Example: 'Row 4 (Cleat), Shape: "cube" is none of them: …'. */
const problemLine = ({ row, heading, why }: CellProblem, name: string | null): string =>
  `Row ${row}${name === null ? '' : ` (${name})`}${heading === null ? '' : `, ${heading}`}: ${why}`;

/** Example: 'Cleat, Shape'. */
const placeWords = ({ row, heading }: CellProblem, name: string | null): string =>
  `${name ?? `row ${row}`}${heading === null ? '' : `, ${heading}`}`;

const MOST_NAMED = 5;
const MOST_PLACES = 3;

function takenWords(names: readonly string[], faults: readonly string[]): string {
  const shown = names.slice(0, MOST_NAMED).join(', ');
  const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : '';
  const parts = names.length === 1 ? '1 part is added' : `${names.length} parts are added`;
  const places = faults.slice(0, MOST_PLACES).join('; ');
  const others = faults.length > MOST_PLACES ? ` and ${faults.length - MOST_PLACES} more` : '';
  const cells =
    faults.length === 0
      ? 'Every cell is taken.'
      : `${faults.length === 1 ? '1 fault' : `${faults.length} faults`}: ${places}${others}. What is wrong is left open, to be answered here.`;
  return `${parts}: ${shown}${more}. ${cells}`;
}
