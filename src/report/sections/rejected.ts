import type { Decision } from '../../rules/decision.ts';
import { type Block, details, heading, paragraph, table } from '../blocks/block.ts';
import { codeData, number, say } from '../blocks/inline.ts';
import { arrangementName } from '../names.ts';
import { nothingAsksForFiveAxes } from '../nothing-asks.ts';
import { failures } from './misses.ts';

/** Everything else that the decision lists and that did not pass, with what dropped it. */
export function rejected(decision: Decision): readonly Block[] {
  const rows = decision.arrangements.flatMap((arrangement, index) => {
    if (arrangement.passes === 'yes' || decision.nearestMisses.includes(arrangement.id)) return [];
    const at = { arrangement, path: ['arrangements', index] };
    return [
      [
        arrangementName(decision, arrangement.id, [...at.path, 'id']),
        failures(decision, at, 2),
        [codeData([...at.path, 'id'])],
      ],
    ];
  });
  if (rows.length === 0 || nothingAsksForFiveAxes(decision)) return [];
  return [
    heading(2, say`Others that were turned down`),
    paragraph(
      say`Of all ${number(['count'], '')} arrangements these are listed beside the nearest misses. The rest are counted
        under “How it was decided”.`,
    ),
    details(say`What dropped each of them`, [
      table(
        [
          [say`Arrangement`, 'left'],
          [say`What stopped it`, 'left'],
          [say`In the decision file`, 'left'],
        ],
        rows,
      ),
    ]),
  ];
}
