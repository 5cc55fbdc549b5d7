import type { Decision, MoneyFormulas } from '../../rules/decision.ts';
import { type Block, type Cell, table } from '../blocks/block.ts';
import { data, type Inline, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { partName } from '../names.ts';
import { PRICE_WORDS } from '../wording/arrangement.ts';
import { FORMULA_WORDS } from '../wording/money.ts';
import { which } from './to-do.ts';

const amount = (path: Path, ifNull = 'not known'): Inline => number(path, 'amount', { ifNull });

/** Setups and hours, now and then, family by family. */
export function hours(decision: Decision, { arrangement, path }: ArrangementAt): Block {
  const rows = arrangement.money.families.map(({ part }, index): readonly Cell[] => {
    const at = (key: string): Path => [...path, 'money', 'families', index, key];
    return [
      [partName(decision, part, at('part'))],
      [number(at('setupsNow'), '')],
      [number(at('setupsThen'), '')],
      [number(at('hoursNow'), 'h')],
      [number(at('hoursThen'), 'h')],
      [number(at('hoursSaved'), 'h')],
      [amount(at('gain'))],
    ];
  });
  const all = (key: string): Path => [...path, 'money', key];
  return table(
    [
      [say`Family`, 'left'],
      [say`Setups now`, 'right'],
      [say`Then`, 'right'],
      [say`Hours now`, 'right'],
      [say`Then`, 'right'],
      [say`Saved`, 'right'],
      [say`Worth a year`, 'right'],
    ],
    [...rows, [say`In all`, [], [], [], [], [number(all('hoursSaved'), 'h')], [amount(all('savings'))]]],
  );
}

/** Item by item; the sum is what is paid. */
export function capital(decision: Decision, at: ArrangementAt): Block {
  const root = [...at.path, 'money', 'capital'];
  const rows = at.arrangement.money.capital.items.map((item, index): readonly Cell[] => {
    const path: Path = [...root, 'items', index];
    return [
      [words(PRICE_WORDS[item.item])],
      which(decision, at, item, path),
      [amount([...path, 'price'], 'ask the seller')],
    ];
  });
  return table(
    [
      [say`Item`, 'left'],
      [say`Which`, 'left'],
      [say`Price`, 'right'],
    ],
    [...rows, [say`In all`, [], [amount([...root, 'total'])]]],
  );
}

/** What comes in, what goes out, what is left. */
export function yearly({ path }: ArrangementAt): Block {
  const at = (...keys: readonly (string | number)[]): Path => [...path, 'money', ...keys];
  const rate = number(at('terms', 'shopRate'), 'money');
  return table(
    [
      [say`A year`, 'left'],
      [say`Made of`, 'left'],
      [say`Amount`, 'right'],
    ],
    [
      [say`Hours saved`, say`${number(at('hoursSaved'), 'h')} at ${rate}`, [amount(at('savings'))]],
      [
        say`less swaps of the rotary`,
        say`${number(at('swapHours'), 'h')} at ${rate}`,
        [amount(at('swapCost'))],
      ],
      [
        say`less yearly costs`,
        say`service, CAM maintenance, insurance`,
        [amount(at('running', 'items', 0, 'price'))],
      ],
      [say`Gain`, [], [amount(at('gain'))]],
    ],
  );
}

/** Each result with its formula and where that stands, after the numbers that go into it. */
export function results({ path }: ArrangementAt): Block {
  const at = (...keys: readonly string[]): Path => [...path, 'money', ...keys];
  const input = (name: readonly Inline[], symbol: string, value: Inline): readonly Cell[] => [
    name,
    [value],
    [words(symbol)],
    [],
  ];
  const shown: Readonly<Partial<Record<keyof MoneyFormulas, Inline>>> = {
    gain: amount(at('gain')),
    payback: number(at('payback'), 'years', { ifNull: 'never' }),
    netPresentValue: amount(at('netPresentValue')),
  };
  const formulas = Object.keys(FORMULA_WORDS) as readonly (keyof MoneyFormulas)[];
  return table(
    [
      [say`What`, 'left'],
      [say`Value`, 'right'],
      [say`Formula`, 'left'],
      [say`Source`, 'left'],
    ],
    [
      input(say`Paid before the first part`, 'C', amount(at('capital', 'total'))),
      input(say`Worth at the end, never more than it was bought for`, 'R', amount(at('residual'))),
      input(say`Interest a year`, 'i', number(at('terms', 'interest'), 'share')),
      input(say`Years`, 'n', number(at('terms', 'years'), 'years')),
      ...formulas.map((each): readonly Cell[] => [
        [words(FORMULA_WORDS[each])],
        shown[each] === undefined ? [] : [shown[each]],
        [data(['moneyFormulas', each, 'formula'])],
        [data(['moneyFormulas', each, 'source'])],
      ]),
    ],
  );
}

/** Gain, payback and present value with the rate, or the parts, so many times as large. */
export function sensitivity({ arrangement, path }: ArrangementAt): Block {
  const { sensitivity: all } = arrangement.money;
  const rows = (key: keyof typeof all, name: string): readonly (readonly Cell[])[] =>
    all[key].map((_, index): readonly Cell[] => {
      const at = (field: string): Path => [...path, 'money', 'sensitivity', key, index, field];
      return [
        [words(name)],
        [number(at('times'), 'share')],
        [amount(at('gain'))],
        [number(at('payback'), 'years', { ifNull: 'never' })],
        [amount(at('netPresentValue'))],
      ];
    });
  return table(
    [
      [say`What changes`, 'left'],
      [say`To`, 'right'],
      [say`Gain a year`, 'right'],
      [say`Payback`, 'right'],
      [say`Net present value`, 'right'],
    ],
    [...rows('shopRate', 'Shop rate'), ...rows('quantity', 'Number of parts')],
  );
}
