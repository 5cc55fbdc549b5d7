import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { mayContour } from './moving.ts';

/** Feed along a curved surface. */
export const contourFeed = aboutPart<Uncertain>({
  id: 'contour-feed',
  section: 'contour',
  title: 'Feed on curved surfaces',
  path: 'parts.contour.feed',
  ask: ({ part }) => `How fast does the tool run along the curved surfaces of ${part}?`,
  hint: 'The feed that the program asks for. Example: 2000 mm/min.',
  hintInch: 'The feed that the program asks for. Example: 80 in/min.',
  why: 'Feed and curvature give how fast the rotary has to turn and how fast the control has to read ahead.',
  readBy: ['rotary-speed', 'look-ahead'],
  field: { kind: 'quantity', of: 'feed', limits: { least: 1, most: 100000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.contour.feed'] },
  applies: mayContour,
  get: (part) => part.contour.feed,
  set: (part, feed) => ({ ...part, contour: { ...part.contour, feed } }),
});
