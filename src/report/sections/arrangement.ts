import { MEASURES } from '../../questions/answers.ts';
import type { Arrangement, Decision, Tried } from '../../rules/decision.ts';
import { type Block, details, heading, list, paragraph, table } from '../blocks/block.ts';
import { codeData, enumerate, type Inline, joined, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { partName } from '../names.ts';
import { CLEARANCE_WORDS } from '../wording/arrangement.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
import { measureSources } from './measure-sources.ts';
import { pieces, standing } from './pieces.ts';

/** The recommended arrangement: what it is made of, what it measures, what else was tried with it. */
export function arrangement(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  return [
    heading(2, say`The arrangement`),
    list([
      ...pieces(decision, at),
      ...standing(decision, at),
      say`In the decision file it is ${codeData([...at.path, 'id'])}.`,
    ]),
    ...measures(at),
    measureSources(decision, at),
    ...tried(decision, at),
  ];
}

function measures({ path }: ArrangementAt): readonly Block[] {
  const rows = MEASURES.map((measure) => {
    const { title, means, unit, ifNull = 'not worked out' } = MEASURE_WORDS[measure];
    return [[words(title)], [number([...path, 'measures', measure], unit, { ifNull })], [words(means)]];
  });
  return [
    paragraph(say`What it measures:`),
    table(
      [
        [say`Measure`, 'left'],
        [say`Value`, 'right'],
        [say`What it counts`, 'left'],
      ],
      rows,
    ),
  ];
}

function tried(decision: Decision, { arrangement, path }: ArrangementAt): readonly Block[] {
  const { tried: all } = arrangement;
  if (all.length === 0) return [];
  const rows = all.map((each, index) => [
    enumerate(clearanceOf(each)),
    platesOf(each, [...path, 'tried', index]),
    [number([...path, 'tried', index, 'sureHours'], 'h')],
    isTaken(arrangement, each) ? say`taken` : stopping(decision, each, [...path, 'tried', index]),
  ]);
  return [
    details(say`Additions and plates that were tried with it, and why these were taken`, [
      paragraph(
        say`First come the checks of the arrangement itself, such as T-slots and the place on the table, then the parts
          that it must hold, then the hours that surely hold, then those that may; among equals the one with the fewest
          additions, then the thinnest plates, then the most vise stations, then the one in the middle of the table.
          What stops a setting are checks that additions and plates can change, and those of the arrangement itself.`,
      ),
      table(
        [
          [say`Clearance additions`, 'left'],
          [say`Plates under the rotary`, 'left'],
          [say`Hours that surely hold`, 'right'],
          [say`What stops it`, 'left'],
        ],
        rows,
      ),
    ]),
  ];
}

const isTaken = ({ clearance, plates }: Arrangement, each: Tried): boolean =>
  clearance.join() === each.clearance.join() &&
  plates.map(({ thickness }) => thickness).join() === each.plates.join();

/** Each check once, with the parts that it fails at. */
function stopping(decision: Decision, { stops }: Tried, path: Path): readonly Inline[] {
  const checks = [...new Set(stops.map(({ check }) => check))];
  if (checks.length === 0) return say`nothing; it takes more than is needed, or holds less`;
  const told = checks.map((check): readonly Inline[] => {
    const parts = stops.flatMap(({ check: other, part }, index) =>
      other === check && part !== null ? [partName(decision, part, [...path, 'stops', index, 'part'])] : [],
    );
    const name = words(CHECK_WORDS[check].name);
    return parts.length === 0 ? [name] : say`${name} (${enumerate(parts)})`;
  });
  return joined(told);
}

const clearanceOf = ({ clearance }: Tried): readonly Inline[] =>
  clearance.length === 0 ? say`none` : clearance.map((kind) => words(CLEARANCE_WORDS[kind]));

const platesOf = ({ plates }: Tried, path: readonly (string | number)[]): readonly Inline[] =>
  plates.length === 0
    ? say`none`
    : enumerate(plates.map((_, index) => number([...path, 'plates', index], 'mm')));
