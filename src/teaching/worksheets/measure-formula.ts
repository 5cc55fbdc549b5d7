import type { Part } from '../../questions/answers.ts';
import { PRICE_WORDS } from '../../report/wording/arrangement.ts';
import type { Arrangement, Bounded, CapitalItem, Decision, Measures } from '../../rules/decision.ts';
import { isFiveAxis } from '../../rules/facts/part-facts.ts';
import { step } from '../formula/formula-source.ts';
import type { FormulaStep, GivenNumber } from '../formula/printed-formula.ts';
import { known, type Lines, type SheetFormula } from './sheet-formula.ts';
import { visesFormula } from './vises-formula.ts';

/** How a measure of an arrangement is worked out, from numbers that can be given. Null: there is no such way on paper. */
export function measureFormula(
  measure: keyof Measures,
  arrangement: Arrangement,
  decision: Decision,
): SheetFormula | null {
  switch (measure) {
    case 'price':
      return whole(priceLines(arrangement, 'C'), 'C', 'money');
    case 'coverage':
      return whole(coverageLines(arrangement, decision), 'V', 'share');
    case 'payback':
      return whole(paybackLines(arrangement), 'P', 'years');
    case 'netPresentValue':
      return whole(presentLines(arrangement), 'W', 'money');
    case 'viseStations':
      return whole(visesFormula(arrangement, decision, 'V'), 'V', '');
    case 'floorArea':
    case 'swapHours':
    case 'margin':
      return null;
  }
}

const whole = (lines: Lines, asked: string, unit: string): SheetFormula | null =>
  lines === null ? null : { ...lines, definitions: [], asked, unit, compared: null };

const sum = (symbols: readonly GivenNumber[]): string =>
  symbols.length === 0 ? '0' : symbols.map(({ symbol }) => symbol).join(' + ');

const items = (
  all: readonly { readonly item: CapitalItem['item']; readonly which: string; readonly price: Bounded }[],
): readonly GivenNumber[] | null =>
  known(
    all.map(({ item, which, price }, index) => ({
      symbol: `K${index + 1}`,
      // which feature it is would say that it is needed
      words: `price: ${PRICE_WORDS[item].toLowerCase().replace('cam', 'CAM')}`,
      unit: 'money',
      input: `price.${item}.${which}.${index}`,
      value: price,
    })),
  );

/** All that has to be bought, item by item. */
export function priceLines({ prices }: Pick<Arrangement, 'prices'>, gives: string): Lines {
  const symbols = items(prices);
  return symbols === null
    ? null
    : { symbols, steps: [step(gives, 'money', 'price of all of it', sum(symbols))] };
}

/** Everything that is paid before the first part. */
export function capitalLines({ money }: Pick<Arrangement, 'money'>, gives: string): Lines {
  const symbols = items(money.capital.items);
  const words = 'price of all of it, with rigging and training';
  return symbols === null ? null : { symbols, steps: [step(gives, 'money', words, sum(symbols))] };
}

const YEARLY = [
  ['q', 'quantity', 'quantity a year', ''],
  ['n', 'lots', 'lots a year', ''],
  ['s', 'setups', 'setups of each lot', ''],
  ['S', 'setupMinutes', 'setup time', 'min'],
  ['c', 'cycleMinutes', 'cycle time', 'min'],
  ['d', 'handlingMinutes', 'handling time of each setup', 'min'],
] as const;

/** Hours of the families that are held, over all hours. */
function coverageLines({ parts }: Arrangement, { inputs }: Decision): Lines {
  const families = inputs.answers.parts.filter(isFiveAxis);
  const symbols: GivenNumber[] = [];
  const steps: FormulaStep[] = [];
  for (const [index, family] of families.entries()) {
    const own = index + 1;
    const held = parts[family.name];
    const given = known([
      ...yearlyOf(family, own),
      heldOf(family, own, held === 'holds' || held === 'holds if'),
    ]);
    if (given === null || held === undefined || held === 'open') return null;
    symbols.push(...given);
    const formula = `(n${own}*s${own}*S${own} + q${own}*(c${own} + s${own}*d${own}))/60`;
    steps.push(step(`h${own}`, 'h', `hours a year: ${family.name}`, formula));
  }
  const all = families.map((_, index) => index + 1);
  const covered = all.map((own) => `k${own}*h${own}`).join(' + ');
  const every = all.map((own) => `h${own}`).join(' + ');
  if (all.length === 0) return null;
  return {
    symbols,
    steps: [
      ...steps,
      step('H_c', 'h', 'hours a year that are held', covered),
      step('H', 'h', 'all five-axis hours a year', every),
      step('V', 'share', 'share of the hours that is covered', 'H_c/H'),
    ],
  };
}

const yearlyOf = ({ name, yearly }: Part, own: number) =>
  YEARLY.map(([letter, key, words, unit]) => ({
    symbol: `${letter}${own}`,
    words,
    unit,
    input: `parts[${name}].yearly.${key}`,
    value: yearly[key],
  }));

const heldOf = ({ name }: Part, own: number, isHeld: boolean) => ({
  symbol: `k${own}`,
  words: 'held by this arrangement: one for yes, nothing for no',
  unit: '',
  input: `parts[${name}].held`,
  value: isHeld ? 1 : 0,
});

function gainLines({ money }: Arrangement): Lines {
  const saved = known(
    money.families.map(({ part, hoursSaved }, index) => ({
      symbol: `h${index + 1}`,
      words: 'hours saved a year',
      unit: 'h',
      input: `parts[${part}].hoursSaved`,
      value: hoursSaved,
    })),
  );
  const others = known([
    {
      symbol: 'r',
      words: 'rate of the shop, an hour',
      unit: 'money',
      input: 'money.shopRate',
      value: money.terms.shopRate,
    },
    { symbol: 'w', words: 'cost of swaps a year', unit: 'money', input: 'swaps.cost', value: money.swapCost },
    {
      symbol: 'y',
      words: 'yearly costs',
      unit: 'money',
      input: 'money.yearlyCosts',
      value: money.running.total,
    },
  ]);
  const capital = capitalLines({ money }, 'C');
  if (saved === null || others === null || capital === null) return null;
  return {
    symbols: [...saved, ...others, ...capital.symbols],
    steps: [
      step('H', 'h', 'hours saved a year', sum(saved)),
      step('A', 'money', 'gain a year', 'r*H - w - y'),
      ...capital.steps,
    ],
  };
}

function paybackLines(arrangement: Arrangement): Lines {
  const gain = gainLines(arrangement);
  if (gain === null) return null;
  return { ...gain, steps: [...gain.steps, step('P', 'years', 'years until it is paid back', 'C/A')] };
}

function presentLines(arrangement: Arrangement): Lines {
  const { money } = arrangement;
  const gain = gainLines(arrangement);
  const more = known([
    {
      symbol: 'i',
      words: 'interest a year',
      unit: 'share',
      input: 'money.interest',
      value: money.terms.interest,
    },
    {
      symbol: 'n',
      words: 'years that are looked at',
      unit: 'years',
      input: 'money.years',
      value: money.terms.years,
    },
    { symbol: 'R', words: 'worth at the end', unit: 'money', input: 'residual', value: money.residual },
  ]);
  if (gain === null || more === null) return null;
  return {
    symbols: [...gain.symbols, ...more],
    steps: [
      ...gain.steps,
      step('v', '', 'what one is worth today that comes at the end', '(1 + i)^(-n)'),
      step('a', '', 'what one a year is worth today', 'if(i > 0, (1 - v)/i, n)'),
      step('W', 'money', 'present value', 'A*a + R*v - C'),
    ],
  };
}
