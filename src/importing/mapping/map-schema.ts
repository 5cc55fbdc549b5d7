import * as z from 'zod';
import { CURRENCY } from '../../documents/fields/currency.ts';
import {
  choiceField,
  optionalTextField,
  requiredChoiceField,
  textField,
} from '../../documents/fields/plain-fields.ts';
import { optionalMap, strictMap } from '../../documents/fields/strict-map.ts';

export const MAP_FORMAT = 'fivesides-map/1' as const;

const text = (means: string) => optionalTextField({ means, longest: 120 }, 'unknown');
const short = (means: string) => textField({ means, longest: 500 });

const COLUMN = strictMap(
  {
    column: textField({
      means: 'the letters of the column',
      fits: /^[A-Z]{1,3}$/,
      expected: 'the letters of a column, such as B',
      longest: 3,
    }),
    heading: short('its heading, as it stands there'),
    key: z.union([z.string().max(80), z.array(z.string().max(80)).min(1).max(10)], {
      error: 'a key of the catalog, a list of them, skip or unknown',
    }),
    cells: z.record(z.string().max(200), z.union([z.string().max(200), z.number()])).prefault({}),
    unit: optionalTextField({ means: 'unit of its numbers that have none', longest: 20 }, 'unknown'),
  },
  { means: 'what a column is' },
);

const SHEET = strictMap(
  {
    sheet: z.string().max(200).nullable().prefault(null),
    rows: choiceField(['rotaries', 'machines', 'skip'], 'what the rows are', 'unknown'),
    headings: z.array(z.int().min(1).max(1000)).max(2).prefault([]),
    fixed: z.record(z.string(), z.union([z.string().max(200), z.number()])).prefault({}),
    columns: z.array(COLUMN).max(1000).prefault([]),
  },
  { means: 'how a sheet is read' },
);

/** A map as its file says it. */
export const MAP_SCHEMA = strictMap(
  {
    format: requiredChoiceField([MAP_FORMAT], 'the format of this file'),
    units: choiceField(['mm', 'inch'], 'what lengths and masses without a unit are in', 'unknown'),
    decimals: choiceField(['point', 'comma'], 'what stands before the decimals', 'unknown'),
    currency: optionalTextField({ ...CURRENCY, fits: /^(?:[A-Z]{3}|unknown)$/, longest: 7 }, 'unknown'),
    source: optionalMap(
      { maker: text('who makes what is listed'), document: text('the document'), date: text('its date') },
      { means: 'where the rows come from' },
    ),
    sheets: z.array(SHEET).max(200).prefault([]),
  },
  { means: 'how a file is read' },
);
