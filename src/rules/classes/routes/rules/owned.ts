import { derived, known, openAnswer } from '../../../judging/value.ts';
import { exactly } from '../../capacity.ts';
import type { Weighed } from '../../rule.ts';
import type { RouteGround } from '../ground.ts';
import type { RouteRule } from '../index.ts';

/** Mills that are owned and stand in the catalog. */
function millsOwned({ answers, judged }: RouteGround): Weighed {
  if (answers.shop.machine === 'unknown')
    return { value: derived({ low: 0, high: 1 }, 'mills owned', openAnswer('shop.machine')), parts: [] };
  return { value: known(judged.length > 0 ? 1 : 0, 'mills owned'), parts: [] };
}

const counted = ({ judged }: RouteGround): Weighed => ({
  value: known(judged.length, 'arrangements'),
  parts: [],
});

/** Whether there is anything on the route at all. */
export const owned: readonly RouteRule[] = [
  {
    id: 'no-mill-owned',
    about: ['own-mill'],
    side: 'rules out',
    unit: '',
    number: millsOwned,
    limit: exactly(1, 'one mill'),
    when: 'below',
    source: 'your answer',
    examples: [
      { what: 'no mill is owned', of: 'own-mill', given: {}, speaks: 'yes', number: 0, limit: 1 },
      { what: 'one is', of: 'own-mill', given: { shop: { machine: 'example-mill' } }, speaks: 'no' },
      {
        what: 'nobody says',
        of: 'own-mill',
        given: { shop: { machine: 'unknown' } },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'route-none',
    about: ['new-mill', 'convertible', 'built-in', 'single-axis'],
    side: 'rules out',
    unit: '',
    number: counted,
    limit: exactly(1, 'one arrangement'),
    when: 'below',
    source: 'the catalog',
    examples: [
      {
        what: 'no machine with a table of its own',
        of: 'built-in',
        given: {},
        speaks: 'yes',
        number: 0,
        limit: 1,
      },
      { what: 'a mill and a rotary', of: 'new-mill', given: {}, speaks: 'no' },
    ],
  },
];
