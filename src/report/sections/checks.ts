import type { Bounded, Decision } from '../../rules/decision.ts';
import { STAGES, type StageId } from '../../rules/stages/index.ts';
import { type Block, type Cell, details, figureBlock, heading, paragraph, table } from '../blocks/block.ts';
import {
  codeData,
  data,
  type Inline,
  joined,
  keyName,
  number,
  say,
  strong,
  verdictSign,
  words,
} from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import {
  arrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  ofCoveredParts,
  worstFirst,
} from '../checks-at.ts';
import { type Explanation, explained } from '../figures/explanations.ts';
import { marginsChart } from '../figures/margins-chart.ts';
import { partName } from '../names.ts';
import { qualifier } from '../qualifier.ts';
import { valueName } from '../value-name.ts';
import { splitValuePath, valueUnit, valueWords } from '../value-words.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { STAGE_WORDS } from '../wording/stages.ts';
import { drawnBeside } from './drawn-beside.ts';

/** Every check of the recommended arrangement: one line each, and behind it every part with its numbers. */
export function checks(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  const all = checksAt(at);
  const covered = ofCoveredParts(at);
  const staged = (checks: readonly CheckAt[], stage: StageId): readonly CheckAt[] =>
    checks.filter(({ result }) => result.stage === stage);
  // the table and the building are drawn where they are compared
  const drawn = explained(decision, at, worstFirst(covered), ['faceplate', 'stack']);
  return [
    heading(2, say`Its checks`),
    paragraph(
      say`Of the parts that it holds, each line shows the one at which the check is tightest. Under each table every
        part can be opened, those that it does not hold too, with formula, numbers and source. A margin is what is
        left over: less than nothing means that it falls short, and that something has to be done. Heights are counted
        from the tilt axis, from the rotary axis where nothing tilts.`,
    ),
    ...figureBlock(marginsChart(decision, at)),
    ...STAGES.flatMap((stage) =>
      stageBlocks(decision, stage, staged(all, stage), staged(covered, stage), drawn),
    ),
  ];
}

function stageBlocks(
  decision: Decision,
  stage: StageId,
  all: readonly CheckAt[],
  covered: readonly CheckAt[],
  drawn: readonly Explanation[],
): readonly Block[] {
  if (all.length === 0) return [];
  const { title, asks } = STAGE_WORDS[stage];
  const lines = inCheckOrder(firstOfEach(worstFirst(covered)), all);
  return [
    heading(3, say`Checks: ${words(title.toLowerCase())}`),
    paragraph([words(asks)]),
    table(
      [
        [say`Check`, 'left'],
        [say`Verdict`, 'left'],
        [say`Needed`, 'right'],
        [say`There is`, 'right'],
        [say`Margin`, 'right'],
        [say`Tightest at`, 'left'],
      ],
      lines.map((each) => [
        titleOf(decision, each),
        verdictOf(each),
        ...numbersOf(each),
        whereOf(decision, each),
      ]),
    ),
    ...drawn
      .filter(({ check }) => check.result.stage === stage)
      .flatMap((each) => drawnBeside(decision, each)),
    details(say`Every part, with formula, numbers and source: ${words(title.toLowerCase())}`, [
      ...firstOfEach(all).flatMap(({ result }) =>
        checkBlocks(
          decision,
          all.filter((each) => each.result.check === result.check),
        ),
      ),
    ]),
  ];
}

/** As the checks come, not as they are sorted: a reader finds them where they are in the list of checks. */
const inCheckOrder = (chosen: readonly CheckAt[], all: readonly CheckAt[]): readonly CheckAt[] =>
  firstOfEach(all).flatMap(({ result }) => chosen.filter((each) => each.result.check === result.check));

function titleOf(decision: Decision, each: CheckAt): Cell {
  const title = words(CHECK_WORDS[each.result.check].title);
  const counted = qualifier(decision, each);
  return counted === null ? [title] : say`${title} (${words(counted)})`;
}

const verdictOf = ({ result }: CheckAt): Cell =>
  result.advisory ? say`${verdictSign(result.verdict)}, to be asked` : [verdictSign(result.verdict)];

function numbersOf(at: CheckAt): readonly Cell[] {
  const { need, have, margin } = checkNumbers(at);
  return [need, have, margin];
}

function whereOf(decision: Decision, { result, path }: CheckAt): Cell {
  const part = result.part === null ? [] : [partName(decision, result.part, [...path, 'part'])];
  if (result.binding === '') return part;
  const binding = data([...path, 'binding']);
  return part.length === 0 ? [binding] : say`${part}: ${binding}`;
}

/** One check over all parts: what it compares, by which formula, from which source, and the numbers of each. */
function checkBlocks(decision: Decision, results: readonly CheckAt[]): readonly Block[] {
  const first = results[0];
  if (first === undefined) return [];
  const { title, sentence, need, have } = CHECK_WORDS[first.result.check];
  return [
    paragraph(
      say`${strong([words(`${title}.`)])} ${words(sentence)} Needed: ${words(need)}. There is: ${words(have)}. Formula:
        ${codeData([...first.path, 'formula'])}. Source: ${data([...first.path, 'source'])}.`,
    ),
    table(
      [
        [say`Part`, 'left'],
        [say`Verdict`, 'left'],
        [say`Needed`, 'right'],
        [say`There is`, 'right'],
        [say`Margin`, 'right'],
        [say`What went in`, 'left'],
      ],
      results.map((each) => [
        each.result.part === null && each.result.binding === '' ? say`all of it` : whereOf(decision, each),
        verdictOf(each),
        ...numbersOf(each),
        inputsOf(decision, each),
      ]),
    ),
  ];
}

/** Inputs that are a yes (1) or a no (0), however they are computed with. */
const YES_OR_NO: ReadonlySet<string> = new Set(['needed', 'standard', 'standard or offered', 'work.loading']);

const yesOrNo = (value: Bounded | undefined): string =>
  typeof value !== 'number' ? 'not known' : value > 0 ? 'yes' : 'no';

/** The numbers by name: what is the part's own needs no owner beside it. */
function inputsOf(decision: Decision, { result, path }: CheckAt): Cell {
  const told = Object.keys(result.inputs).map((name): readonly Inline[] => {
    const at = [...path, 'inputs', name];
    const unit = result.inputUnits?.[name] ?? valueUnit(name);
    const found = valueWords(name);
    const own = found !== undefined && splitValuePath(name).list === 'parts';
    const what =
      found === undefined ? [keyName(at)] : own ? [words(found.words)] : valueName(decision, name, at);
    return YES_OR_NO.has(name)
      ? say`${what}: ${words(yesOrNo(result.inputs[name]))}`
      : say`${what} ${number(at, unit)}`;
  });
  return joined(told);
}
