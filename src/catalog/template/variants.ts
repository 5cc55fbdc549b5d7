import { type Catalog, FEATURES, type List, MACHINE_KINDS, ROTARY_CLASSES } from '../catalog.ts';
import { crossChecked } from '../catalog-cross-checks.ts';
import { CATALOG_FORMAT } from '../catalog-schema.ts';
import { machineField } from '../machine-schema.ts';
import { missingValues } from '../missing.ts';
import { rotaryField } from '../rotary-schema.ts';

/** A kind of row with nothing known, and what such a row can lack. */
export interface Variant {
  readonly list: List;
  readonly row: Readonly<Record<string, unknown>>;
  /** checks that stay open, by the path of the value that the row lacks */
  readonly lacks: ReadonlyMap<string, readonly string[]>;
}

const SPINDLES = ['vertical', 'horizontal', 'unknown'] as const;

/** Every kind of row of a list that a template can be for; `of`: only that class, or that kind. */
export function variantsOf(list: List, of: string | null): readonly Variant[] {
  if (list === 'rotaries')
    return ROTARY_CLASSES.filter((each) => of === null || each === of).map((each) =>
      variant(list, { class: each }),
    );
  const features = Object.fromEntries(FEATURES.map((each) => [each, 'unknown']));
  return MACHINE_KINDS.filter((each) => of === null || each === of).flatMap((kind) =>
    SPINDLES.map((spindle) => variant(list, { kind, spindle, features })),
  );
}

function variant(list: List, facets: Readonly<Record<string, unknown>>): Variant {
  const row = { id: 'x', name: 'X', ...facets };
  const gaps = missingValues(catalogWith(list, row)).flatMap(({ missing }) => missing);
  return { list, row, lacks: new Map(gaps.map(({ path, checks }) => [path, checks])) };
}

function catalogWith(list: List, row: unknown): Catalog {
  const from = { file: '', line: 0, maker: 'unknown', document: 'unknown', date: 'unknown' } as const;
  return {
    format: CATALOG_FORMAT,
    units: 'mm',
    currency: 'unknown',
    rotaries: list === 'rotaries' ? [{ ...rotaryField('mm').parse(row), from }] : [],
    machines: list === 'machines' ? [{ ...machineField('mm').parse(row), from }] : [],
  };
}

/** Whether a key, or a key in a map of the row, has no place in such a row. */
export function isRefused({ list, row }: Variant, path: readonly string[]): boolean {
  const value = path.toReversed().reduce<unknown>((inner, key) => ({ [key]: inner }), {});
  const faults = crossChecked({ [list]: [{ ...row, ...(value as object) }] });
  return faults.some((fault) => fault.path.slice(2).join('.') === path.join('.'));
}
