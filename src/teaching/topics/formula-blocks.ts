import { type Block, list, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, number, type Piece, say, verdictSign, words } from '../../report/blocks/inline.ts';
import type { Path } from '../../report/blocks/path.ts';
import type { Verdict } from '../../rules/decision.ts';
import { at } from '../explained.ts';
import type { GivenNumber, PrintedFormula } from '../formula/printed-formula.ts';
import { givenNumbers, type Worked, type WorkedStep } from '../formula/work-out.ts';
import { hasAngles, usedFunctions, writeFormula } from '../formula/write-formula.ts';

/** A formula worked out, as an explanation looks it up. */
export interface ShownFormula {
  readonly given: readonly GivenNumber[];
  readonly definitions: readonly { readonly formula: string; readonly words: string }[];
  readonly steps: readonly WorkedStep[];
  readonly need: number;
  readonly have: number;
  readonly margin: number;
  readonly rule: string;
  readonly unit: string;
  readonly angles: boolean;
  readonly functions: ReturnType<typeof usedFunctions>;
}

/** What is printed of a formula and its numbers. */
export function shownFormula(
  formula: PrintedFormula,
  values: Readonly<Record<string, number>>,
  { steps, need, have, margin }: Worked,
): ShownFormula {
  const written = [...formula.steps, ...formula.definitions].map((each) => each.formula);
  return {
    given: givenNumbers(formula, values),
    definitions: formula.definitions.map((each) => ({
      formula: `${each.name}(${each.of.join(', ')}) = ${writeFormula(each.formula)}`,
      words: each.words,
    })),
    steps: steps.map((each) => ({ ...each, formula: `${each.gives} = ${writeFormula(each.formula)}` })),
    need,
    have,
    margin,
    rule: `${formula.need} ${formula.sense === 'at-most' ? '≤' : '≥'} ${formula.have}`,
    unit: formula.unit,
    angles: written.some(hasAngles),
    functions: usedFunctions(written),
  };
}

/** What is given: symbols with their words, units and numbers. */
export const givenTable = (shown: ShownFormula, heading = 'In the example'): Block =>
  table(
    [
      [say`Symbol`, 'left'],
      [say`What it is`, 'left'],
      [[words(heading)], 'right'],
    ],
    shown.given.map(({ unit }, index) => [
      [codeData(at('given', index, 'symbol'))],
      [data(at('given', index, 'words'))],
      [number(at('given', index, 'value'), unit)],
    ]),
  );

/** The way: each line as a formula, with its numbers put in, and what it comes to. */
export function wayBlocks(shown: ShownFormula): readonly Block[] {
  const steps =
    shown.steps.length === 0
      ? []
      : [
          table(
            [
              [say`What it gives`, 'left'],
              [say`Formula`, 'left'],
              [say`With the numbers`, 'left'],
              [say`Comes to`, 'right'],
            ],
            shown.steps.map(({ unit }, index) => {
              const own = at('steps', index);
              return [
                [data([...own, 'words'])],
                [codeData([...own, 'formula'])],
                [codeData([...own, 'putIn'])],
                [number([...own, 'value'], unit)],
              ];
            }),
          ),
        ];
  return [...namedBlocks(shown), ...steps];
}

/** What has to be known to read formulas: angles, and names of functions. They stand under `functions` and `definitions`. */
export const namedBlocks = ({
  angles,
  functions,
  definitions,
}: Pick<ShownFormula, 'angles' | 'functions'> & {
  readonly definitions: readonly unknown[];
}): readonly Block[] => {
  const items = [
    ...functions.map((_, index) => at('functions', index)),
    ...definitions.map((_, index) => at('definitions', index)),
  ];
  return [
    ...(angles ? [paragraph(say`Angles are in degrees.`)] : []),
    ...(items.length === 0
      ? []
      : [list(items.map((own) => say`${codeData([...own, 'formula'])}: ${data([...own, 'words'])}`))]),
  ];
};

/** What it comes to: need against have, margin, verdict. */
export const resultLine = (
  shown: ShownFormula,
  place: Path,
  verdict: Verdict,
  before: Piece = words(''),
): Block =>
  paragraph(
    say`${before}Needed ${number(at(...place, 'need'), shown.unit)}, there is ${number(at(...place, 'have'), shown.unit)},
      margin ${number(at(...place, 'margin'), shown.unit)}: ${verdictSign(verdict)}.`,
  );
