import { inGroup } from './rule-lesson.ts';

const MASS = {
  number: 'part and fixture, where they are carried with the faceplate on edge',
  limit: 'largest payload, tilted, of any rotary of this kind in the catalog',
  plain: 'A table that leans carries less than one that lies level, so the tilted payload is what counts.',
  mistake: 'To compare with the level payload, which is the larger and the first in every data sheet.',
} as const;

const MOMENT = {
  number: 'moment with which nearly all of the work pulls on the tilt axis, at most',
  limit: 'moment that the strongest of this kind carries',
  plain:
    'Leaning work hangs on the tilt axis like a weight on a lever: mass times the distance of its center.',
  mistake: 'To look at the mass only. A light part on a tall fixture pulls more than a heavy flat one.',
} as const;

const STRENGTH = {
  number: 'share of the five-axis hours that the strongest of this kind carries and holds',
  share: 'others',
  plain:
    'Payload, moment, brakes and drives together say which parts a table is strong enough for. The best of each kind is asked.',
  mistake: 'To judge a kind by its largest number. It is the weakest of the four that decides for each part.',
} as const;

/** The rules about mass, moment and strength. */
export const MASS_AND_STRENGTH = {
  'mass-beyond': inGroup(
    MASS,
    'The work is too heavy for this kind',
    'It rules a kind out by what the least coverage and the must-have parts ask for.',
  ),
  'mass-short': inGroup(
    MASS,
    'Some of the work is too heavy',
    'It speaks against a kind by what nearly all of the hours ask for.',
  ),
  'mass-holds': inGroup(
    MASS,
    'It carries the work',
    'It speaks for a kind by what nearly all of the hours ask for.',
  ),
  'moment-short': inGroup(MOMENT, 'The work pulls too hard on the tilt axis', 'It speaks against a kind.'),
  'moment-holds': inGroup(MOMENT, 'The tilt axis carries the work', 'It speaks for a kind.'),
  'strength-beyond': inGroup(STRENGTH, 'Too much of the work is too strong for it', 'It rules a kind out.', {
    limit: 'least share of the hours that an arrangement must cover',
  }),
  'strength-short': inGroup(STRENGTH, 'Some of the work is too strong for it', 'It speaks against a kind.', {
    limit: 'nearly all of the hours',
  }),
} as const;
