import type { Lifting } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import type { Option } from '../question.ts';
import { BLANK_MEANS, isMeans } from './means.ts';

const OPTIONS: readonly Option<Lifting['by'] | 'none'>[] = [
  { value: 'hand', label: 'by hand', about: 'people, and nothing but their hands' },
  { value: 'hoist', label: 'hoist', about: 'a crane or hoist whose hook comes over the machine table' },
  { value: 'forklift', label: 'forklift', about: 'a truck or a stacker with forks' },
  { value: 'none', label: 'none', about: 'nothing and nobody' },
];

/** What can lift a rotary. */
export const liftingMeans = aboutShop<readonly string[] | 'unknown'>({
  id: 'lifting-means',
  section: 'lifting',
  title: 'Means of lifting',
  path: 'shop.lifting',
  ask: () => 'What is there to lift a rotary onto the table and off it again?',
  hint: 'Name all that are at hand. Lifting is for trained people with tested gear, as local rules and a licensed rigger have it.',
  why: 'The table is needed for other work too: a rotary that cannot be lifted off stays on.',
  readBy: ['lift', 'hook-height', 'swapHours'],
  field: { kind: 'list', options: () => OPTIONS, alone: 'none' },
  unsure: { as: 'each-kind' },
  get: ({ shop: { lifting } }) => {
    if (lifting === 'unknown') return lifting;
    return lifting.length === 0 ? ['none'] : [...new Set(lifting.map(({ by }) => by))];
  },
  set: (answers, kinds) => ({
    ...answers,
    shop: { ...answers.shop, lifting: meansOf(answers.shop.lifting, kinds) },
  }),
});

/** Means of these kinds; what is known of those that are there stays. */
function meansOf(
  there: readonly Lifting[] | 'unknown',
  kinds: readonly string[] | 'unknown',
): readonly Lifting[] | 'unknown' {
  if (kinds === 'unknown') return kinds;
  return kinds.filter(isMeans).flatMap((by) => {
    const known = there === 'unknown' ? [] : there.filter((each) => each.by === by);
    return known.length > 0 ? known : [{ by, ...BLANK_MEANS }];
  });
}
