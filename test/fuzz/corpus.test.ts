import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { chanceOf } from '../../bench/interviews/chance.ts';
import { INPUTS } from './cases.ts';

/** Files that once did harm, or would where somebody reads them carelessly: by input and name, each with what it tries. */
const CORPUS: readonly (readonly [file: string, tries: string])[] = [
  ['answers/aliases-of-aliases.yaml', 'aliases that unfold without end'],
  ['answers/html-names.yaml', 'a name that is HTML where it is printed raw'],
  ['answers/link-names.yaml', 'a name that is a link, and ends the cell of a table'],
  ['answers/escapes-in-quotes.yaml', 'escape sequences that YAML itself spells out'],
  ['answers/turned-round.yaml', 'a mark that turns writing round'],
  ['answers/joined-signs.yaml', 'signs that are joined by what has no width: a good name, kept as it is'],
  ['answers/half-a-pair.yaml', 'half of a surrogate pair'],
  ['answers/proto.yaml', 'keys that reach into the language'],
  ['answers/numbers.yaml', 'numbers that are none, or beyond all numbers'],
  ['answers/deep.yaml', 'brackets in brackets'],
  ['catalog/html-name.yaml', 'a name that is HTML'],
  ['catalog/tiny-and-huge.yaml', 'values at both ends of what a number holds'],
  ['session/format-that-steers.yaml', 'a format with an escape sequence, which was printed raw'],
  ['session/values-of-other-kinds.yaml', 'answers whose values are of another kind than their question'],
  ['session/too-large.json', 'a number beyond all numbers, which is none once it is saved again'],
  ['session/parts-cut-away.json', 'answers without a part, at a place that is none'],
  ['lesson/empty-steps.yaml', 'a lesson without a step'],
  ['map and table/formulas.csv', 'cells that a spreadsheet would work out'],
  ['map and table/open-quote.csv', 'a quotation mark that is never closed'],
  [
    'map and table/parts-that-do-not-fit.xlsx',
    'a workbook that its reader trips over, which was told in its words',
  ],
  ['terminal/cut-off.txt', 'sequences and a paste without their ends'],
];
const FOLDER = join('test', 'fuzz', 'corpus');
/** Draws what is done besides, such as deciding, so often that it is done. */
const TIMES = 12;

test.each(CORPUS)('%s: %s', async (file) => {
  const input = INPUTS.find(({ name }) => name === file.split('/')[0]);
  if (input === undefined) throw new Error(`no input is called as the folder of ${file}`);
  for (let seed = 0; seed < TIMES; seed += 1)
    expect(['taken', 'refused']).toContain(
      await input.take(readFileSync(join(FOLDER, file)), chanceOf(seed)),
    );
});

test('every file of the corpus stands in the list', () => {
  const files = readdirSync(FOLDER, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  expect(files.map(({ name }) => name).sort()).toEqual(CORPUS.map(([file]) => file.split('/')[1]).sort());
});
