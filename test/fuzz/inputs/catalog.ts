import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { missingValues } from '../../../src/catalog/missing.ts';
import { readCatalog } from '../../../src/catalog/read.ts';
import { catalogTable } from '../../../src/importing/catalog-table.ts';
import { markdownReport, textReport } from '../../../src/report/index.ts';
import { decide } from '../../../src/rules/decide.ts';
import { heldLines, heldMarkdown, heldProblems, linesIn } from '../held.ts';
import { demoFilesEnding, FIXTURES, type FuzzedInput } from './input.ts';
import { SMALL_SHOP } from './small-world.ts';

const folder = mkdtempSync(join(tmpdir(), 'fivesides-fuzz-'));
const DECIDED = 0.02;

/** A file of a catalog: refused in words, or decided on, and written as a table. */
export const CATALOG: FuzzedInput = {
  name: 'catalog',
  share: 220,
  seeds: () => [...demoFilesEnding(/^(machines|rotaries).*\.yaml$/), ...demoFilesEnding(/catalog/, FIXTURES)],
  take: (bytes, chance) => {
    writeFileSync(join(folder, 'rows.yaml'), bytes);
    const reading = readCatalog([folder]);
    if (!reading.ok) return heldProblems(reading.problems, linesIn(bytes.toString('utf8')));
    const catalog = reading.value;
    missingValues(catalog);
    for (const list of ['rotaries', 'machines'] as const) catalogTable(catalog, list);
    if (!chance.happens(DECIDED)) return 'taken';
    const decision = decide(SMALL_SHOP, catalog, { all: true, flips: [], ranges: false, shownIn: 'mm' });
    heldMarkdown(markdownReport(decision));
    heldLines(textReport(decision, { width: 80, ascii: false }, { all: true }));
    return 'taken';
  },
};
