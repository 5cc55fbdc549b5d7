import { type Block, boxes, heading, list, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, enumerate, number, say, words } from '../../report/blocks/inline.ts';
import { MEASURE_TO_TAKE_WORDS } from '../../report/wording/measures-to-take.ts';
import { CLASS_RULES } from '../../rules/classes/index.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { hasAngles, usedFunctions, writeFormula } from '../formula/write-formula.ts';
import type { Asked } from '../lessons/lesson.ts';
import { FULL_POINTS } from '../lessons/run-lesson.ts';
import type { StepKey } from '../lessons/step-key.ts';
import { FEATURE_DECIDES } from '../topics/feature-topic.ts';
import { namedBlocks } from '../topics/formula-blocks.ts';
import { SPEAKS_SIGNS } from '../topics/rule-topic.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { FEATURE_LESSONS } from '../words/features.ts';
import { endBlocks } from './answer-blocks.ts';
import { enoughIn } from './eased.ts';
import { stepsText } from './from-steps.ts';
import { labelOf } from './given-lines.ts';
import { arrangementId, type Sheet } from './sheet.ts';
import type { SheetFormula } from './sheet-formula.ts';
import { unitText } from './value-text.ts';

/** The steps of a sheet: question, formula, and room for the answer. Nothing that comes out stands in them. */
export const stepSections = (sheet: Sheet): readonly Explained[] =>
  sheet.ready.lesson.steps.flatMap((_, index) => {
    const key = sheet.ready.keys[index];
    return key === undefined ? [] : [stepSection(sheet, index, key)];
  });

function stepSection(sheet: Sheet, index: number, key: StepKey): Explained {
  const { ready, formulas, currency } = sheet;
  const step = ready.lesson.steps[index];
  const formula = formulas[index] ?? null;
  const worked = {
    step: index + 1,
    points: FULL_POINTS,
    ask: step?.ask ?? '',
    tolerance: step?.tolerance ?? 0,
    unit: unitText(key.kind === 'number' ? key.unit : '', currency),
    ...(formula === null ? {} : writtenFormula(sheet, index, formula)),
    ...(step === undefined ? {} : reasoned(step.asked)),
  };
  const blocks: readonly Block[] = [
    heading(2, say`Step ${number(at('step'), '')}`),
    paragraph(say`${data(at('ask'))} (${number(at('points'), '')} points)`),
    ...(formula === null ? thoughtThrough(step?.asked) : formulaBlocks(formula)),
    ...easedBlocks(key, formula),
    ...(key.kind === 'choice'
      ? [paragraph(say`Cross one:`), boxes(key.options.map((option) => [words(option)]))]
      : [
          paragraph(
            say`Answer: ${words(BLANK)} ${key.unit === '' ? words('') : data(at('unit'))} (right within ${number(at('tolerance'), '')} percent)`,
          ),
        ]),
  ];
  return { root: rootOf(ready.decision, worked), blocks };
}

/** Room for a number on paper. */
const BLANK = '…'.repeat(16);

/** A formula as texts, with the labels of what it is given. */
function writtenFormula({ ready, groups, currency }: Sheet, index: number, formula: SheetFormula) {
  const { symbols, definitions, steps, compared } = formula;
  const arrangement = arrangementId(ready, index);
  return {
    symbols: symbols.map((each) => ({
      symbol: each.symbol,
      what: each.words,
      label: underOf(groups, each, formula, arrangement),
    })),
    definitions: definitions.map(({ name, of, formula: line, words: what }) => ({
      formula: `${name}(${of.join(', ')}) = ${writeFormula(line)}`,
      words: what,
    })),
    lines: steps.map(({ gives, formula: line, words: what, unit }) => ({
      what,
      formula: `${gives} = ${writeFormula(line)}`,
      unit: unitText(unit, currency),
    })),
    functions: functionsIn(formula),
    findings: (formula.findings ?? formula.choices?.cases ?? []).map((each) => ({
      ...each,
      rule: writeFormula(each.rule),
    })),
    asked: formula.asked,
    rule:
      compared === null
        ? ''
        : `${compared.need} ${compared.sense === 'at-most' ? '≤' : '≥'} ${compared.have}`,
  };
}

const written = ({ steps, definitions }: SheetFormula): readonly string[] =>
  [...steps, ...definitions].map(({ formula }) => formula);
const functionsIn = (formula: SheetFormula) => usedFunctions(written(formula));

