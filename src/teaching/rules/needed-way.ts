import type { Family } from '../../rules/arranging/family.ts';
import type { ClassGround } from '../../rules/classes/ground.ts';
import { known } from '../../rules/judging/value.ts';
import { step } from '../formula/formula-source.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import { given, joined, numbers, type Stretch, yesOrNo } from './stretch.ts';

/** Hours of each family, in their order: h1, h2, … */
const hoursGiven = ({ families }: Pick<ClassGround, 'families'>): readonly GivenNumber[] =>
  families.map(hourGiven);

/** Hours a year of one family, by its index: h1, h2, … */
export const hourGiven = ({ name, hours }: Family, index: number): GivenNumber =>
  given(`h${index + 1}`, 'h', `hours a year: ${name}`, hours, `parts[${name}].hoursAYear`);

/** Whether it counts: k1, k2, … */
export const countsGiven = ({ name }: Family, index: number, counts: boolean): GivenNumber =>
  yesOrNo(`k${index + 1}`, `${name} counts for it`, counts, `parts[${name}].counts`);

const all = (families: readonly Family[], of: (own: number) => string, by = ' + '): string =>
  families.map((_, index) => of(index + 1)).join(by);

/** The least share that counts, or nearly all of the hours, as `w`. */
export const shareWanted = (
  { shop: { assume } }: Pick<ClassGround, 'shop'>,
  which: 'least' | 'nearly all',
  gives: string,
): Stretch => {
  const least = (symbol: string): GivenNumber =>
    given(
      symbol,
      'share',
      'least share of the hours that an arrangement must cover',
      known(assume.leastCoverage, 'assume.leastCoverage'),
    );
  if (which === 'least') return numbers(least(gives));
  return {
    given: [
      least('c'),
      given(
        'k',
        'share',
        'share of the hours that no longer sets a size',
        known(assume.kneeShare, 'assume.kneeShare'),
      ),
    ],
    steps: [step(gives, 'share', 'nearly all of the hours', 'max(c, 1 - k)')],
  };
};

/** How a quantity of each family comes about, as z1, z2, … */
export type SizesOf = (of: ClassGround) => Stretch;

/**
 * The least size that is enough for a share of the hours, and for every must-have part: of each size the share of the hours that
 * lie within it, then the least with enough of them. `wanted`: the name of that share.
 */
export function neededWay(
  { families }: Pick<ClassGround, 'families'>,
  {
    gives,
    unit,
    words,
    wanted,
    suffix = '',
    musts = true,
  }: {
    readonly gives: string;
    readonly unit: string;
    readonly words: string;
    readonly wanted: string;
    readonly suffix?: string;
    readonly musts?: boolean;
  },
): Stretch {
  if (families.length === 1) return { given: [], steps: [step(gives, unit, words, 'z1')] };
  const within = (own: number): string => all(families, (other) => `if(z${other} <= z${own}, h${other}, 0)`);
  const largest = `max(${all(families, (own) => `z${own}`, ', ')})`;
  const enough = `min(${all(families, (own) => `if(s${own} >= ${wanted}, z${own}, Z)`, ', ')})`;
  const held = musts ? families.flatMap(({ must }, index) => (must ? [`z${index + 1}`] : [])) : [];
  return {
    given: hoursGiven({ families }),
    steps: [
      step(
        'H',
        'h',
        'all five-axis hours a year',
        all(families, (own) => `h${own}`),
      ),
      ...families.map(({ name }, index) =>
        step(
          `s${index + 1}`,
          'share',
          `share of the hours that needs no more than ${name}`,
          `(${within(index + 1)})/H`,
        ),
      ),
      step('Z', unit, 'the largest of all', largest),
      step(
        gives,
        unit,
        `${words}${suffix}`,
        held.length === 0 ? enough : `max(${[enough, ...held].join(', ')})`,
      ),
    ],
  };
}

/** Which families count, one by one, and their share of the hours as N. */
export function shareWay(
  of: Pick<ClassGround, 'families'>,
  counts: (family: Family) => boolean,
  words: string,
): Stretch {
  const { families } = of;
  return joined(
    numbers(
      ...hoursGiven(of),
      ...families.map((family, index) => countsGiven(family, index, counts(family))),
    ),
    {
      given: [],
      steps: [
        step(
          'H_n',
          'h',
          'hours that count for it',
          all(families, (own) => `k${own}*h${own}`),
        ),
        step(
          'H',
          'h',
          'all five-axis hours a year',
          all(families, (own) => `h${own}`),
        ),
        step('N', 'share', words, 'H_n/H'),
      ],
    },
  );
}
