import type { Case } from '../judging/case.ts';
import type { MeansCase } from '../judging/site-case.ts';
import type { Input } from '../judging/term.ts';
import type { Value } from '../judging/value.ts';

type Of<By extends MeansCase['by']> = Extract<MeansCase, { by: By }>;
/** The numbers of a means, by their keys. */
type NumberOf<By extends MeansCase['by']> = {
  [Key in keyof Of<By>]: Of<By>[Key] extends Value ? Key : never;
}[keyof Of<By>];

const WORDS: Readonly<Record<string, string>> = {
  reach: 'reach from the body',
  from: 'height where the lift begins',
  lift: 'height of the lift',
  people: 'people who lift',
  capacity: 'capacity',
  loadCenter: 'load center of the rating',
  rigging: 'mass of the rigging',
  legs: 'legs of the sling',
  slingAngle: 'angle of the sling',
  slingHeight: 'height of the sling',
  hookHeight: 'height of the hook',
};

/** A number of one of the shop's means of lifting. Throws where that means is of another kind. */
export function meansInput<By extends MeansCase['by']>(
  index: number,
  by: By,
  key: NumberOf<By> & string,
  unit: string,
  domain: readonly [low: number, high: number],
): Input {
  return {
    name: `${by}: ${WORDS[key] ?? key}`,
    unit,
    domain,
    read: (of: Case): Value => {
      const means = of.shop.site.lifting?.[index];
      if (means?.by !== by) throw new Error(`the means of lifting ${index} is not by ${by}`);
      return (means as unknown as Readonly<Record<string, Value>>)[key] as Value;
    },
  };
}
