import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import { SHOP_RULES } from './class-rules-shop.ts';
import { MASS_AND_STRENGTH } from './class-rules-strength.ts';
import { inGroup, type RuleLesson } from './rule-lesson.ts';

const LEAST = 'least share of the hours that an arrangement must cover';
const NEARLY = 'nearly all of the hours';
const SMALL = 'share that no longer sets a size';

const SIDES = {
  number: 'share of the five-axis hours whose sides all lie around one level axis',
  limit: LEAST,
  share: 'others',
  plain:
    'One level axis turns a part about itself, like a lathe spindle. It brings every side around it under the tool, and never the end or a face that leans. So the first question about parts is not how large they are but from where the tool has to come. Hours count and not the number of drawings: a part that runs all year weighs more than ten that run once.',
  mistake:
    'To count part numbers instead of hours, and buy a tilting table for a part that is made twice a year.',
} as const;

const TILT_SHARE = {
  number: 'share of the five-axis hours that need a tilt',
  limit: SMALL,
  share: 'named',
  plain: 'A second axis costs height, stiffness and money. It has to have work that nothing simpler does.',
  mistake:
    'To buy a tilt because it might be useful one day. What is seldom used stands in the way every day.',
} as const;

const TILT_ANGLE = {
  number: 'tilt that the work asks for',
  limit: 'greatest tilt of any rotary of this kind in the catalog',
  plain:
    'The angle of each side from the axis of the part is the tilt that it asks for. The largest of a kind is held against it.',
  mistake: 'To read the tilt to one side only. What counts is the better side.',
} as const;

const SWING = {
  number: 'circle within which the work turns',
  limit: 'largest swing of any rotary of this kind in the catalog',
  plain:
    'Part and fixture describe a circle as they turn. What most of the hours ask for is held against the largest of a kind.',
  mistake:
    'To size for the largest part that ever came in. Size costs mass, price and room, and all other parts pay for it.',
} as const;

const MOVING = {
  number: 'share of the five-axis hours in which all axes move in the cut',
  share: 'named',
  plain:
    'Most five-axis work is positional: the axes turn, a brake closes, and the cut is made as on three axes. Only some shapes need axes that move while cutting. Then motors hold instead of brakes, and stiffness decides.',
  mistake: 'To take five-axis work for simultaneous work, and pay for motion that the parts do not ask for.',
} as const;

const BAR = {
  number: 'share of the five-axis hours that are bar held in a collet of this kind',
  limit: LEAST,
  share: 'named',
  plain: 'An indexer with collets is small, cheap and quick for bar, and for nothing else.',
  mistake:
    'To hold short blanks in a collet because the indexer is there. What does not go through it needs another holding.',
} as const;

const NOSE = {
  number: 'share of the five-axis hours that are held in a chuck',
  limit: SMALL,
  share: 'named',
  plain:
    'A spindle nose is the taper and the flange to which chucks of lathes are bolted. A rotary that has one takes them straight on; without one an adapter goes between, which costs height and truth.',
  mistake: 'To plan chucks and order a plain faceplate.',
} as const;

const SPREAD = {
  number: 'swing that nine tenths of the hours ask for, over the swing that one tenth asks for',
  limit: 'ratio from which on sizes lie far apart',
  plain:
    'A mix of like sizes wants a table of that size. A mix of small and large wants one that is open, so that the large ones find room.',
  mistake: 'To take the mean size. No part has it.',
} as const;

