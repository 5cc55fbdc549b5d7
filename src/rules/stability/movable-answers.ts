import type { Interval } from '../../quantities/interval.ts';
import type { Answers } from '../../questions/answers.ts';
import { QUESTIONS } from '../../questions/index.ts';
import type { Field } from '../../questions/question.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { Keys } from '../flips/value-at.ts';

/** A number that somebody answered, and where it is looked for: around it, within what its question accepts. */
export interface Movable {
  /** its path. Example: `parts[Hinge].size[0]`, `tools.longest`, `shop.lifting[0].capacity` */
  readonly answer: string;
  readonly keys: Keys;
  /** answers of one group are about the same thing: one of the parts, the tools, the ways to lift … */
  readonly group: string;
  readonly at: number;
  readonly domain: Interval;
  /** only whole numbers make sense */
  readonly whole: boolean;
}

/**
 * Every answer that is a number and could be another one; not those that are ranges already. Assumptions are no answers.
 * By their paths, so that the order in which they were given does not matter.
 */
export function movableAnswers(answers: Answers): readonly Movable[] {
  const { parts, tools, shop, work, money } = answers;
  const found: Movable[] = [];
  const visit = (value: unknown, path: string, plain: string, keys: Keys): void => {
    if (typeof value === 'number') {
      const where = domainOf(plain);
      if (where === null) return;
      const { whole, accepted, unsure } = where;
      found.push({
        answer: path,
        keys,
        group: groupOf(keys),
        at: value,
        domain: around(value, accepted, unsure),
        whole,
      });
    } else if (Array.isArray(value)) {
      if (isRange(value, keys, plain)) return;
      value.forEach((each, index) => {
        const kind = isMeans(each) ? `${plain}.${each.by}` : plain;
        visit(each, `${path}[${index}]`, kind, [...keys, index]);
      });
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, each] of Object.entries(value))
        visit(each, `${path}.${key}`, `${plain}.${key}`, [...keys, key]);
    }
  };
  parts.forEach((part, index) => {
    visit(part, `parts[${part.name}]`, 'parts', ['answers', 'parts', index]);
  });
  for (const [key, value] of Object.entries({ tools, shop, work, money }))
    visit(value, key, key, ['answers', key]);
  return found.sort((a, b) => (a.answer < b.answer ? -1 : 1));
}

/** Farther than to twice as much, and to half of it, is not looked: it takes long, and nobody is so wrong about it. */
const FARTHEST = 2;

/** Nothing is twice nothing: from there as far as *not sure* goes. */
function around(at: number, { low, high }: Interval, unsure: Interval): Interval {
  const [least, most] = at === 0 ? [unsure.low, unsure.high] : [at / FARTHEST, at * FARTHEST];
  return { low: Math.min(at, Math.max(low, least)), high: Math.max(at, Math.min(high, most)) };
}

/** A part by its index, its yearly work apart; the shop by what of it; of the rest each. */
const groupOf = ([, list, which, what]: Keys): string =>
  list === 'parts' ? `parts.${which}.${what === 'yearly'}` : list === 'shop' ? `shop.${which}` : String(list);

const RANGES: Readonly<Record<string, Interval>> = NOT_SURE;

/** What is above a limit begins so far from it. */
const HAIR = 1e-9;

/** What the question accepts; where it sets no end, or none is asked, what not sure stands for. */
function domainOf(
  plain: string,
): { readonly accepted: Interval; readonly unsure: Interval; readonly whole: boolean } | null {
  const path = plain.replace('parts.approaches', 'parts');
  const range = RANGES[path];
  if (range === undefined) return null;
  const field = fieldOf(path);
  const limits = field?.kind === 'quantity' || field?.kind === 'quantities' ? field.limits : {};
  const { least, most, above, below, whole } = limits;
  const accepted = {
    low: least ?? (above === undefined ? range.low : above + HAIR),
    high: most ?? (below === undefined ? range.high : below - HAIR),
  };
  return { accepted, unsure: range, whole: whole === true };
}

const fieldOf = (path: string): Field | undefined => QUESTIONS.find((each) => each.path === path)?.field;

/** Two numbers are the ends of a range that was answered, but for what asks for several numbers, as the size of a part. */
const isRange = (value: readonly unknown[], keys: Keys, plain: string): boolean =>
  value.every((each) => typeof each === 'number') &&
  (typeof keys.at(-1) === 'number' || fieldOf(plain)?.kind !== 'quantities');

const isMeans = (value: unknown): value is { readonly by: string } =>
  typeof value === 'object' && value !== null && 'by' in value;
