import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { drillOf, isDrilled } from './drilled.ts';

/** Feed per revolution of that drill. */
export const drillFeed = aboutPart<Uncertain>({
  id: 'drill-feed',
  section: 'drill',
  title: 'Drill feed',
  path: 'parts.drill.feed',
  ask: ({ part }) => `How far does the largest drill go into ${part} with each turn?`,
  hint: 'The feed per revolution. Example: 0.2 mm.',
  hintInch: 'The feed per revolution. Example: 0.008 in.',
  why: 'The push of a drill grows with its feed.',
  readBy: ['brake-tilt'],
  field: { kind: 'quantity', of: 'feedPerTurn', limits: { above: 0, most: 5 } },
  unsure: { as: 'range', range: NOT_SURE['parts.drill.feed'] },
  applies: isDrilled,
  get: (part) => drillOf(part).feed,
  set: (part, feed) => ({ ...part, drill: { ...drillOf(part), feed } }),
});
