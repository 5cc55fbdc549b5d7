import * as z from 'zod';
import { report } from '../documents/fields/fault.ts';
import { requiredChoiceField } from '../documents/fields/plain-fields.ts';
import { MEASURES, type Measure } from './answers.ts';

/** What arrangements are compared on, the most important first; what is not named follows in the usual order. */
export function mattersField(): z.ZodType<readonly Measure[]> {
  const measure = requiredChoiceField(MEASURES, 'what arrangements are compared on');
  return z
    .array(measure)
    .superRefine((measures, context) => {
      for (const [index, each] of measures.entries()) {
        if (measures.indexOf(each) === index) continue;
        report(context, {
          path: [index],
          found: `("${each}") stands twice`,
          expected: 'expected each measure once',
        });
      }
    })
    .transform((measures) => [...measures, ...MEASURES.filter((each) => !measures.includes(each))])
    .prefault([...MEASURES]);
}
