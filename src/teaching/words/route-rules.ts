import type { RouteRuleId } from '../../rules/classes/routes/rule-ids.ts';
import { inGroup, type RuleLesson } from './rule-lesson.ts';

const OWNED = {
  plain:
    'There are several ways to five axes: a rotary on the mill that is there, a mill and a rotary together, a mill that comes with one, a machine with a table of its own, or a single axis. Each is looked at by itself.',
  mistake: 'To compare a rotary with a machine. Compare what has to be paid until parts come off.',
  number: 'what there is on this way',
  limit: 'one',
} as const;

const AROUND = {
  plain:
    'A single level axis is the cheapest way, if the tool never has to come from the end or at a slant. Hours count, not drawings.',
  mistake: 'To buy the second axis for certainty. Count the hours that need it first.',
  number: 'share of the five-axis hours whose sides all lie around one level axis',
} as const;

const PASSING = {
  plain: 'Every arrangement on a way goes through every check; what passes is counted.',
  mistake: 'To fall in love with a way before anything on it has passed.',
  number: 'arrangements on this way that pass',
  limit: 'one arrangement',
} as const;

const COVERED = {
  plain:
    'The best arrangement on a way covers a share of the hours: those of the parts whose checks all hold.',
  mistake: 'To ask whether a way “works”. Ask how much of the year it works for.',
  number: 'share of the hours that the best on this way covers',
  limit: 'nearly all of the hours',
} as const;

const PRICE = {
  plain:
    'The cheapest that passes on each way is held against the cheapest on any, with a band within which prices count as level.',
  mistake: 'To compare list prices. What has to be added until it works is part of the price.',
  number: 'price of the cheapest that passes on this way',
  limit: 'cheapest that passes on any way, with the band within which prices are level',
} as const;

/** Every rule of the route as it is taught. A new id does not compile without. */
export const ROUTE_RULE_LESSONS: Readonly<Record<RouteRuleId, RuleLesson>> = {
  'no-mill-owned': inGroup(OWNED, 'No mill is owned', 'It rules out the way over an own mill.', {
    number: 'mills of the catalog that are owned',
    limit: 'one mill',
  }),
  'route-none': inGroup(OWNED, 'The catalog has nothing on this way', 'It rules a way out.', {
    number: 'arrangements on this way',
    limit: 'one arrangement',
  }),
  'one-axis-not-enough': inGroup(
    { ...AROUND, limit: 'least share of the hours that an arrangement must cover', share: 'others' },
    'One axis is not enough',
    'It rules out the single axis.',
  ),
  'one-axis-must-tilt': inGroup(
    { ...AROUND, number: 'must-have parts that one level axis does not reach', limit: 'one part' },
    'A must-have part has to be tilted',
    'It rules out the single axis.',
  ),
  'one-axis-nearly': inGroup(
    { ...AROUND, limit: 'nearly all of the hours', share: 'others' },
    'One axis is nearly enough',
    'It speaks against the single axis.',
  ),
  'one-axis-enough': inGroup(
    { ...AROUND, limit: 'nearly all of the hours', share: 'named' },
    'One axis is enough',
    'It speaks for the single axis.',
  ),
  'route-price-over': inGroup(PRICE, 'The cheapest is over the budget', 'It rules a way out.', {
    number: 'price of the cheapest on this way',
    limit: 'budget',
  }),
  'route-none-passes': inGroup(PASSING, 'Nothing on this way passes', 'It speaks against a way.'),
  'route-some-pass': inGroup(PASSING, 'Something on this way passes', 'It speaks for a way.'),
  'route-covers-part': inGroup(COVERED, 'It covers a part of the hours', 'It speaks against a way.'),
  'route-covers': inGroup(COVERED, 'It covers nearly all of the hours', 'It speaks for a way.'),
  'route-dearer': inGroup(PRICE, 'It is dearer', 'It speaks against a way.'),
  'route-cheapest': inGroup(PRICE, 'It is the cheapest', 'It speaks for a way.'),
};
