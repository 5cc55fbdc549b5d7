import type { Dimension, Panel } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { type ArrangementAt, arrangementAt, type CheckAt, ofCoveredParts } from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import { MOUNTING_WORDS } from '../wording/arrangement.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
import { sentenceCase } from '../wording/sentence-case.ts';
import { drawnText, type Figure, measured, notKnown } from './figure.ts';
import { plain, type Rows, rowsOf } from './known-stack.ts';
import { baseOf, type OnTable, onTable } from './on-table.ts';
import { together } from './stack-shapes.ts';
import { rotaryShapes, tableShapes, viseShapes } from './table-shapes.ts';

/** One way in which the rotary can stand. */
interface Standing {
  readonly at: ArrangementAt;
  readonly rows: Rows;
  readonly lies: OnTable;
  /** at the largest work that it holds */
  readonly swing: CheckAt | null;
}

/**
 * The machine table from above with the rotary on it, both ways in which it can be mounted beside each other. Null where
 * there is no table beside a rotary, or where the spindle is level.
 */
export function tablePlan(decision: Decision, at: ArrangementAt): Figure | null {
  const other =
    at.arrangement.id === decision.recommended ? arrangementAt(decision, decision.otherWay) : undefined;
  const ways = [at, ...(other === undefined ? [] : [other])].flatMap(
    (each) => standingOf(decision, each) ?? [],
  );
  const [first] = ways;
  if (first === undefined) return null;
  const said = wordsOf(decision, ways);
  return {
    words: said,
    scene: {
      name: 'table-from-above',
      title: drawnText(say`The machine table from above`, decision),
      description: drawnText(said, decision),
      panels: ways.map((way) => panelOf(decision, way)),
      toScale: true,
      notDrawn: notDrawn(first),
    },
  };
}

function standingOf(decision: Decision, at: ArrangementAt): Standing | null {
  const rows = rowsOf(decision, at.arrangement);
  const lies = onTable(at.arrangement);
  if (rows === null || rows.rotary === null || lies === null || rows.machine.spindle !== 'vertical')
    return null;
  const size = rows.machine.table?.size.map(plain) ?? [null];
  if (size.includes(null)) return null;
  const swings = ofCoveredParts(at).filter(
    ({ result }) => result.check === 'swing' && plain(result.need) !== null,
  );
  const largest = swings.toSorted((a, b) => Number(b.result.need) - Number(a.result.need))[0];
  return { at, rows, lies, swing: largest ?? null };
}

function panelOf(decision: Decision, way: Standing): Panel {
  const { at, rows, lies, swing } = way;
  return {
    title: drawnText(
      say`${words(sentenceCase(MOUNTING_WORDS[at.arrangement.mounting]))}, the door below`,
      decision,
    ),
    ...together([
      tableShapes(rows.machine),
      viseShapes(decision, at.arrangement, rows.machine),
      rotaryShapes(rows, lies, swing?.result ?? null),
    ]),
    dimensions: [
      ...tableMeasures(decision, rows),
      ...rotaryMeasures(decision, way),
      ...freeMeasures(decision, way),
    ],
    labels: [],
  };
}

function tableMeasures(decision: Decision, { machine, machinePath: row }: Rows): readonly Dimension[] {
  const half = (value: number | null): number => (value ?? 0) / 2;
  const [wide = null, deep = null] = machine.table?.size.map(plain) ?? [];
  const [travelX, travelY] = [half(plain(machine.travel[0])), half(plain(machine.travel[1]))];
  const level = (name: readonly Inline[], path: Path, x: number, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [-x, y], side: 'above' });
  const upright = (name: readonly Inline[], path: Path, x: number, y: number): readonly Dimension[] =>
    measured(decision, { name, path, from: [x, -y], side: 'right' });
  return [
    ...level(say`length of the table`, [...row, 'table', 'size', 0], half(wide), half(deep)),
    ...level(say`X travel`, [...row, 'travel', 0], travelX, travelY),
    ...upright(say`depth of the table`, [...row, 'table', 'size', 1], half(wide), half(deep)),
    ...upright(say`Y travel`, [...row, 'travel', 1], travelX, travelY),
  ];
}

/** The base as long as it is along and across its axis, and the circle of the largest work. */
function rotaryMeasures(decision: Decision, { at, rows, lies, swing }: Standing): readonly Dimension[] {
  const { rotary, tablePath: row } = rows;
  const base = rotary === null ? null : baseOf(rotary);
  if (rotary === null || base === null) return [];
  const [low] = lies.rectangle(...base);
  const alongX = at.arrangement.mounting.endsWith('along-x');
  const need = plain(swing?.result.need ?? null);
  return [
    ...measured(decision, {
      name: say`base along X`,
      path: [...row, 'base', alongX ? 'along' : 'across'],
      from: low,
      side: 'below',
    }),
    ...measured(decision, {
      name: say`base along Y`,
      path: [...row, 'base', alongX ? 'across' : 'along'],
      from: low,
      side: 'left',
    }),
    ...(swing === null || need === null || rotary.tilt === null
      ? []
      : measured(decision, {
          name: say`circle of the largest work`,
          path: [...swing.path, 'need'],
          from: [lies.center[0] - need / 2, lies.center[1]],
          side: 'below',
        })),
  ];
}

/** What stays free of the table to the left and to the right of rotary and work. */
function freeMeasures(decision: Decision, { at, rows }: Standing): readonly Dimension[] {
  const [wide = null, deep = null] = rows.machine.table?.size.map(plain) ?? [];
  const right = plain(at.arrangement.space?.right ?? null);
  if (wide === null || deep === null || at.arrangement.space === null) return [];
  const edge = (x: number) => [x, -deep / 2] as const;
  const left = measured(decision, {
    name: say`free on the left`,
    path: [...at.path, 'space', 'left'],
    from: edge(-wide / 2),
    side: 'below',
  });
  if (right === null) return left;
  const name = say`free on the right`;
  const path = [...at.path, 'space', 'right'];
  return [...left, ...measured(decision, { name, path, from: edge(wide / 2 - right), side: 'below' })];
}

function wordsOf(decision: Decision, ways: readonly Standing[]): readonly Inline[] {
  const told = ways.map(({ at }): readonly Inline[] => {
    const { path, arrangement } = at;
    const name = arrangementName(decision, arrangement.id, [...path, 'id']);
    const { title, unit, ifNull = 'not worked out' } = MEASURE_WORDS.viseStations;
    const free =
      arrangement.space === null
        ? []
        : say`, ${number([...path, 'space', 'left'], 'mm')} of the table free on the left and ${number([...path, 'space', 'right'], 'mm')} on the right`;
    const place =
      arrangement.place === null
        ? []
        : say`, its center ${number([...path, 'place', 'x'], 'mm')} along X and ${number([...path, 'place', 'y'], 'mm')} along Y from the middle of the table`;
    return say`${name}${place}${free}, ${words(title.toLowerCase())}: ${number([...path, 'measures', 'viseStations'], unit, { ifNull })}`;
  });
  return say`The machine table from above, to scale, the door below. ${joined(told)}.`;
}

function notDrawn({ rows }: Standing): readonly string[] {
  const unknown = [
    ...(rows.rotary !== null && baseOf(rows.rotary) === null ? ['the base of the rotary'] : []),
    ...(rows.rotary?.housing === null ? ['the housing beside the work'] : []),
    ...(tableShapes(rows.machine).shapes.some(({ thing }) => thing === 'slot') ? [] : ['the T-slots']),
  ];
  return notKnown(unknown);
}
