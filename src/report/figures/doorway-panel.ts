import { line, type Panel, rectangle } from '../../drawing/scene.ts';
import type { Decision } from '../../rules/decision.ts';
import { say } from '../blocks/inline.ts';
import type { CheckAt } from '../checks-at.ts';
import { drawnText, isSame, measured } from './figure.ts';
import { plain, type Rows } from './known-stack.ts';

/** How far the floor is drawn beside the opening, mm. */
const FLOOR = 300;

/** The doorway with the machine as it is shipped, its narrower side ahead, on skates. Null where a size is not known. */
export function doorwayPanel(
  decision: Decision,
  { machine, machinePath }: Rows,
  check: CheckAt,
): Panel | null {
  const { doorway } = decision.inputs.answers.shop;
  const { doorSide, doorSkates } = decision.inputs.assume;
  const [width, height] = [plain(doorway.width), plain(doorway.height)];
  const [one = null, other = null, high = null] = machine.shipping.map(plain);
  if (width === null || height === null || one === null || other === null || high === null) return null;
  const narrow = Math.min(one, other);
  const left = (width - narrow) / 2;
  const need = plain(check.result.need);
  const isHeight = need !== null && isSame(need, high + doorSkates);
  const isWidth = need !== null && isSame(need, narrow + doorSide);
  const margin = [...check.path, 'margin'];
  return {
    title: drawnText(say`The doorway from outside, the machine on skates`, decision),
    shapes: [
      line('table', [-FLOOR, 0], [width + FLOOR, 0]),
      rectangle('machine', [left, doorSkates], [left + narrow, doorSkates + high]),
      line('bay', [0, 0], [0, height], [width, height], [width, 0]),
    ],
    marks: [
      { at: [width / 2, doorSkates + high / 2], name: 'machine as it is shipped', stands: 'on' },
      { at: [width, height * 0.9], name: 'doorway', stands: 'on' },
    ],
    dimensions: [
      ...measured(decision, {
        name: say`doorway, width`,
        path: ['inputs', 'answers', 'shop', 'doorway', 'width'],
        from: [0, height],
        side: 'above',
      }),
      ...measured(decision, {
        name: say`doorway, height`,
        path: ['inputs', 'answers', 'shop', 'doorway', 'height'],
        from: [width, 0],
        side: 'right',
      }),
      ...measured(decision, {
        name: say`machine as shipped, narrower side`,
        path: [...machinePath, 'shipping', one <= other ? 0 : 1],
        from: [left, 0],
        side: 'below',
      }),
      ...measured(decision, {
        name: say`machine as shipped, height`,
        path: [...machinePath, 'shipping', 2],
        from: [0, doorSkates],
        side: 'left',
      }),
      ...(isHeight
        ? measured(decision, {
            name: say`left over above, on skates`,
            path: margin,
            from: [0, need],
            side: 'left',
            tight: true,
          })
        : []),
      ...(isWidth && !isHeight
        ? measured(decision, {
            name: say`left over beside, with room to pass`,
            path: margin,
            from: [need, 0],
            side: 'below',
            tight: true,
          })
        : []),
    ],
    labels: [],
  };
}
