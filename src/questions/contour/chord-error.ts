import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { mayContour } from './moving.ts';

/** How far the straight steps of the path may be off the curve. */
export const chordError = aboutPart<Uncertain>({
  id: 'chord-error',
  section: 'contour',
  title: 'Error of the path',
  path: 'parts.contour.chordError',
  ask: ({ part }) => `How far may the path of the tool on ${part} be off the true curve?`,
  hint: 'The chord error of the CAM program: curves are cut as short straight steps. Example: 0.005 mm.',
  hintInch: 'The chord error of the CAM program: curves are cut as short straight steps. Example: 0.0002 in.',
  why: 'The finer the path, the more steps a second the control has to take in.',
  readBy: ['look-ahead'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1 } },
  unsure: { as: 'range', range: NOT_SURE['parts.contour.chordError'] },
  applies: mayContour,
  get: (part) => part.contour.chordError,
  set: (part, chordError) => ({
    ...part,
    contour: { ...part.contour, chordError },
  }),
});
