import { line } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { number, say } from '../blocks/inline.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { chartOf } from './chart.ts';
import { drawnText, type Figure, measured } from './figure.ts';
import { plain } from './known-stack.ts';

/** Years beyond the payback, so that the line is seen to rise over nothing. */
const AFTER = 1.25;

/**
 * What is paid, and what the years bring it back to, without interest. Null where an amount is not known, or where it
 * never pays for itself.
 */
export function paybackChart(decision: Decision, { arrangement, path }: ArrangementAt): Figure | null {
  const { money } = arrangement;
  const [capital, gain, payback] = [plain(money.capital.total), plain(money.gain), plain(money.payback)];
  if (capital === null || gain === null || payback === null || capital <= 0 || payback <= 0) return null;
  const years = Math.max(plain(money.terms.years) ?? 0, payback * AFTER);
  const end = years * gain - capital;
  const chart = chartOf(
    decision,
    { title: 'years', unit: '', least: 0, most: years },
    {
      title: 'paid and brought back, without interest',
      unit: 'money',
      least: -capital,
      most: Math.max(end, capital * 0.1),
    },
  );
  const at = (...keys: readonly string[]) => [...path, 'money', ...keys];
  const said = say`What is paid and what the years bring back, without interest: ${number(at('capital', 'total'), 'money')} are
    paid before the first part, each year brings ${number(at('gain'), 'money')}, and after ${number(at('payback'), 'years')} it has
    paid for itself.`;
  return {
    words: said,
    scene: {
      name: 'payback-over-years',
      title: drawnText(say`When it has paid for itself`, decision),
      description: drawnText(said, decision),
      panels: [
        {
          title: drawnText(say`Rising over the dotted line it has paid for itself`, decision),
          shapes: [
            ...chart.frame.shapes,
            line('guide', chart.at(0, 0), chart.at(years, 0)),
            line('curve', chart.at(0, -capital), chart.at(years, end)),
          ],
          labels: chart.frame.labels,
          marks: [],
          dimensions: [
            ...measured(decision, {
              name: say`paid before the first part`,
              path: at('capital', 'total'),
              unit: 'money',
              from: chart.at(years, -capital),
              side: 'right',
              times: chart.times.y,
            }),
            ...measured(decision, {
              name: say`paid for itself after`,
              path: at('payback'),
              unit: 'years',
              from: chart.at(0, 0),
              side: 'above',
              tight: true,
              times: chart.times.x,
            }),
          ],
        },
      ],
      toScale: false,
      notDrawn: [],
    },
  };
}
