import { isMap } from '../documents/fields/strict-map.ts';
import { type Problem, type Reading, withSchemaProblems } from '../documents/problem.ts';
import { problemAt, schemaProblems } from '../documents/problems-from-issues.ts';
import type { Catalog, Machine, Provenance, Rotary } from './catalog.ts';
import { crossChecked } from './catalog-cross-checks.ts';
import { CATALOG_FORMAT, type CatalogFile, catalogSchema } from './catalog-schema.ts';
import type { ParsedFile } from './files-cross-checks.ts';

export interface FileRows {
  readonly currency: string | 'unknown';
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
}

/** One file against the schema; each row gets the place that it comes from. */
export function readRows({ file, document }: ParsedFile): Reading<FileRows> {
  const units = isMap(document.value) && document.value.units === 'inch' ? 'inch' : 'mm';
  const result = catalogSchema(units).safeParse(document.value);
  const problems: Problem[] = crossChecked(document.value).map((fault) => problemAt(fault, document, file));
  if (!result.success) problems.push(...schemaProblems(catalogSchema, document, file));
  const all = withSchemaProblems(document.problems, problems);
  if (!result.success || all.length > 0) return { ok: false, problems: all };
  const { source, currency, rotaries, machines }: CatalogFile = result.data;
  const from = (list: string, index: number): Provenance => {
    return { file, line: document.placeOf([list, index]).line, ...source };
  };
  return {
    ok: true,
    value: {
      currency,
      rotaries: rotaries.map((row, index) => ({ ...row, from: from('rotaries', index) })),
      machines: machines.map((row, index) => ({ ...row, from: from('machines', index) })),
    },
  };
}

/** The rows of all files as one catalog. */
export const asCatalog = (files: readonly FileRows[]): Catalog => ({
  format: CATALOG_FORMAT,
  units: 'mm',
  currency: files.map(({ currency }) => currency).find((currency) => currency !== 'unknown') ?? 'unknown',
  rotaries: files.flatMap(({ rotaries }) => rotaries),
  machines: files.flatMap(({ machines }) => machines),
});
