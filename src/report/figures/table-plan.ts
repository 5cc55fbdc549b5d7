import type { Panel } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, number, say, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, type CheckAt, checksAt, worstFirst } from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import { MOUNTING_WORDS } from '../wording/arrangement.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
import { sentenceCase } from '../wording/sentence-case.ts';
import { checkTold } from './check-told.ts';
import { drawnText, type Figure, notKnown } from './figure.ts';
import { otherWay, whyNotBothWays } from './mountings.ts';
import { baseOf } from './on-table.ts';
import { together } from './stack-shapes.ts';
import { tablePlanMeasures } from './table-measures.ts';
import { rotaryShapes, tableShapes, tipShapes, viseShapes, workShapes } from './table-shapes.ts';
import { type Standing, standingOf } from './table-standing.ts';

/**
 * The machine table from above with the rotary on it, both ways in which it can be mounted side by side; one that does not
 * pass says why. Null where there is no table beside a rotary, or where the spindle is level.
 */
export function tablePlan(decision: Decision, at: ArrangementAt): Figure | null {
  const first = standingOf(decision, at);
  if (first === null) return null;
  const other = otherWay(decision, at);
  const second = other !== null && 'at' in other ? standingOf(decision, other.at) : null;
  const ways = [first, ...(second === null ? [] : [second])];
  const said = wordsOf(decision, ways);
  return {
    words: said,
    scene: {
      name: 'table-from-above',
      title: drawnText(say`The machine table from above`, decision),
      description: drawnText(said, decision),
      panels: ways.map((way) => panelOf(decision, way)),
      toScale: true,
      abreast: true,
      notDrawn: [
        ...ways.flatMap(({ at: each }) =>
          whyNot(decision, each).map((sentence) => drawnText(sentence, decision)),
        ),
        ...whyNotBothWays(other),
        ...notDrawn(first),
      ],
    },
  };
}

function panelOf(decision: Decision, way: Standing): Panel {
  const { at, rows, lies, swing, longest, tips } = way;
  const dropped = droppedBy(at);
  const fate = dropped === null ? [] : say` – ${words(CHECK_WORDS[dropped.result.check].name)} fails`;
  const mounting = words(sentenceCase(MOUNTING_WORDS[at.arrangement.mounting]));
  const onIt = together([
    viseShapes(decision, at.arrangement, rows.machine),
    rotaryShapes(rows, lies, swing?.result ?? null),
    workShapes(rows, lies, longest),
  ]);
  return {
    title: drawnText(say`${mounting}, the door below${fate}`, decision),
    ...together([tableShapes(rows.machine, onIt.shapes), onIt, tipShapes(tips)]),
    dimensions: tablePlanMeasures(decision, way),
    labels: [],
  };
}

/** The check that an arrangement was dropped by, where it is worst; null where it was not dropped. */
function droppedBy(at: ArrangementAt): CheckAt | null {
  const { dropped } = at.arrangement;
  if (dropped === null) return null;
  return worstFirst(checksAt(at)).find(({ result }) => result.check === dropped.check) ?? null;
}

/** Why a way does not pass, as a sentence; none where it does. */
function whyNot(decision: Decision, at: ArrangementAt): readonly (readonly Inline[])[] {
  const by = droppedBy(at);
  if (by === null) return [];
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const { need, have } = checkNumbers(by);
  return [
    say`${name} does not pass: ${words(CHECK_WORDS[by.result.check].name)}, ${need} needed, ${have} there.`,
  ];
}

function wordsOf(decision: Decision, ways: readonly Standing[]): readonly Inline[] {
  const told = ways.map(({ at, worst }): readonly Inline[] => {
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
    const vises = say`, ${words(title.toLowerCase())}: ${number([...path, 'measures', 'viseStations'], unit, { ifNull })}`;
    const by = droppedBy(at);
    const tight = [worst, by?.result.check === worst?.result.check ? null : by].filter(
      (each) => each !== null,
    );
    return say`${name}${place}${free}${vises}; ${joined(tight.map(checkTold))}`;
  });
  return say`The machine table from above, to scale, the door below. ${joined(told, '. ')}.`;
}

function notDrawn({ rows }: Standing): readonly string[] {
  const unknown = [
    ...(rows.rotary !== null && baseOf(rows.rotary) === null ? ['the base of the rotary'] : []),
    ...(rows.rotary?.housing === null ? ['the housing beside the work'] : []),
    ...(tableShapes(rows.machine, []).shapes.some(({ thing }) => thing === 'slot') ? [] : ['the T-slots']),
  ];
  return notKnown(unknown);
}
