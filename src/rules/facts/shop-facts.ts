import type { Interval } from '../../quantities/interval.ts';
import type { Answers, Choice, Swap, Uncertain } from '../../questions/answers.ts';
import { type Assumed, assumed } from '../../questions/assumptions.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { ShopCase } from '../judging/case.ts';
import { answered, derived, known, openAnswer, type Value } from '../judging/value.ts';
import { moneyCase } from '../money/money-case.ts';
import { siteCase } from './site-facts.ts';

/** What is the same for every arrangement: tools, loading, vises, money, assumptions. */
export function shopCase(answers: Answers): ShopCase {
  const { tools, work, money } = answers;
  const assume = assumed(answers.assume);
  return {
    assume,
    toolShortest: answered(tools.shortest, 'tools.shortest', NOT_SURE['tools.shortest']),
    toolLongest: answered(tools.longest, 'tools.longest', NOT_SURE['tools.longest']),
    largestCutter: answered(tools.largestCutter, 'tools.largestCutter', NOT_SURE['tools.largestCutter']),
    // a shop that names no vise and no price of a plate is shown what is ordinary
    viseWidth:
      work.vise.width === 'unknown'
        ? known(assume.viseWidth, 'assume.viseWidth')
        : answered(work.vise.width, 'work.vise.width', NOT_SURE['work.vise.width']),
    viseLength:
      work.vise.length === 'unknown'
        ? known(assume.viseLength, 'assume.viseLength')
        : answered(work.vise.length, 'work.vise.length', NOT_SURE['work.vise.length']),
    byHand: byHand(work.loading),
    site: siteCase(answers, assume),
    visesWanted: visesWanted(work.visesWanted),
    visesAsked: answered(work.visesWanted, 'work.visesWanted', NOT_SURE['work.visesWanted']),
    switchesPerWeek: answered(work.switchesPerWeek, 'work.switchesPerWeek', NOT_SURE['work.switchesPerWeek']),
    swapMinutes: derived(minutesOf(work.swap, assume), 'work.swap', openAnswer('work.swap')),
    budget: answered(money.budget, 'money.budget', NOT_SURE['money.budget']),
    platePrice:
      money.plates === 'unknown'
        ? known(assume.platePrice, 'assume.platePrice')
        : answered(money.plates, 'money.plates', NOT_SURE['money.plates']),
    money: moneyCase(answers),
  };
}

/** Vises that count in the ranking; where nobody says how many are wanted, every one does. */
function visesWanted(wanted: Uncertain): Interval {
  const most = Number.POSITIVE_INFINITY;
  if (wanted === 'unknown') return { low: most, high: most };
  return typeof wanted === 'number' ? { low: wanted, high: wanted } : { low: wanted[0], high: wanted[1] };
}

function byHand(loading: Answers['work']['loading']): Value {
  if (loading !== 'unknown') return known(loading === 'by-hand' ? 1 : 0, 'work.loading');
  return derived({ low: 0, high: 1 }, 'work.loading', openAnswer('work.loading'));
}

/** Minutes of one lift on or off, by how the rotary is put back in place; nobody says how: any of them. */
function minutesOf(swap: Choice<Swap>, { swapMinutes }: Assumed): Interval {
  const possible = swap === 'unknown' ? Object.values(swapMinutes) : [swapMinutes[swap]];
  return { low: Math.min(...possible), high: Math.max(...possible) };
}
