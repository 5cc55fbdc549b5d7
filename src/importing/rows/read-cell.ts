import { nearest } from '../../documents/nearest.ts';
import { quoted } from '../../documents/printable.ts';
import { plainCharacters } from '../../quantities/parse-number.ts';
import type { ImportField } from '../fields/import-field.ts';
import { headingWords } from '../mapping/heading-words.ts';
import { type CellContext, type CellReading, fault, given } from './cell-reading.ts';
import { readList } from './read-lists.ts';
import { inParts, readNumber, readRange, readSeveral } from './read-numbers.ts';

const NOTHING = new Set([
  '',
  '-',
  '--',
  '/',
  'n/a',
  'na',
  '#n/a',
  '?',
  '??',
  'unknown',
  'not known',
  'not sure',
  'tbd',
  'tba',
  'tbc',
  'n.a.',
  '…',
  '...',
  '.',
  'x?',
]);

/** Whether a cell says that nothing is known. Example: isNothing('n/a') → true. */
export const isNothing = (text: string): boolean =>
  NOTHING.has(plainCharacters(text).replace(/[–—−]/g, '-').toLowerCase());

const NONE = new Set(['none', 'no', 'not available', 'not offered', 'without']);
const isNone = (text: string): boolean => NONE.has(text.trim().toLowerCase());

/**
 * What a cell says for a field, as a catalog in mm and kg holds it; 'unknown' where it says nothing. A unit in the cell
 * wins over that of the column. Nothing is guessed. Example: ('30', travel, { unit: 'in' }) → 762.
 */
export function readCell(written: string, { cell }: ImportField, context: CellContext): CellReading {
  // an apostrophe that keeps a spreadsheet from taking a text for a formula, as `to-csv` writes it
  const text = written.replace(/^'(?=[=+@-])/, '');
  if (isNothing(text)) return { ok: true, value: 'unknown' };
  if (written.startsWith('='))
    return fault(`${quoted(text)} is a formula`, 'expected its value: save the file with values');
  if (/^#(?:REF!|DIV\/0!|VALUE!|NAME\?|NUM!|NULL!|SPILL!|CALC!)$/i.test(text))
    return fault(`${quoted(text)} is the error of a formula`, 'expected a value');
  switch (cell.form) {
    case 'quantity':
      return cell.orNone === true && isNone(text) ? given(null) : readNumber(text, cell.of, context);
    case 'range':
      return cell.orNone === true && isNone(text) ? given(null) : readRange(text, cell.of, context);
    case 'several':
      return readSeveral(inParts(text, cell.count), cell, context);
    case 'quantities':
      return readSeveral(text.split(/\s*(?:[;/&]|\band\b)\s*/i), cell, context);
    case 'choice':
      return readChoice(text, cell.meanings);
    case 'text':
      if (cell.longest !== undefined && text.length > cell.longest)
        return fault(`${quoted(text)} has ${text.length} characters`, `expected at most ${cell.longest}`);
      return given(cell.orNone === true && isNone(text) ? 'none' : text);
    case 'flag':
      return readFlag(text);
    case 'feature':
      return readFeature(text, context);
    case 'boxes':
    case 'additions':
      return readList(text, cell.form, context, readCell);
    case 'mounting':
      return isNone(text) ? given(null) : readFlag(text);
  }
}

function readChoice(text: string, meanings: Readonly<Record<string, readonly string[]>>): CellReading {
  const key = (words: string): string => headingWords(words).join(' ');
  for (const [value, words] of Object.entries(meanings)) {
    if ([value, ...words].some((each) => key(each) === key(text))) return given(value);
  }
  const values = Object.keys(meanings);
  const near = nearest(text, values);
  const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
  return fault(`${quoted(text)} is none of them`, `expected ${values.join(', ')}${hint}`);
}

function readFlag(text: string): CellReading {
  const word = text.toLowerCase();
  if (['yes', 'y', 'true', 'x', '1', 'standard'].includes(word)) return given(true);
  if (['no', 'n', 'false', '0', 'none'].includes(word)) return given(false);
  return fault(`${quoted(text)} is neither yes nor no`, 'expected yes or no');
}

/** In a catalog a feature that is left out is not offered: null. */
function readFeature(text: string, context: CellContext): CellReading {
  if (isNone(text)) return given(null);
  const word = text.toLowerCase();
  if (['standard', 'std', 'std.', 'included'].includes(word)) return given('standard');
  if (['option', 'optional', 'opt', 'opt.', 'offered', 'yes'].includes(word)) return given('unknown');
  const reading = readNumber(text, 'money', context);
  if (reading.ok) return reading;
  return fault(`${quoted(text)} is no price of an option`, 'expected standard, option, none or a price');
}
