import type { Machine, Rotary, TableMechanics } from '../catalog.ts';
import { BOUGHT_RULES } from './air-and-price.ts';
import { MACHINE_BOUNDS, ROTARY_BOUNDS } from './bounds.ts';
import { MACHINE_DRIVE_RULES } from './machine-drives.ts';
import { MACHINE_STANDING_RULES } from './machine-standing.ts';
import { MACHINE_TABLE_RULES } from './machine-table.ts';
import { MACHINE_TRAVEL_RULES } from './machine-travel.ts';
import { ROTARY_BODY_RULES } from './rotary-body.ts';
import { ROTARY_HOLDING_RULES } from './rotary-holding.ts';
import type { PlausibleRule } from './rule.ts';
import { TABLE_LOAD_RULES } from './table-loads.ts';
import { TABLE_SIZE_RULES } from './table-size.ts';

/** Of rotaries and of built-in tables. */
export const TABLE_RULES: readonly PlausibleRule<TableMechanics>[] = [
  ...TABLE_SIZE_RULES,
  ...TABLE_LOAD_RULES,
];

export const ROTARY_RULES: readonly PlausibleRule<Rotary>[] = [
  ROTARY_BOUNDS,
  ...TABLE_RULES,
  ...ROTARY_BODY_RULES,
  ...ROTARY_HOLDING_RULES,
  ...BOUGHT_RULES,
];

/** Without those of the table that is built in. */
export const MACHINE_RULES: readonly PlausibleRule<Machine>[] = [
  MACHINE_BOUNDS,
  ...MACHINE_TRAVEL_RULES,
  ...MACHINE_TABLE_RULES,
  ...MACHINE_DRIVE_RULES,
  ...MACHINE_STANDING_RULES,
  ...BOUGHT_RULES,
];
