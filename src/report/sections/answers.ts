import type { Part } from '../../questions/answers.ts';
import { QUESTIONS } from '../../questions/index.ts';
import type { Question, Value } from '../../questions/question.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, details, heading, paragraph, table } from '../blocks/block.ts';
import { type Inline, number, say, words } from '../blocks/inline.ts';
import { partName } from '../names.ts';
import { answerPieces, fieldUnit } from './answer-pieces.ts';
import { unaskedRows } from './unasked-answers.ts';

/** Everything that was said, with what was taken where nothing was. */
export function answers(decision: Decision): readonly Block[] {
  const { parts } = decision.inputs.answers;
  return [
    heading(2, say`The answers`),
    paragraph(
      say`What the decision was made from. Where somebody was not sure, every value of the range was considered.`,
    ),
    answersTable([...rowsOf(decision, 'shop', 0), ...unaskedRows(decision)]),
    ...parts.map((part, index) =>
      details(say`Part: ${partName(decision, part.name, ['inputs', 'answers', 'parts', index, 'name'])}`, [
        answersTable(rowsOf(decision, 'part', index)),
      ]),
    ),
  ];
}

const answersTable = (rows: readonly (readonly Cell[])[]): Block =>
  table(
    [
      [say`Question`, 'left'],
      [say`Answer`, 'left'],
      [say`Remark`, 'left'],
    ],
    rows,
  );

function rowsOf(decision: Decision, of: Question['of'], index: number): readonly (readonly Cell[])[] {
  const { answers: all } = decision.inputs;
  // the decision holds millimeters, whatever units the answers came in
  const asked = QUESTIONS.filter(
    (each) => each.of === of && each.path !== 'units' && each.applies(all, index),
  );
  return asked.map((question) => [
    [words(question.title)],
    answerPieces(decision, question, index),
    isLessThanSolid(question, all.parts[index])
      ? FROM_SHARE
      : remark(decision, question, question.get(all, index)),
  ]);
}

const FROM_SHARE = say`worked out from size, material and the share of the block that is material`;

/** The usual words say that it is solid, which an answers file may deny. */
const isLessThanSolid = ({ id }: Question, part: Part | undefined): boolean =>
  id === 'mass' && part?.mass === 'unknown' && part.fill !== 1;

/** What stands for 'not sure', or that the answer is the usual one. */
function remark(decision: Decision, question: Question, value: Value): readonly Inline[] {
  const { unsure, preset } = question;
  if (isUnsure(value)) {
    if (unsure.as === 'each-kind') return say`each kind was considered`;
    if (unsure.as !== 'range') return withoutDigits(unsure.words) ? [words(unsure.words)] : [];
    return takenAs(decision, question);
  }
  if (ASSUMED_CUTS.has(question.id) && value !== 'detailed')
    return say`a size of cut: its numbers are assumed, and that it is not interrupted`;
  if (preset === null || JSON.stringify(preset.value) !== JSON.stringify(value)) return [];
  return say`the same as the usual answer`;
}

/** Answers that name a size of cut, which says nothing of an interrupted one. */
const ASSUMED_CUTS: ReadonlySet<string> = new Set(['cut', 'contour-cut']);

const isUnsure = (value: Value): boolean =>
  value === 'unknown' || (Array.isArray(value) && value.includes('unknown'));

function takenAs(decision: Decision, { path, field }: Question): readonly Inline[] {
  const range = decision.inputs.notSure?.[path];
  if (range === undefined) return say`a range was considered`;
  if (range[1] === null && (range[0] ?? 0) <= 0) return say`taken as without limit`;
  return say`taken as ${number(['inputs', 'notSure', path], fieldUnit(field))}`;
}

/** Numbers are printed from the decision only. */
const withoutDigits = (text: string): boolean => !/\d/.test(text);
