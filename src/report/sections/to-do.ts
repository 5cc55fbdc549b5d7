import type { CapitalItem, Decision, MeasureToTake } from '../../rules/decision.ts';
import { type Block, type Cell, heading, list, paragraph, table } from '../blocks/block.ts';
import {
  codeData,
  data,
  enumerate,
  type Inline,
  joined,
  number,
  say,
  strong,
  words,
} from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { type ArrangementAt, arrangementAt, type CheckAt, checksAt } from '../checks-at.ts';
import { machineName, partName, rotaryName } from '../names.ts';
import { CLEARANCE_WORDS, PRICE_WORDS } from '../wording/arrangement.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { featureWords } from '../wording/features.ts';
import { MEASURE_TO_TAKE_WORDS } from '../wording/measures-to-take.ts';

/** What has to be done so that the recommendation holds, and what all of it costs. */
export function toDo(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  return [
    heading(2, say`What has to be done, and what it costs`),
    ...measures(decision, at),
    ...prices(decision, at),
  ];
}

/** Only what the choice rests on: a part that it does not hold asks for nothing. */
function measures(decision: Decision, at: ArrangementAt): readonly Block[] {
  const eased = checksAt(at).filter(
    ({ result }) =>
      result.verdict === 'holds if' &&
      result.easing !== null &&
      (result.part === null || at.arrangement.parts[result.part] === 'holds if'),
  );
  if (eased.length === 0) return [paragraph(say`Nothing has to be done beyond ordering it.`)];
  const kinds = [...new Set(eased.map(({ result }) => result.easing?.measure))];
  const items = kinds.flatMap((measure) =>
    measure === undefined
      ? []
      : [
          measureLine(
            decision,
            measure,
            eased.filter(({ result }) => result.easing?.measure === measure),
          ),
        ],
  );
  return [paragraph(say`The recommendation holds once this is done:`), list(items)];
}

function measureLine(
  decision: Decision,
  measure: MeasureToTake,
  checks: readonly CheckAt[],
): readonly Inline[] {
  const { title, does } = MEASURE_TO_TAKE_WORDS[measure];
  const cases = checks.map((each) => caseOf(decision, measure, each));
  // where each case has commas of its own, commas between them would run them together
  const hasAmounts = checks.some(({ result }) => amountOf(measure, result) !== null);
  const told = hasAmounts ? joined(cases, '; for ') : enumerate(cases);
  return say`${strong([words(title)])}: ${words(does)} For ${told}.`;
}

/** Which check of which part asks for it, and how much of it. */
function caseOf(decision: Decision, measure: MeasureToTake, { result, path }: CheckAt): readonly Inline[] {
  const { name } = CHECK_WORDS[result.check];
  const part = result.part === null ? [] : [partName(decision, result.part, [...path, 'part'])];
  const sayCheck = part.length === 0 || name !== MEASURE_TO_TAKE_WORDS[measure].title.toLowerCase();
  const what = part.length === 0 ? [words(name)] : sayCheck ? say`${part} (${words(name)})` : part;
  const amount = amountOf(measure, result);
  if (amount === null) return what;
  return say`${what}, ${words(amount.words)} ${number([...path, 'easing', 'amount'], amount.unit)}`;
}

/** What the amount of a measure is called; null where it has none. */
function amountOf(measure: MeasureToTake, { easing }: CheckAt['result']) {
  const { amount } = MEASURE_TO_TAKE_WORDS[measure];
  return amount === null || easing === null || easing.amount === null
    ? null
    : { words: amount, unit: easing.unit };
}

function prices(decision: Decision, at: ArrangementAt): readonly Block[] {
  if (at.arrangement.prices.length === 0) return [];
  const rows = at.arrangement.prices.map((item, index): readonly Cell[] => {
    const path: Path = [...at.path, 'prices', index];
    return [[words(PRICE_WORDS[item.item])], which(decision, at, item, path), [price([...path, 'price'])]];
  });
  const total = [[words('In all')], [], [price([...at.path, 'measures', 'price'])]];
  return [
    paragraph(
      say`What has to be ordered. Rigging, training and CAM come on top (see “Money”); tooling and taxes are not in it:`,
    ),
    table(
      [
        [say`Item`, 'left'],
        [say`Which`, 'left'],
        [say`Price`, 'right'],
      ],
      [...rows, total],
    ),
  ];
}

const price = (path: Path): Inline => number(path, 'money', { ifNull: 'ask the seller' });

export function which(
  decision: Decision,
  { arrangement, path: at }: ArrangementAt,
  item: CapitalItem,
  path: Path,
): Cell {
  const { catalog, answers } = decision.inputs;
  switch (item.item) {
    case 'machine': {
      const name = machineName(decision, arrangement.machine, [...at, 'machine']);
      return answers.shop.machine === arrangement.machine ? say`${name}, owned already` : name;
    }
    case 'rotary': {
      if (arrangement.rotary === null) return [];
      const name = rotaryName(decision, arrangement.rotary, [...at, 'rotary']);
      const row = catalog.machines.find(({ id }) => id === arrangement.machine);
      return row?.rotaryIncluded === arrangement.rotary ? say`${name}, comes with the machine` : name;
    }
    case 'axis-drives':
      return item.which === '' ? [] : say`${data([...path, 'which'])} to add`;
    case 'clearance':
      return wordsOr(clearanceWords(item.which), item, path);
    case 'feature':
      return wordsOr(featureWords(item.which), item, path);
    case 'power':
      return wordsOr(supplyWords(item.which), item, path);
    case 'tailstock':
    case 'plates':
    case 'still-open':
    case 'rigging':
    case 'training':
      return [];
  }
}

const wordsOr = (known: string | undefined, item: CapitalItem, path: Path): Cell => {
  if (known !== undefined) return [words(known)];
  return item.which === '' ? [] : [codeData([...path, 'which'])];
};

/** Its price is assumed, and an electrician has to quote it. */
const supplyWords = (which: string): string | undefined =>
  which === 'transformer' || which === 'phase-converter'
    ? `${MEASURE_TO_TAKE_WORDS[which].title.toLowerCase()}, at an assumed price: ask an electrician`
    : undefined;

const clearanceWords = (kind: string): string | undefined =>
  Object.hasOwn(CLEARANCE_WORDS, kind) ? CLEARANCE_WORDS[kind as keyof typeof CLEARANCE_WORDS] : undefined;
