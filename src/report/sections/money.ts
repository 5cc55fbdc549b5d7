import type { Decision, Money } from '../../rules/decision.ts';
import { type Block, figureBlock, heading, list, paragraph } from '../blocks/block.ts';
import { type Inline, number, say, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { paybackChart } from '../figures/payback-chart.ts';
import { CAM_POST_WORDS } from '../wording/money.ts';
import { capital, hours, results, sensitivity, yearly } from './money-tables.ts';

/** What the recommendation costs and brings, and when it has paid for itself. */
export function money(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  return [
    heading(2, say`Money`),
    ...worth(at),
    ...figureBlock(paybackChart(decision, at)),
    paragraph(say`Hours a year now, and with the rotary. Families that it does not hold stay as they are, and so does
      three-axis work.`),
    hours(decision, at),
    paragraph(say`What is paid before the first part:`),
    capital(decision, at),
    paragraph(say`${words(CAM_POST_WORDS[at.arrangement.money.capital.camPost])} Fixtures, tools that have to be bought
      and taxes are not in it.`),
    paragraph(say`What a year brings:`),
    yearly(at),
    paragraph(say`How that is reckoned (C what is paid, A what a year brings, R what it is worth at the end, i interest, n
      years):`),
    results(at),
    paragraph(say`If the shop rate, or the number of parts in as many lots, turns out different:`),
    sensitivity(at),
    breakEven(at),
  ];
}

/** The same in a few lines, for a terminal. */
export function moneyInShort(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  return at === undefined ? [] : [heading(2, say`Money`), ...worth(at)];
}

function worth({ arrangement, path }: ArrangementAt): readonly Block[] {
  const { payback, terms } = arrangement.money;
  const at = (...keys: readonly string[]) => [...path, 'money', ...keys];
  const paid = number(at('capital', 'total'), 'money', { ifNull: 'an amount that is not known' });
  const saved = number(at('hoursSaved'), 'h');
  const brings = number(at('gain'), 'money');
  const back: readonly Inline[] =
    payback === null
      ? say`With these numbers it never pays for itself: a year costs more than it brings.`
      : say`Without interest it has paid for itself after ${number(at('payback'), 'years')}${words(
          isLate(arrangement.money) ? ', later than the years that are looked at.' : '.',
        )}`;
  const value = number(at('netPresentValue'), 'money', { ifNull: 'an amount that is not known' });
  return [
    list([
      say`Paid before the first part: ${paid}. Saved a year: ${saved}; that brings ${brings} a year after swaps and
        yearly costs.`,
      back,
      say`Over ${number(at('terms', 'years'), 'years')} at ${number(at('terms', 'interest'), 'share')} interest it is worth
        ${value} today, with what it can be sold for then (net present value; below zero it costs more than it brings
        back).`,
      ...(terms.ranked
        ? []
        : [
            say`Nobody named a shop rate, so it is taken as anything from ${number(at('terms', 'shopRate'), 'money')} an hour,
              and payback was held against no arrangement.`,
          ]),
    ]),
  ];
}

/** Even at the best later than the years that are looked at. */
function isLate({ payback, terms: { years } }: Money): boolean {
  const [soonest, last] = [
    Array.isArray(payback) ? payback[0] : payback,
    Array.isArray(years) ? years[1] : years,
  ];
  return typeof soonest === 'number' && typeof last === 'number' && soonest > last;
}

function breakEven({ arrangement, path }: ArrangementAt): Block {
  const at = (key: string) => [...path, 'money', 'breakEven', key];
  if (arrangement.money.breakEven.shopRate === null) {
    return paragraph(say`No shop rate makes it pay: it saves no hours, or the swaps take all of them.`);
  }
  const rate = number(at('shopRate'), 'money');
  const needed = number(at('hours'), 'h', { ifNull: 'a number of hours that is not known' });
  return paragraph(say`It is worth what it costs from a shop rate of ${rate} an hour; or, at the rate above, from
    ${needed} saved a year.`);
}
