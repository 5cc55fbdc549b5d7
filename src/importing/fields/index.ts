import type { List } from '../../catalog/catalog.ts';
import type { ImportField } from './import-field.ts';
import { MACHINE_FIELDS } from './machine-fields.ts';
import { ROTARY_FIELDS } from './rotary-fields.ts';

export const FIELDS: Readonly<Record<List, readonly ImportField[]>> = {
  rotaries: ROTARY_FIELDS,
  machines: MACHINE_FIELDS,
};

/** The key of a list by its path; undefined where it has none. Example: fieldAt('machines', 'travel[0]'). */
export const fieldAt = (list: List, path: string): ImportField | undefined =>
  FIELDS[list].find((field) => field.path === path);
