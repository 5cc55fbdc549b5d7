import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { drillOf, isDrilled } from './drilled.ts';

/** Distance of the hole from the axis that has to hold it. */
export const drillOffset = aboutPart<Uncertain>({
  id: 'drill-offset',
  section: 'drill',
  title: 'Distance of the hole',
  path: 'parts.drill.offset',
  ask: ({ part }) => `How far is the large drilled hole in ${part} from the axis that has to hold it?`,
  hint: 'Level, from the middle of the rotary to the middle of the hole. Example: 40 mm.',
  hintInch: 'Level, from the middle of the rotary to the middle of the hole. Example: 1.5 in.',
  why: 'The push works on that lever.',
  readBy: ['brake-tilt'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.drill.offset'] },
  applies: isDrilled,
  get: (part) => drillOf(part).offset,
  set: (part, offset) => ({ ...part, drill: { ...drillOf(part), offset } }),
});