/** The label of a number, or the steps that it comes from. */
function underOf(
  groups: Sheet['groups'],
  each: SheetFormula['symbols'][number],
  { from }: SheetFormula,
  arrangement: string,
): string {
  const steps = from?.[each.symbol];
  return steps === undefined ? labelOf(groups, each, arrangement) : stepsText(steps);
}

function formulaBlocks(formula: SheetFormula): readonly Block[] {
  const { symbols, definitions, steps, compared, from, findings, choices } = formula;
  const angles = written(formula).some(hasAngles);
  return [
    ...(symbols.length === 0 ? [] : [symbolTable(symbols.length)]),
    ...namedBlocks({ angles, functions: functionsIn(formula), definitions }),
    ...(steps.length === 0 ? [] : [wayTable(steps)]),
    ...(Object.keys(from ?? {}).length === 0 ? [] : [paragraph([words(FROM_STEPS)])]),
    ...endBlocks({ compared, findings, choices }),
  ];
}

const FROM_STEPS =
  'Where a step is named instead of a label, take what came out there. A verdict counts as 1 where it holds, also with a measure, and as 0 where it fails; of several verdicts the least.';

const symbolTable = (count: number): Block =>
  table(
    [
      [say`Symbol`, 'left'],
      [say`What it is`, 'left'],
      [say`Given under`, 'left'],
    ],
    Array.from({ length: count }, (_, index) => [
      [codeData(at('symbols', index, 'symbol'))],
      [data(at('symbols', index, 'what'))],
      [codeData(at('symbols', index, 'label'))],
    ]),
  );

/** An empty column for what each line comes to. */
const wayTable = (steps: SheetFormula['steps']): Block =>
  table(
    [
      [say`What it gives`, 'left'],
      [say`Formula`, 'left'],
      [say`Comes to`, 'right'],
      [say`Unit`, 'left'],
    ],
    steps.map((_, index) => [
      [data(at('lines', index, 'what'))],
      [codeData(at('lines', index, 'formula'))],
      [],
      steps[index]?.unit === '' ? [] : [data(at('lines', index, 'unit'))],
    ]),
  );

/** Of a check that falls short: what would be enough all the same. Said whether it falls short or not. */
function easedBlocks({ worked }: StepKey, formula: SheetFormula | null): readonly Block[] {
  if (worked?.outcome == null || formula?.compared == null) return [];
  const { any, enough } = enoughIn(worked.outcome);
  if (!any) return [paragraph(say`Where it falls short, nothing is known that would help: it fails.`)];
  if (enough.length === 0)
    return [paragraph(say`Where it falls short, no measure would be enough here: it fails.`)];
  const titles = enough.map((measure) => words(MEASURE_TO_TAKE_WORDS[measure].title.toLowerCase()));
  return [
    paragraph(
      say`Where it falls short, this would be enough here, and it holds if it is done: ${enumerate(titles, 'or')}.`,
    ),
  ];
}

/** What decides where nothing is worked out. */
function thoughtThrough(asked: Asked | undefined): readonly Block[] {
  if (asked?.kind === 'class') {
    const rules = rulesOut(asked.class);
    return [
      paragraph(
        say`It is ruled out where one of these is so. It suits where nothing speaks against it that weighs, and an arrangement of it passes; else it is possible.`,
      ),
      list(
        rules.map(({ id }, index) => {
          const { title, number: n, limit } = CLASS_RULE_LESSONS[id];
          return say`${words(title)}, ${codeData(at('rules', index))}. N: ${words(n)}. L: ${words(limit)}.`;
        }),
      ),
    ];
  }
  if (asked?.kind !== 'feature') return [];
  const { number: n, limit, plain, otherwise } = FEATURE_LESSONS[asked.feature];
  return [
    paragraph([words(plain)]),
    paragraph(
      say`${codeData(at('rules', 0))}; else ${words(otherwise)}. N: ${words(n)}. L: ${words(limit)}.`,
    ),
  ];
}

const rulesOut = (kind: Extract<Asked, { kind: 'class' }>['class']) =>
  CLASS_RULES.filter(({ about, side }) => about.includes(kind) && side === 'rules out');

function reasoned(asked: Asked): { readonly rules?: readonly string[] } {
  if (asked.kind === 'class')
    return { rules: rulesOut(asked.class).map(({ when }) => `N ${SPEAKS_SIGNS[when]} L`) };
  if (asked.kind === 'feature') return { rules: [FEATURE_DECIDES[FEATURE_LESSONS[asked.feature].rule]] };
  return {};
}
