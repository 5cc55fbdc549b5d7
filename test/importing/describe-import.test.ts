import { expect, test } from 'vitest';
import { importSummary } from '../../src/importing/describe-import.ts';
import { imported } from './sheet-of.ts';

const summary = (lines: string) => importSummary('list.csv', imported(lines));

test('rows, columns, what is left out and why, in words', () => {
  const lines = summary(
    'Model | Type | Swing (in) | Swing (mm) | Weight | Color\nWren | trunnion | 8 | 200 | 95 | red | stray\n | trunnion | 9',
  );
  expect(lines.slice(0, 6)).toEqual([
    'list.csv: 1 of 2 rows under the headings of row 1 are taken as rotaries.',
    '  4 columns understood: A Model → name; B Type → class; C Swing (in) → swing in in; E Weight → mass.',
    '  column D "Swing (mm)": another column is swing already: left out.',
    '  column F "Color": not understood: say in the map what it is, or skip.',
    '  column E "Weight": 1 number without a unit, left unknown: write the unit in the map.',
    '  1 cell under no heading: left out.',
  ]);
  expect(lines).toContain('  rotaries: mass in 1 of 1: table-load, floor-load, lift, hook-height');
});

test('what a catalog takes for none is said where no column names it', () => {
  const silent = (lines: string) => summary(lines).filter((line) => line.startsWith('No column names'));
  expect(silent('Model | Type | Swing (mm)\nWren | trunnion | 180')).toEqual([
    'No column names tailstocks, and what a catalog does not name it takes for not offered: add them where they are.',
  ]);
  expect(silent('Model | Type | Swing (mm) | Tailstock length (mm)\nWren | trunnion | 180 |')).toEqual([]);
});

test('a table of which nothing is understood', () => {
  expect(summary('Color | Taste\nred | sweet')).toEqual(['list.csv: no row of headings is understood.']);
  expect(summary('Model | Type\nWren | trunnion')).toEqual([
    'list.csv: nothing says whether these are rotaries or machines: say so in the map.',
  ]);
});

test('what is hard to believe is told with its place in what is written, and is no fault', () => {
  const taken = imported('Model | Type | Swing (mm) | Faceplate (mm)\nWren | trunnion | 180 | 320');
  expect(taken.faults).toEqual([]);
  const lines = importSummary('list.csv', taken);
  const title = lines.indexOf(
    'Hard to believe, and taken as it stands; the cell is named behind the value in the file:',
  );
  expect(lines.slice(title + 1)).toEqual([
    '  rotaries.yaml:11:12: rotaries[wren].swing is 180 mm, and the faceplate is 320 mm, expected at least the faceplate: the faceplate turns with the work (geometry)',
  ]);
});
