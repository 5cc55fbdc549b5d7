import { describe, expect, it } from 'vitest';
import { MACHINE_KINDS, type Machine, type Rotary, type TableMechanics } from '../../src/catalog/catalog.ts';
import { demoCatalog } from './demo.ts';
import { MACHINE_RULES } from './machine-rules.ts';
import { ROTARY_RULES } from './rotary-rules.ts';
import { COMMON_PRACTICE, known, type Rule } from './rule.ts';

const catalog = demoCatalog();

function holdsOfEvery<Row extends { readonly id: string }>(
  rules: readonly Rule<Row>[],
  rows: readonly Row[],
) {
  describe.each(rules)('$says ($reason; $source)', (rule) => {
    it('holds of every row', () => {
      expect(rows.filter((row) => rule.breaks(row, catalog)).map(({ id }) => id)).toEqual([]);
    });

    it('catches a row that is spoiled', () => {
      const row = rows.find(({ id }) => id === rule.of);
      expect(row === undefined ? rule.of : rule.breaks(rule.spoil(row), catalog)).toBe(true);
    });
  });
}

describe('rotaries', () => holdsOfEvery<Rotary>(ROTARY_RULES, catalog.rotaries));
describe('machines', () => holdsOfEvery<Machine>(MACHINE_RULES, catalog.machines));

describe('built-in tables', () => {
  const tables = catalog.machines.flatMap(({ builtIn, id }) =>
    builtIn === null ? [] : [{ ...builtIn, id }],
  );

  it.each(tables)('$id holds, lifts and turns what it carries, like a rotary of its size', (table) => {
    expect(known(table.faceplate)).toBeLessThan(known(table.swing));
    expect(Math.hypot(known(table.swing) / 2, known(table.faceOffset))).toBeLessThan(
      known(table.tiltClearRadius),
    );
    expect(known(table.brakeTorque.tilt)).toBeGreaterThan(2 * known(table.tiltMoment));
    expect(known(table.driveTorque.tilt)).toBeGreaterThan(known(table.tiltMoment));
    expect(known(table.inertia)).toBeGreaterThan(
      0.5 * known(table.payload.level) * (known(table.faceplate) / 2000) ** 2,
    );
  });
});

/** Neighbors in the order of size of which the larger is not also the greater. */
function dips<Row extends { readonly id: string }>(
  rows: readonly Row[],
  size: (row: Row) => number,
  of: (row: Row) => number,
): readonly string[] {
  const ordered = [...rows].sort((a, b) => size(a) - size(b));
  return ordered
    .slice(1)
    .filter((row, index) => {
      const smaller = ordered[index];
      return smaller !== undefined && of(row) <= of(smaller);
    })
    .map(({ id }) => id);
}

describe(`more costs and weighs more (${COMMON_PRACTICE})`, () => {
  const classes = [...new Set(catalog.rotaries.map((row) => row.class))];
  const risingOfRotary = {
    'center height': (row: Rotary) => known(row.centerHeight),
    mass: (row: Rotary) => known(row.mass),
    payload: (row: Rotary) => known(row.payload.level),
    'rotary brake': (row: Rotary) => known(row.brakeTorque.rotary),
    price: (row: Rotary) => known(row.price),
    'slowness of the rotary axis': (row: Rotary) => 1 / known(row.speed.rotary),
  };
  it.each(
    classes.flatMap((of) =>
      Object.entries(risingOfRotary).map(([what, read]) => ({
        of,
        what,
        read,
      })),
    ),
  )('a larger $of has more $what', ({ of, read }) => {
    const rows = catalog.rotaries.filter((row) => row.class === of);
    expect(dips(rows, (row) => known(row.swing), read)).toEqual([]);
  });

  const faceplate = (row: TableMechanics | null): number => known(row?.faceplate ?? null);
  const sizeOf = (row: Machine): number =>
    row.builtIn === null ? known(row.table?.size[0] ?? null) : faceplate(row.builtIn);
  const risingOfMachine = {
    mass: (row: Machine) => known(row.mass),
    price: (row: Machine) => known(row.price),
    'connected load': (row: Machine) => known(row.power.kVA),
    floor: (row: Machine) => known(row.footprint[0]) * known(row.footprint[1]),
  };
  it.each(
    MACHINE_KINDS.flatMap((of) =>
      Object.entries(risingOfMachine).map(([what, read]) => ({
        of,
        what,
        read,
      })),
    ),
  )('a larger $of takes more $what', ({ of, read }) => {
    const rows = catalog.machines.filter((row) => row.kind === of);
    expect(dips(rows, sizeOf, read)).toEqual([]);
  });
});
