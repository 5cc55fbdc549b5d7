import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph, table } from '../blocks/block.ts';
import { codeData, data, number, say, words } from '../blocks/inline.ts';
import { arrangementAt } from '../checks-at.ts';
import { FEATURE_NEED_WORDS, featureWords } from '../wording/features.ts';

/** What control and spindle have to offer, for the recommendation; without one, for the work at large. */
export function features(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  const ofArrangement = at !== undefined && at.arrangement.features.length > 0;
  const rows = ofArrangement ? at.arrangement.features : decision.features;
  const root = ofArrangement ? [...at.path, 'features'] : ['features'];
  if (rows.length === 0) return [];
  return [
    heading(2, say`Features of control and spindle`),
    table(
      [
        [say`Feature`, 'left'],
        [say`It is`, 'left'],
        [say`For`, 'left'],
        [say`Price`, 'right'],
        [say`Saves a year`, 'right'],
      ],
      rows.map((row, index) => {
        const known = featureWords(row.feature);
        return [
          known === undefined ? [codeData([...root, index, 'feature'])] : [words(known)],
          [words(FEATURE_NEED_WORDS[row.need])],
          row.why === '' ? [] : [data([...root, index, 'why'])],
          [
            number([...root, index, 'price'], 'money', {
              ifNull: 'not stated',
            }),
          ],
          [
            number([...root, index, 'savesHours'], 'h', {
              ifNull: 'not worked out',
            }),
          ],
        ];
      }),
    ),
    paragraph(
      say`Before the first part the shop also needs a CAM post-processor for this machine with a simulation of it: with
        tilting axes nobody sees a collision coming from the program alone.`,
    ),
  ];
}
