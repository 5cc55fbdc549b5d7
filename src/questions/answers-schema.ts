import * as z from 'zod';
import { CURRENCY } from '../documents/fields/currency.ts';
import { oncePerUnits } from '../documents/fields/once-per-units.ts';
import { optionalTextField, requiredChoiceField } from '../documents/fields/plain-fields.ts';
import { strictMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from './answers.ts';
import { assumeField } from './answers-schema-assume.ts';
import { mattersField } from './answers-schema-matters.ts';
import { partField } from './answers-schema-part.ts';
import { controlField, moneyField, shopField, toolsField, workField } from './answers-schema-shop.ts';
import { MOST_PARTS } from './most-parts.ts';

const ANSWERS_FORMAT = 'fivesides-answers/1' as const;

/**
 * An answers file whose bare numbers are in these units, read into answers in mm, kg, N·m, degrees: everything that
 * is left out is filled in as 'unknown' or as the value that it then has.
 */
export const answersSchema = oncePerUnits((units: LengthUnits): z.ZodType<Answers> => {
  return strictMap(
    {
      format: requiredChoiceField([ANSWERS_FORMAT], 'the format of this file'),
      units: requiredChoiceField(
        ['mm', 'inch'],
        'units of bare numbers: mm, kg, mm/min and m/min, or inch, lb, in/min and ft/min',
      ).transform(() => 'mm' as const),
      currency: optionalTextField(CURRENCY, 'unknown'),
      parts: z.array(partField(units)).min(1).max(MOST_PARTS),
      tools: toolsField(units),
      shop: shopField(units),
      work: workField(units),
      money: moneyField(units),
      control: controlField(),
      matters: mattersField(),
      assume: assumeField(units),
    },
    { means: 'answers for fivesides' },
  );
});
