import { type Block, figureBlock, heading, list, paragraph } from '../../report/blocks/block.ts';
import {
  codeData,
  data,
  type Inline,
  joined,
  number,
  say,
  strong,
  words,
} from '../../report/blocks/inline.ts';
import { CHECK_WORDS } from '../../report/wording/checks.ts';
import { MEASURE_TO_TAKE_WORDS } from '../../report/wording/measures-to-take.ts';
import { REMEDY_WORDS } from '../../report/wording/remedies.ts';
import { STAGE_WORDS } from '../../report/wording/stages.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import { CHECKS } from '../../rules/checks/index.ts';
import type { Check } from '../../rules/judging/check.ts';
import { decisionOfCheck } from '../examples/example-decision.ts';
import { judgeExample } from '../examples/example-world.ts';
import { type WorkedCheck, workedExample } from '../examples/worked-check.ts';
import { at, type Explained, type Root, rootOf } from '../explained.ts';
import type { PrintedFormula } from '../formula/printed-formula.ts';
import { bars } from '../sketch/bars.ts';
import { checkPicture } from '../sketch/check-picture.ts';
import { circles, corner } from '../sketch/own-sketches.ts';
import { CHECK_LESSONS } from '../words/check-lessons.ts';
import { givenTable, resultLine, type ShownFormula, shownFormula, wayBlocks } from './formula-blocks.ts';
import type { Topic } from './topic.ts';

/** Every check, in the order of the tables. */
export const checkTopics = (): readonly Topic[] =>
  CHECKS.map((check) => ({
    kind: 'check',
    id: check.id,
    title: CHECK_WORDS[check.id].title,
    explain: () => explainCheck(check),
  }));

type Example = NonNullable<ReturnType<typeof workedExample>>;

interface Shown {
  readonly first: Example;
  readonly shown: ShownFormula;
  readonly other: {
    readonly second: Example;
    readonly shown: ShownFormula;
    readonly changed: readonly number[];
  } | null;
}

const onUsualMill = ({ example }: Example): boolean => example.given.machine?.spindle !== 'horizontal';

/** A check that holds, on the usual kind of mill where there is such an example, and the same where it fails. */
function shownExamples(check: Check): Shown {
  const all = check.examples.flatMap((example) => workedExample(check, example) ?? []);
  const holding = all.filter(({ verdict }) => verdict === 'holds');
  const first = holding.find(onUsualMill) ?? holding[0] ?? all[0];
  if (first === undefined) throw new Error(`no example of ${check.id} can be worked out`);
  const shown = shownFormula(first.formula, first.values, first.worked);
  const changes = (of: Example): readonly number[] =>
    of.formula.symbols.flatMap(({ symbol }, index) =>
      of.values[symbol] === first.values[symbol] ? [] : [index],
    );
  const [second] = all
    .filter(({ formula, verdict }) => verdict === 'fails' && sameWay(formula, first.formula))
    .toSorted((a, b) => changes(a).length - changes(b).length);
  if (second === undefined) return { first, shown, other: null };
  const itsShown = shownFormula(second.formula, second.values, second.worked);
  return { first, shown, other: { second, shown: itsShown, changed: changes(second) } };
}

const sameWay = (a: PrintedFormula, b: PrintedFormula): boolean =>
  a.need === b.need && a.have === b.have && a.symbols.length === b.symbols.length;

/** What a check comes to in its example: given numbers, the way, the result, and the sketch. */
export function checkExample(id: CheckId) {
  const check = CHECKS.find((each) => each.id === id);
  if (check === undefined) throw new RangeError(`there is no check ${id}`);
  const { first, shown, other } = shownExamples(check);
  const worked = {
    ...shown,
    other: other?.shown ?? null,
    formula: check.formula,
    source: check.source,
    id: check.id,
  };
  const decision = decisionOfCheck(first.example.given);
  const blocks: readonly Block[] = [
    heading(2, say`An example, worked out`),
    givenTable(shown),
    ...wayBlocks(shown),
    resultLine(shown, [], first.verdict),
    ...(other === null ? [] : [otherLine(other)]),
    ...eased(check),
    ...sketchBlocks(check, rootOf(decision, worked), first),
  ];
  return { decision, worked, blocks };
}

function explainCheck(check: Check): Explained {
  const { decision, worked, blocks } = checkExample(check.id);
  const { title, sentence, need, have } = CHECK_WORDS[check.id];
  const { plain, mistake, careful } = CHECK_LESSONS[check.id];
  return {
    root: rootOf(decision, worked),
    blocks: [
      heading(1, [words(title)]),
      paragraph(
        say`${codeData(at('id'))}, a check of the stage ${strong([words(STAGE_WORDS[check.stage].title)])}.`,
      ),
      paragraph([words(sentence)]),
      paragraph([words(plain)]),
      heading(2, say`The rule`),
      paragraph(
        say`${codeData(at('rule'))}, in short: ${codeData(at('formula'))}. Needed: ${words(need)}. There is: ${words(have)}.`,
      ),
      ...blocks,
      heading(2, say`The usual mistake`),
      paragraph([words(mistake)]),
      ...(careful === undefined ? [] : [heading(2, say`Careful`), paragraph([words(careful)])]),
      ...remedies(check),
      heading(2, say`Where it comes from`),
      paragraph(say`${data(at('source'))}.`),
    ],
  };
}

/** The same with other numbers, where it fails. */
function otherLine({ second, shown, changed }: NonNullable<Shown['other']>): Block {
  const differs = changed.slice(0, MOST_CHANGED).map((index): readonly Inline[] => {
    const own = ['other', 'given', index];
    return say`${data(at(...own, 'words'))}: ${number(at(...own, 'value'), shown.given[index]?.unit ?? '')}`;
  });
  const before = differs.length === 0 ? [] : say`The same with ${joined(differs)}. `;
  return resultLine(shown, ['other'], second.verdict, before);
}

const MOST_CHANGED = 4;

/** What makes it hold where it does not do so plainly. */
function eased(check: Check): readonly Block[] {
  const measures = new Set(
    check.examples.flatMap(({ given, verdict }) =>
      verdict === 'holds if' ? (judgeExample(check, given).easing ?? []) : [],
    ),
  );
  if (measures.size === 0) return [];
  return [
    paragraph(say`It can still hold, if something is done:`),
    list([...measures].map((measure) => [words(MEASURE_TO_TAKE_WORDS[measure].does)])),
  ];
}

function remedies(check: Check): readonly Block[] {
  const all = check.remedies.map((remedy) => words(REMEDY_WORDS[remedy]));
  return all.length === 0
    ? []
    : [heading(2, say`What helps`), paragraph(say`The easiest first: ${joined(all)}.`)];
}

function sketchBlocks(check: Check, root: Root, { worked, formula, values }: WorkedCheck): readonly Block[] {
  const { sketch } = CHECK_LESSONS[check.id];
  const { need, have, steps } = worked;
  if (sketch.as === 'none') return [heading(2, say`Sketch`), paragraph(say`None. ${words(sketch.why)}`)];
  const numbers = { ...values, ...Object.fromEntries(steps.map(({ gives, value }) => [gives, value])) };
  const { title } = CHECK_WORDS[check.id];
  const sketched = { name: `explain-${check.id}`, title, need, have, unit: formula.unit, numbers };
  const draw = {
    picture: () => checkPicture(root, { check: check.id, need, have }),
    circles: () => circles(root, sketched),
    corner: () => corner(root, sketched),
    bars: () => null,
  }[sketch.as];
  return [heading(2, say`Sketch`), ...figureBlock(draw() ?? bars(root, sketched))];
}
