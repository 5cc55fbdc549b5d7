import { line, type Mark, type Point } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { number, say } from '../blocks/inline.ts';
import { partName } from '../names.ts';
import { chartOf } from './chart.ts';
import { drawnText, type Figure, measured } from './figure.ts';
import { plain } from './known-stack.ts';

/** Room beyond the largest family. */
const BEYOND = 1.06;

/**
 * How much of the five-axis hours a swing holds, family by family, with the knee. Null where a swing or a share is not
 * known, so that there is no one curve.
 */
export function coverageChart(decision: Decision): Figure | null {
  const { curve, knee } = decision.envelope;
  const points = curve.flatMap(({ part, swing, share }, index) => {
    const [x, y] = [plain(swing), plain(share)];
    return x === null || y === null ? [] : [{ part, x, y, index }];
  });
  const last = points.at(-1);
  if (last === undefined || points.length < curve.length || last.x <= 0) return null;
  const chart = chartOf(
    decision,
    { title: 'swing', unit: 'mm', least: 0, most: last.x * BEYOND },
    { title: 'share of the five-axis hours', unit: 'share', least: 0, most: 1 },
  );
  const corners = points.flatMap(({ x, y }, index): readonly Point[] => [
    chart.at(x, points[index - 1]?.y ?? 0),
    chart.at(x, y),
  ]);
  const end = chart.at(last.x * BEYOND, last.y);
  // steps may be close: every other one is named on the other side
  const marks = points.map(
    ({ part, x, y, index }): Mark => ({
      at: chart.at(x, y),
      name: drawnText([partName(decision, part, ['envelope', 'curve', index, 'part'])], decision),
      stands: index % 2 === 0 ? 'left' : 'right',
    }),
  );
  const said =
    knee === null
      ? say`Share of the five-axis hours that a swing holds, from the smallest family to the largest. Where the knee lies
          is open.`
      : say`Share of the five-axis hours that a swing holds, from the smallest family to the largest. The knee is at a
          swing of ${number(['envelope', 'knee'], 'mm')}; beyond it a larger swing adds little.`;
  return {
    words: said,
    scene: {
      name: 'coverage-against-swing',
      title: drawnText(say`What a larger swing would still hold`, decision),
      description: drawnText(said, decision),
      panels: [
        {
          title: drawnText(say`Each step is a family`, decision),
          shapes: [
            ...chart.frame.shapes,
            ...(knee === null ? [] : [line('guide', chart.at(knee, 0), chart.at(knee, 1))]),
            line('curve', chart.at(0, 0), ...corners, end),
          ],
          labels: chart.frame.labels,
          marks,
          dimensions: measured(decision, {
            name: say`swing at the knee`,
            path: ['envelope', 'knee'],
            from: chart.at(0, 0),
            side: 'below',
            tight: true,
            times: chart.times.x,
          }),
        },
      ],
      toScale: false,
      notDrawn: [],
    },
  };
}
