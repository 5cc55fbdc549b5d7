import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROTARY_CLASSES } from '../../src/catalog/catalog.ts';
import { DEMO_FOLDER, demoCatalog, demoFiles } from './demo.ts';

const catalog = demoCatalog();

describe('what the demo holds', () => {
  it.each(ROTARY_CLASSES)('at least four rotaries of class %s', (name) => {
    expect(catalog.rotaries.filter((row) => row.class === name).length).toBeGreaterThanOrEqual(4);
  });

  it('at least twelve machines, two of them convertibles, five with a built-in table', () => {
    expect(catalog.machines.length).toBeGreaterThanOrEqual(12);
    expect(
      catalog.machines.filter((row) => row.kind === 'convertible' && row.rotaryIncluded !== null),
    ).toHaveLength(2);
    expect(catalog.machines.filter((row) => row.kind === 'five-axis' && row.builtIn !== null)).toHaveLength(
      5,
    );
  });

  it('a horizontal mill for rotaries on their backs, and a horizontal machine with its own table', () => {
    const level = catalog.machines.filter(({ spindle }) => spindle === 'horizontal');
    expect(level.map(({ kind }) => kind).sort()).toEqual(['five-axis', 'mill']);
    expect(catalog.machines.filter((row) => row.spindleToTable !== null).map(({ id }) => id)).toEqual(
      level.filter(({ kind }) => kind === 'mill').map(({ id }) => id),
    );
  });

  it('tall trunnions that leave a small mill no room, and slots that do not all match', () => {
    const tallest = Math.max(...catalog.rotaries.map((row) => Number(row.centerHeight)));
    const lowest = Math.min(
      ...catalog.machines.map((row) => Number(row.noseToTable[1])).filter(Number.isFinite),
    );
    expect(lowest - tallest).toBeLessThan(100);
    const widths = new Set(catalog.machines.flatMap((row) => row.table?.slots.width ?? []));
    expect(widths.size).toBeGreaterThan(1);
  });

  it('one file whose lengths are inches', () => {
    const inch = demoFiles().filter(
      (name) => !name.includes('answers') && text(name).includes('units: inch'),
    );
    expect(inch).toEqual(['machines-inch.yaml']);
    const alder = catalog.machines.find(({ id }) => id === 'alder');
    expect(alder?.travel).toEqual([762, 508, 508]);
    expect(alder?.table?.slots.pitch).toBe(80);
  });
});

describe('nothing is real', () => {
  it.each(demoFiles())('%s says in its first lines that it is invented', (name) => {
    expect(text(name).split('\n').slice(0, 3).join(' ')).toMatch(/^#.*invented/);
  });

  it('every row comes from an invented document', () => {
    const rows = [...catalog.rotaries, ...catalog.machines];
    expect(rows.filter((row) => row.from.document !== 'invented').map(({ id }) => id)).toEqual([]);
  });

  it('names are plain words without numbers', () => {
    const names = [...catalog.rotaries, ...catalog.machines].flatMap(({ id, name, from }) => [
      id,
      name,
      from.maker,
    ]);
    expect(names.filter((name) => !/^[A-Za-z]+([ -][a-z]+)?$/.test(name))).toEqual([]);
  });
});

describe('gaps', () => {
  /** What a row leaves out and why; each is one that decides nothing. */
  const DELIBERATE = ['godwit.housing', 'turnstone.inertia', 'twite.liftingPoints'];
  const TILTING_ONLY = /\.(tiltClearRadius|tiltMoment|(brakeTorque|driveTorque|speed|accuracy)\.tilt)$/;

  it('are the deliberate ones, and what a table that does not tilt, or a level spindle, has not', () => {
    const noColumn = new Set(
      catalog.machines.filter(({ spindle }) => spindle === 'horizontal').map(({ id }) => id),
    );
    const level = new Set(catalog.rotaries.filter((row) => row.tilt === null).map(({ id }) => id));
    const found = [
      ...[...catalog.rotaries, ...catalog.machines].flatMap(({ id, from: _, ...row }) => unknownsOf(id, row)),
      ...catalog.rotaries.filter((row) => row.housing === null).map(({ id }) => `${id}.housing`),
    ];
    const open = found.filter((path) => {
      const [id = ''] = path.split('.');
      return (
        !(level.has(id) && TILTING_ONLY.test(path)) &&
        !path.endsWith('.noseToTable') &&
        !(noColumn.has(id) && path.endsWith('.throat'))
      );
    });
    expect(open.sort()).toEqual(DELIBERATE);
  });

  it('noseToTable is left out only where there is no table', () => {
    const without = catalog.machines.filter((row) => row.noseToTable === 'unknown');
    expect(without.every((row) => row.builtIn !== null)).toBe(true);
  });
});

const text = (name: string): string => readFileSync(`${DEMO_FOLDER}/${name}`, 'utf8');

function unknownsOf(path: string, value: unknown): readonly string[] {
  if (value === 'unknown') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => unknownsOf(`${path}.${key}`, each));
}
