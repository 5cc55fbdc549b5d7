import { type Block, heading, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, number, say, strong, verdictSign, words } from '../../report/blocks/inline.ts';
import { MEASURE_TO_TAKE_WORDS } from '../../report/wording/measures-to-take.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { evaluate } from '../formula/evaluate.ts';
import { writeFormula } from '../formula/write-formula.ts';
import { FULL_POINTS } from '../lessons/run-lesson.ts';
import type { StepKey } from '../lessons/step-key.ts';
import type { ChoiceCase } from '../rules/choices.ts';
import { givenTable, type ShownFormula, shownFormula, wayBlocks } from '../topics/formula-blocks.ts';
import type { Sheet } from './sheet.ts';
import { type SheetFormula, valuesIn, workedSheet } from './sheet-formula.ts';

/** Every step with its numbers put in, line by line, what comes out, and why. */
export const solutionSections = (sheet: Sheet): readonly Explained[] =>
  sheet.ready.lesson.steps.flatMap((_, index) => {
    const key = sheet.ready.keys[index];
    return key === undefined ? [] : [solutionSection(sheet, index, key)];
  });

function solutionSection({ ready, formulas }: Sheet, index: number, key: StepKey): Explained {
  const step = ready.lesson.steps[index];
  const formula = formulas[index] ?? null;
  const findings = formula?.findings ?? formula?.choices?.cases;
  const shown = formula === null || formula.asked === '' ? null : shownSheet(formula);
  const compared = key.worked === null ? null : key.worked.worked;
  const worked = {
    ...shown,
    ...(formula === null || findings === undefined ? {} : heardFindings(formula, findings)),
    ...(compared === null ? {} : { need: compared.need, have: compared.have, margin: compared.margin }),
    step: index + 1,
    ask: step?.ask ?? '',
    tolerance: step?.tolerance ?? 0,
    points: FULL_POINTS,
    value: key.value,
    why: step?.why ?? '',
  };
  const blocks: readonly Block[] = [
    heading(2, say`Step ${number(at('step'), '')}`),
    paragraph([data(at('ask'))]),
    ...(shown === null ? [] : [givenTable(shown, 'Given'), ...wayBlocks(shown)]),
    ...(findings === undefined ? [] : [findingTable(findings.length)]),
    ...(formula?.compared == null || key.worked?.outcome == null
      ? []
      : [verdictLine(key.worked.outcome, key.worked.formula.unit)]),
    paragraph(
      key.kind === 'number'
        ? say`Answer: ${strong([number(at('value'), key.unit)])}, right within ${number(at('tolerance'), '')} percent (${number(at('points'), '')} points).`
        : say`Answer: ${strong([data(at('value'))])} (${number(at('points'), '')} points).`,
    ),
    paragraph([data(at('why'))]),
  ];
  return { root: rootOf(ready.decision, worked), blocks };
}

function verdictLine({ easing, verdict }: Outcome, unit: string): Block {
  const done = easing === null ? words('') : words(` ${MEASURE_TO_TAKE_WORDS[easing].does}`);
  return paragraph(
    say`Needed ${number(at('need'), unit)}, there is ${number(at('have'), unit)}, margin ${number(at('margin'), unit)}: ${verdictSign(verdict)}.${done}`,
  );
}

/** The rules of a kind with their numbers put in. */
const heardFindings = (formula: SheetFormula, findings: readonly ChoiceCase[]) => ({
  findings: findings.map(({ rule, words: what, comesTo }) => ({
    rule: writeFormula(rule),
    what,
    putIn: writeFormula(rule, allValues(formula)),
    comesTo: evaluate(rule, { values: allValues(formula), definitions: [] }) === 0 ? 'no' : comesTo,
  })),
});

/** What is given, and what the lines come to. */
function allValues(formula: SheetFormula): Readonly<Record<string, number>> {
  const values = valuesIn(formula);
  if (formula.asked === '') return values;
  const { steps } = workedSheet(formula, values);
  return { ...values, ...Object.fromEntries(steps.map(({ gives, value }) => [gives, value])) };
}

const findingTable = (count: number): Block =>
  table(
    [
      [say`Rule`, 'left'],
      [say`What it says`, 'left'],
      [say`With the numbers`, 'left'],
      [say`So?`, 'left'],
    ],
    Array.from({ length: count }, (_, index) => [
      [codeData(at('findings', index, 'rule'))],
      [data(at('findings', index, 'what'))],
      [codeData(at('findings', index, 'putIn'))],
      [data(at('findings', index, 'comesTo'))],
    ]),
  );

/** A sheet's formula as an explanation prints one. */
function shownSheet(formula: SheetFormula): ShownFormula {
  const { asked, unit } = formula;
  const values = valuesIn(formula);
  const whole = { ...formula, need: asked, have: asked, sense: 'at-most' as const, unit };
  return shownFormula(whole, values, workedSheet(formula, values));
}
