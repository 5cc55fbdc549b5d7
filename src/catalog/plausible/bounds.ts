import type { Machine, Rotary } from '../catalog.ts';
import { COMMON_PRACTICE, type Doubt, type PlausibleRule, type Surroundings } from './rule.ts';

/** A length of a row, mm, and between which bounds it lies whatever is built. */
interface Bounded<Row> {
  readonly path: readonly (string | number)[];
  readonly least: number;
  readonly most: number;
  readonly of: (row: Row) => unknown;
}

const INCH = 25.4;
/** So many values that fit in the other unit are told as one: the row is in that unit. */
const WHOLE_ROW = 3;

const bounded = <Row>(
  path: Bounded<Row>['path'],
  least: number,
  most: number,
  of: Bounded<Row>['of'],
): Bounded<Row> => ({ path, least, most, of });

const ROTARY_LENGTHS: readonly Bounded<Rotary>[] = [
  bounded(['faceplate'], 30, 2500, (row) => row.faceplate),
  bounded(['swing'], 50, 2800, (row) => row.swing),
  bounded(['centerHeight'], 40, 1500, (row) => row.centerHeight),
  bounded(['tiltClearRadius'], 40, 2000, (row) => row.tiltClearRadius),
  bounded(['base', 'along'], 80, 4000, (row) => row.base.along),
  bounded(['base', 'across'], 60, 3000, (row) => row.base.across),
  bounded(['height'], 60, 2500, (row) => row.height),
];

const MACHINE_LENGTHS: readonly Bounded<Machine>[] = [
  bounded(['travel', 0], 120, 10_000, (row) => row.travel[0]),
  bounded(['travel', 1], 100, 5000, (row) => row.travel[1]),
  bounded(['travel', 2], 100, 3000, (row) => row.travel[2]),
  bounded(['table', 'size', 0], 150, 12_000, (row) => row.table?.size[0]),
  bounded(['table', 'size', 1], 120, 5000, (row) => row.table?.size[1]),
  bounded(['throat'], 100, 5000, (row) => row.throat),
  bounded(['noseDiameter'], 20, 500, (row) => row.noseDiameter),
  bounded(['footprint', 0], 600, 30_000, (row) => row.footprint[0]),
  bounded(['footprint', 1], 600, 20_000, (row) => row.footprint[1]),
  bounded(['footprint', 2], 1000, 9000, (row) => row.footprint[2]),
  bounded(['builtIn', 'faceplate'], 40, 4000, (row) => row.builtIn?.faceplate),
  bounded(['builtIn', 'swing'], 60, 4500, (row) => row.builtIn?.swing),
];

/** What was read as mm and is inches, or the other way round. */
function boundedDoubts<Row>(
  lengths: readonly Bounded<Row>[],
  row: Row,
  { say }: Surroundings,
): readonly Doubt[] {
  const stated = lengths.flatMap((each) => {
    const value = each.of(row);
    return typeof value === 'number' ? [{ ...each, value }] : [];
  });
  const outside = stated.filter(({ value, least, most }) => value < least || value > most);
  const small = outside.filter(({ value, least, most }) => fits(value * INCH, least, most));
  const large = outside.filter(({ value, least, most }) => fits(value / INCH, least, most));
  for (const [each, unit, other] of [
    [small, 'inches', 'mm'],
    [large, 'mm', 'inches'],
  ] as const) {
    if (each.length < WHOLE_ROW || each.length * 2 < stated.length) continue;
    const names = each.slice(0, WHOLE_ROW).map(({ path, value }) => `${pathWords(path)} ${say(value, 'mm')}`);
    return [
      {
        path: [],
        found: `has ${each.length} of ${stated.length} lengths that would be right in ${unit} (${names.join(', ')})`,
        expected: `the unit behind each length, or units of the file in which the row is: it seems to be in ${unit}, read as ${other}`,
      },
    ];
  }
  return outside.map(({ path, value, least, most }) => ({
    path,
    found: `is ${say(value, 'mm')}`,
    expected: `between ${say(least, 'mm')} and ${say(most, 'mm')}`,
    perhaps: inOther(value, least, most),
  }));
}

const fits = (value: number, least: number, most: number): boolean => value >= least && value <= most;
const pathWords = (path: readonly (string | number)[]): string =>
  path.map((step, at) => (typeof step === 'number' ? `[${step}]` : `${at === 0 ? '' : '.'}${step}`)).join('');

function inOther(value: number, least: number, most: number): string | undefined {
  if (fits(value * INCH, least, most)) return `${Number(value.toPrecision(6))} in`;
  return fits(value / INCH, least, most) ? `${Number((value / INCH).toPrecision(6))} mm` : undefined;
}

const REASON = 'nothing that small or large is built for milling';

export const ROTARY_BOUNDS: PlausibleRule<Rotary> = {
  id: 'rotary-lengths',
  reason: REASON,
  source: COMMON_PRACTICE,
  doubts: (row, around) => boundedDoubts(ROTARY_LENGTHS, row, around),
};

export const MACHINE_BOUNDS: PlausibleRule<Machine> = {
  id: 'machine-lengths',
  reason: REASON,
  source: COMMON_PRACTICE,
  doubts: (row, around) => boundedDoubts(MACHINE_LENGTHS, row, around),
};
