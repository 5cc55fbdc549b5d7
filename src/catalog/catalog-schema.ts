import * as z from 'zod';
import { CURRENCY } from '../documents/fields/currency.ts';
import { oncePerUnits } from '../documents/fields/once-per-units.ts';
import { optionalTextField, requiredChoiceField } from '../documents/fields/plain-fields.ts';
import { optionalMap, strictMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { type MachineRow, machineField } from './machine-schema.ts';
import { type RotaryRow, rotaryField } from './rotary-schema.ts';

export const CATALOG_FORMAT = 'fivesides-catalog/1' as const;

/** One file of a catalog, read. */
export interface CatalogFile {
  readonly format: typeof CATALOG_FORMAT;
  readonly units: 'mm';
  readonly currency: string | 'unknown';
  readonly source: {
    readonly maker: string | 'unknown';
    readonly document: string | 'unknown';
    readonly date: string | 'unknown';
  };
  readonly rotaries: readonly RotaryRow[];
  readonly machines: readonly MachineRow[];
}

/**
 * A catalog file whose bare numbers are in these units, read into rows in mm, kg, N·m, degrees, kW. What a row lacks
 * is 'unknown', or null where it plainly has none.
 */
export const catalogSchema = oncePerUnits((units: LengthUnits): z.ZodType<CatalogFile> => {
  const text = (means: string) => optionalTextField({ means, longest: 120 }, 'unknown');
  return strictMap(
    {
      format: requiredChoiceField([CATALOG_FORMAT], 'the format of this file'),
      units: requiredChoiceField(
        ['mm', 'inch'],
        'units of bare numbers: mm and kg, or inch and lb',
      ).transform(() => 'mm' as const),
      currency: optionalTextField(CURRENCY, 'unknown'),
      source: optionalMap(
        {
          maker: text('who makes what is listed here'),
          document: text('the document that it is taken from'),
          date: text('the date of that document'),
        },
        { means: 'where the rows come from' },
      ),
      rotaries: z.array(rotaryField(units)).max(10_000).prefault([]),
      machines: z.array(machineField(units)).max(10_000).prefault([]),
    },
    { means: 'a catalog for fivesides' },
  );
});
