import { circle, type Mark, type Shape } from '../../drawing/scene.ts';
import type { Arrangement, Decision } from '../../rules/decision.ts';
import { type Inline, joined, number, say } from '../blocks/inline.ts';
import { arrangementName } from '../names.ts';
import { chartOf } from './chart.ts';
import { drawnText, type Figure, measured } from './figure.ts';
import { plain } from './known-stack.ts';

const ROOM = 1.08;
/** mm on paper */
const DOT = 1.1;
const RING = 2.4;
/** spots may be close: from the cheapest on, every other one is named on the other side */
const NAMED = ['below', 'above'] as const;

interface Spot {
  readonly arrangement: Arrangement;
  readonly index: number;
  readonly price: number;
  readonly coverage: number;
}

/**
 * What passes and nothing beats on every measure, by price and coverage, the recommendation in a ring. Null where nothing
 * is recommended, or where there is nothing to choose from.
 */
export function tradeOffChart(decision: Decision): Figure | null {
  const shown = decision.arrangements.flatMap((arrangement, index) =>
    arrangement.undominated && arrangement.passes === 'yes' ? [{ arrangement, index }] : [],
  );
  const spots = shown.flatMap(({ arrangement, index }): readonly Spot[] => {
    const { price, coverage } = arrangement.measures;
    const [x, y] = [plain(price), plain(coverage)];
    return x === null || y === null ? [] : [{ arrangement, index, price: x, coverage: y }];
  });
  const taken = spots.find(({ arrangement }) => arrangement.id === decision.recommended);
  const most = Math.max(...spots.map(({ price }) => price));
  if (taken === undefined || spots.length < 2 || most <= 0) return null;
  const chart = chartOf(
    decision,
    { title: 'price', unit: 'money', least: 0, most: most * ROOM },
    { title: 'share of the five-axis hours', unit: 'share', least: 0, most: 1 },
  );
  const nameOf = ({ arrangement, index }: Spot): readonly Inline[] =>
    arrangementName(decision, arrangement.id, ['arrangements', index, 'id']);
  const shapes = spots.map(({ price, coverage }): Shape => circle('spot', chart.at(price, coverage), DOT));
  const path = ['arrangements', taken.index, 'measures'];
  const at = chart.at(taken.price, taken.coverage);
  const said = say`Price against the share of the five-axis hours, of what passes and nothing beats on every measure.
    ${joined(spots.map((spot) => sentenceOf(spot, nameOf(spot))))}. ${nameOf(taken)} is recommended.`;
  return {
    words: said,
    scene: {
      name: 'coverage-against-price',
      title: drawnText(say`Coverage against price`, decision),
      description: drawnText(said, decision),
      panels: [
        {
          title: drawnText(say`What nothing beats on every measure, the recommendation in a ring`, decision),
          shapes: [...chart.frame.shapes, ...shapes, circle('curve', at, RING)],
          labels: chart.frame.labels,
          marks: spots
            .toSorted((a, b) => a.price - b.price)
            .map(
              (spot, index): Mark => ({
                at: chart.at(spot.price, spot.coverage),
                name: drawnText(nameOf(spot), decision),
                stands: NAMED[index % NAMED.length] ?? 'below',
              }),
            ),
          dimensions: [
            ...measured(decision, {
              name: say`price of the recommendation`,
              path: [...path, 'price'],
              unit: 'money',
              from: [0, at[1]],
              side: 'above',
              times: chart.times.x,
            }),
            ...measured(decision, {
              name: say`its share of the five-axis hours`,
              path: [...path, 'coverage'],
              unit: 'share',
              from: [at[0], 0],
              side: 'right',
              times: chart.times.y,
            }),
          ],
        },
      ],
      toScale: false,
      notDrawn:
        spots.length < shown.length
          ? [drawnText(say`Arrangements whose price or share is a range are not drawn.`, decision)]
          : [],
    },
  };
}

const sentenceOf = ({ index }: Spot, name: readonly Inline[]): readonly Inline[] =>
  say`${name}: ${number(['arrangements', index, 'measures', 'price'], 'money')}, ${number(['arrangements', index, 'measures', 'coverage'], 'share')}`;
