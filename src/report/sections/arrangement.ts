import { MEASURES } from '../../questions/answers.ts';
import type { Decision, Tried } from '../../rules/decision.ts';
import { type Block, details, heading, list, paragraph, table } from '../blocks/block.ts';
import { codeData, enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { CLEARANCE_WORDS } from '../wording/arrangement.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
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
    ...tried(at),
  ];
}

function measures({ path }: ArrangementAt): readonly Block[] {
  const rows = MEASURES.map((measure) => {
    const { title, means, unit } = MEASURE_WORDS[measure];
    return [
      [words(title)],
      [number([...path, 'measures', measure], unit, { ifNull: 'not worked out' })],
      [words(means)],
    ];
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

function tried({ arrangement: { tried: all }, path }: ArrangementAt): readonly Block[] {
  if (all.length === 0) return [];
  const rows = all.map((each, index) => [
    enumerate(clearanceOf(each)),
    platesOf(each, [...path, 'tried', index]),
    [number([...path, 'tried', index, 'sureHours'], 'h')],
  ]);
  return [
    details(say`Additions and plates that were tried with it, and why these were taken`, [
      paragraph(
        say`Taken is what holds most hours for sure; among equals the one with the fewest additions, then the thinnest
          plates, then the most vise stations, then the one in the middle of the table.`,
      ),
      table(
        [
          [say`Clearance additions`, 'left'],
          [say`Plates under the rotary`, 'left'],
          [say`Hours that surely hold`, 'right'],
        ],
        rows,
      ),
    ]),
  ];
}

const clearanceOf = ({ clearance }: Tried): readonly Inline[] =>
  clearance.length === 0 ? say`none` : clearance.map((kind) => words(CLEARANCE_WORDS[kind]));

const platesOf = ({ plates }: Tried, path: readonly (string | number)[]): readonly Inline[] =>
  plates.length === 0
    ? say`none`
    : enumerate(plates.map((_, index) => number([...path, 'plates', index], 'mm')));