/** Every rule of the class as it is taught. A new id does not compile without. */
export const CLASS_RULE_LESSONS: Readonly<Record<ClassRuleId, RuleLesson>> = {
  'sides-tilt': inGroup(
    SIDES,
    'Too much of the work has to be tilted',
    'It rules out kinds with one level axis.',
  ),
  'sides-must-tilt': inGroup(
    {
      plain: SIDES.plain,
      mistake: SIDES.mistake,
      number: 'must-have parts that one level axis does not reach',
      limit: 'one part',
    },
    'A must-have part has to be tilted',
    'It rules out kinds with one level axis.',
  ),
  'sides-some-tilt': inGroup(
    SIDES,
    'Some of the work has to be tilted',
    'It speaks against kinds with one level axis.',
    { limit: NEARLY },
  ),
  'sides-around': inGroup(
    SIDES,
    'All sides lie around one axis',
    'It speaks for kinds with one level axis.',
    { limit: NEARLY, share: 'named' },
  ),
  'tilt-used': inGroup(TILT_SHARE, 'The tilt has work', 'It speaks for kinds that tilt.'),
  'tilt-idle': inGroup(TILT_SHARE, 'The tilt would hardly be used', 'It speaks against kinds that tilt.'),
  'tilt-beyond': inGroup(
    TILT_ANGLE,
    'Nothing of this kind tilts far enough',
    'It rules a kind out by what the least coverage and the must-have parts ask for.',
  ),
  'tilt-short': inGroup(
    TILT_ANGLE,
    'It does not tilt far enough for nearly all',
    'It speaks against a kind by what nearly all of the hours ask for.',
  ),
  'tilt-reaches': inGroup(
    TILT_ANGLE,
    'It tilts far enough',
    'It speaks for a kind by what nearly all of the hours ask for.',
  ),
  'swing-beyond': inGroup(
    SWING,
    'Nothing of this kind is large enough',
    'It rules a kind out by what the least coverage and the must-have parts ask for.',
  ),
  'swing-short': inGroup(
    SWING,
    'It is not large enough for nearly all',
    'It speaks against a kind by what nearly all of the hours ask for.',
  ),
  'swing-holds': inGroup(
    SWING,
    'It is large enough',
    'It speaks for a kind by what nearly all of the hours ask for.',
  ),
  'swing-oversized': inGroup(
    SWING,
    'Even the smallest is large for the work',
    'It speaks against a kind whose smallest rotary is far larger than the work.',
    {
      number: 'least swing of this kind over the circle that the work asks for',
      limit: 'ratio from which on a rotary is large for its work',
    },
  ),
  ...MASS_AND_STRENGTH,
  'moving-stiff': inGroup(
    MOVING,
    'Moving axes want a stiff table',
    'It speaks for tables that are carried at both ends.',
    { limit: SMALL },
  ),
  'moving-one-support': inGroup(
    MOVING,
    'One support gives way under moving axes',
    'It speaks against tables that are carried at one end.',
    { limit: LEAST },
  ),
  'moving-indexed': inGroup(
    MOVING,
    'One axis cannot move with the others',
    'It speaks against kinds with one axis.',
    { limit: SMALL },
  ),
  positional: inGroup(MOVING, 'Braked axes are enough', 'It speaks for simple kinds.', {
    limit: SMALL,
    share: 'others',
  }),
  'bar-fits': inGroup(BAR, 'Much of the work is bar for its collets', 'It speaks for indexers with collets.'),
  'bar-little': inGroup(
    BAR,
    'Little of the work is bar for its collets',
    'It speaks against indexers with collets.',
  ),
  'nose-takes-chucks': inGroup(
    NOSE,
    'Its nose takes chucks',
    'It speaks for kinds that have a nose in this catalog.',
  ),
  'nose-missing': inGroup(NOSE, 'No nose takes the chucks', 'It speaks against kinds that have none.'),
  'spread-wide-open': inGroup(
    SPREAD,
    'Sizes far apart want an open table',
    'It speaks for tables that are open at one end.',
  ),
  'spread-wide-closed': inGroup(
    SPREAD,
    'Sizes far apart do not suit a closed one',
    'It speaks against kinds that suit one size.',
  ),
  'spread-narrow': inGroup(SPREAD, 'Sizes lie close together', 'It speaks for kinds that suit one size.'),
  ...SHOP_RULES,
};
