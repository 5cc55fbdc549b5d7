import type { Bounded, Decision } from '../../rules/decision.ts';
import { type Block, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { firstNames } from '../first-names.ts';
import { machineName, partName, rotaryName } from '../names.ts';
import { NEXT_STEPS, PLAIN_CLASS_WORDS } from '../wording/half-page.ts';
import { nothingToBuy, stillOpen } from './half-page-no-winner.ts';
import { risks } from './half-page-risks.ts';

type Line = readonly Inline[];

const MOST_PARTS = 6;
const UNKNOWN_AMOUNT = { ifNull: 'an amount that is not known' };

/**
 * What somebody reads who lends the money and reads nothing else: what to buy or why nothing, for what, at which
 * price, what it does not do, what it brings, what could go wrong, what comes next. No words of the trade.
 */
export function halfPage(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  const said =
    at !== undefined
      ? recommended(decision, at)
      : decision.outcome === 'open'
        ? stillOpen(decision)
        : nothingToBuy(decision);
  return [
    heading(2, say`In half a page`),
    ...said,
    paragraph(say`${strong(say`What to do next:`)}`),
    list(NEXT_STEPS[decision.outcome].map((step) => [words(step)])),
  ];
}

const recommended = (decision: Decision, at: ArrangementAt): readonly Block[] => [
  paragraph(what(decision, at)),
  list([price(decision, at), ...does(decision, at), ...brings(at)]),
  paragraph(say`${strong(say`The biggest risks:`)}`),
  list(risks(decision, at)),
];

function what(decision: Decision, { arrangement, path }: ArrangementAt): Line {
  const machine = machineName(decision, arrangement.machine, [...path, 'machine']);
  const plain = words(PLAIN_CLASS_WORDS[arrangement.class]);
  const why = say`so that more sides are machined before it is taken out`;
  if (arrangement.rotary === null)
    return say`${strong(say`Recommended: buy the milling machine ${machine}.`)} ${words('On it,')} ${plain}, ${why}.`;
  const rotary = rotaryName(decision, arrangement.rotary, [...path, 'rotary']);
  return decision.inputs.answers.shop.machine === arrangement.machine
    ? say`${strong(say`Recommended: buy the rotary ${rotary} for the mill ${machine}, which is owned already.`)} The rotary
        is ${plain}, ${why}.`
    : say`${strong(say`Recommended: buy the milling machine ${machine} and the rotary ${rotary}.`)} The rotary is
        ${plain}, ${why}.`;
}

function price(decision: Decision, { path }: ArrangementAt): Line {
  const toBuy = number([...path, 'measures', 'price'], 'money', UNKNOWN_AMOUNT);
  const all = number([...path, 'money', 'capital', 'total'], 'money', UNKNOWN_AMOUNT);
  const { budget } = decision.inputs.answers.money;
  const of =
    budget === 'unknown'
      ? say`; no budget was named`
      : say`; the budget is ${number(['inputs', 'answers', 'money', 'budget'], 'money')}`;
  return say`It costs ${toBuy} to buy, and ${all} with transport, training and software${of}.`;
}

function does(decision: Decision, { arrangement, path }: ArrangementAt): readonly Line[] {
  const names = (wanted: readonly string[]): Line =>
    enumerate(
      firstNames(
        Object.entries(arrangement.parts)
          .filter(([, verdict]) => wanted.includes(verdict))
          .map(([name]) => [partName(decision, name, [...path, 'parts', name])]),
        MOST_PARTS,
      ),
    );
  const [done, not, open] = [names(['holds', 'holds if']), names(['fails']), names(['open'])];
  const share = number([...path, 'measures', 'coverage'], 'share');
  return [
    say`It is for these parts: ${done}. They make up ${share} of the yearly hours of all work that such a rotary could take over.`,
    ...(not.length === 0 ? [] : [say`It cannot make ${not}, which stays as it is made today.`]),
    ...(open.length === 0 ? [] : [say`It is not known yet whether it can make ${open}.`]),
  ];
}

/** What it brings and when it is paid back; nothing where nothing is known. */
function brings({ arrangement: { money }, path }: ArrangementAt): readonly Line[] {
  const at = (...keys: readonly string[]) => [...path, 'money', ...keys];
  if (money.gain === null) return [];
  const saves = say`It saves ${number(at('hoursSaved'), 'h')} of work a year. After its own yearly costs it brings
    ${number(at('gain'), 'money')} a year`;
  const back =
    money.payback === null
      ? say`; with these numbers it never pays for itself.`
      : say`, and has paid for itself after ${number(at('payback'), 'years')}, interest left out.`;
  return [say`${saves}${back}`, ...present(money.netPresentValue, at)];
}

/** The present value in words: a banker reads whether it is above or below nothing. */
function present(
  value: Bounded,
  at: (...keys: readonly string[]) => readonly (string | number)[],
): readonly Line[] {
  if (value === null) return [];
  const [low, high] = typeof value === 'number' ? [value, value] : value;
  const over = say`Over ${number(at('terms', 'years'), 'years')} at ${number(at('terms', 'interest'), 'share')} interest,
    and with what it can be sold for then,`;
  const amount = (magnitude: boolean): Inline => number(at('netPresentValue'), 'money', { magnitude });
  if (low !== null && low >= 0)
    return [say`${over} it brings back ${amount(true)} more than it costs (present value).`];
  if (high !== null && high < 0)
    return [say`${over} it brings back ${amount(true)} less than it costs (present value).`];
  return [
    say`${over} what it brings back less what it costs is ${amount(false)} (present value; below zero it is a loss).`,
  ];
}
