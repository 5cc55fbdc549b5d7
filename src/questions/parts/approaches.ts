import type { Approach, Part } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import type { Option } from '../question.ts';

const OPTIONS: readonly Option[] = [
  { value: 'top', label: 'top', about: 'straight down' },
  { value: 'sides', label: 'sides', about: 'level, into the faces around it' },
  {
    value: 'around',
    label: 'around',
    about: 'anywhere on the way round, like a shaft held in a chuck',
  },
  {
    value: 'slant',
    label: 'slant',
    about: 'between top and side, at an angle',
  },
  {
    value: 'undercut',
    label: 'undercut',
    about: 'from below level, leaning past the side',
  },
];

const kindOf = (approach: Approach): string =>
  typeof approach === 'string' ? approach : 'slant' in approach ? 'slant' : 'undercut';

/** The approaches of these kinds; angles that are there already stay. */
function withKinds(part: Part, kinds: readonly string[]): readonly Approach[] {
  return kinds.flatMap((kind): readonly Approach[] => {
    const there =
      part.approaches === 'unknown' ? [] : part.approaches.filter((each) => kindOf(each) === kind);
    if (there.length > 0) return there;
    if (kind === 'slant') return [{ slant: 'unknown' }];
    if (kind === 'undercut') return [{ undercut: 'unknown' }];
    return kind === 'top' || kind === 'sides' || kind === 'around' ? [kind] : [];
  });
}

/** Where the tool has to come from. */
export const approaches = aboutPart<readonly string[] | 'unknown'>({
  id: 'approaches',
  section: 'parts',
  title: 'Sides that are cut',
  path: 'parts.approaches',
  ask: ({ part }) => `From which directions is ${part} cut? Name all of them.`,
  hint: 'For a slant or an undercut the angle is asked next. Example: top, sides.',
  why: 'It decides which kind of rotary is needed, how far it has to tilt, and what has to be reached.',
  readBy: ['tilt-range', 'rotary-class', 'travel-x', 'travel-y', 'reach-high', 'reach-low', 'coverage'],
  field: { kind: 'list', options: () => OPTIONS },
  // each of the others alone, and all together; short, since it stands beside its row on a narrow screen
  unsure: { as: 'computed', words: 'each is considered, but not the top alone' },
  get: (part) => (part.approaches === 'unknown' ? 'unknown' : [...new Set(part.approaches.map(kindOf))]),
  set: (part, kinds) => ({
    ...part,
    approaches: kinds === 'unknown' ? kinds : withKinds(part, kinds),
  }),
});
