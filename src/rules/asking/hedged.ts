import type { Answers, Part, Uncertain } from '../../questions/answers.ts';
import { UNKNOWN_DRILL } from '../../questions/drill/drilled.ts';
import { HELD_AGAINST_NOTHING } from '../../questions/held-against-nothing.ts';

type Path = keyof typeof HELD_AGAINST_NOTHING;

const OF_A_PART = ['parts.eccentricity', 'parts.drill'] as const;

/**
 * Paths of questions whose usual value is not relied on while nobody is asked: it may be anything. What has a usual value
 * and is not among them is taken for known, and whoever is shown the result is told so.
 */
export const HEDGED: ReadonlySet<string> = new Set([
  ...Object.keys(HELD_AGAINST_NOTHING),
  ...OF_A_PART,
  'matters',
]);

/** Of what nobody was asked yet, what is taken for known, or held against nothing, while it is not answered. */
export const unnamed = (unasked: ReadonlySet<string>): readonly string[] =>
  Object.keys(HELD_AGAINST_NOTHING).filter((path) => unasked.has(path));

/**
 * Answers in which what nobody was asked yet may turn out to be anything: nothing of what is `HEDGED` is taken for known,
 * and nothing counts as held against nothing that an answer could put there. `unasked`: paths of what was not
 * asked yet. Example: no budget is named, and nobody was asked → a budget from 0 to 1e9.
 */
export function hedged(answers: Answers, unasked: ReadonlySet<string>): Answers {
  const { shop, work, money } = answers;
  const { power, air } = shop;
  const or = (value: Uncertain, path: Path): Uncertain =>
    value === 'unknown' && unasked.has(path) ? HELD_AGAINST_NOTHING[path] : value;
  return {
    ...answers,
    parts: answers.parts.map((part) => hedgedPart(part, unasked)),
    shop: {
      ...shop,
      floorRating: or(shop.floorRating, 'shop.floorRating'),
      power: { ...power, kVA: or(power.kVA, 'shop.power.kVA') },
      air: { flow: or(air.flow, 'shop.air.flow'), bar: or(air.bar, 'shop.air.bar') },
    },
    work: { ...work, visesWanted: or(work.visesWanted, 'work.visesWanted') },
    money: {
      ...money,
      budget: or(money.budget, 'money.budget'),
      shopRate: or(money.shopRate, 'money.shopRate'),
    },
  };
}

/** A part is taken for centered, and without a large drilled hole, while nobody is asked. */
function hedgedPart(part: Part, unasked: ReadonlySet<string>): Part {
  const isUnasked = (path: string): boolean => unasked.has(`parts[${part.name}].${path}`);
  return {
    ...part,
    eccentricity: isUnasked('eccentricity') ? 'unknown' : part.eccentricity,
    drill: isUnasked('drill') ? UNKNOWN_DRILL : part.drill,
  };
}
