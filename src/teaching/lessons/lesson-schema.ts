import * as z from 'zod';
import { ROTARY_CLASSES } from '../../catalog/catalog.ts';
import { oncePerUnits } from '../../documents/fields/once-per-units.ts';
import {
  absentChoiceField,
  optionalTextField,
  requiredChoiceField,
  textField,
} from '../../documents/fields/plain-fields.ts';
import { quantitiesIn, uncertainField } from '../../documents/fields/quantity-fields.ts';
import { strictMap } from '../../documents/fields/strict-map.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { MEASURES } from '../../questions/answers.ts';
import { answersSchema } from '../../questions/answers-schema.ts';
import { CHECK_IDS } from '../../rules/checks/ids.ts';
import { FEATURE_IDS } from '../../rules/features/ids.ts';
import type { Asked, Lesson, LessonStep } from './lesson.ts';

const LESSON_FORMAT = 'fivesides-lesson/1' as const;
const LONGEST = 1200;
const MOST_STEPS = 40;
const MOST_HINTS = 5;
const USUAL_TOLERANCE = 1;

const text = (means: string) => textField({ means, longest: LONGEST });
const name = (means: string) => optionalTextField({ means, longest: 200 }, null);

const CLASSES = [...ROTARY_CLASSES, 'built-in'] as const;
const SIDES = ['need', 'have', 'margin'] as const;
const ALL_MEASURES = [...MEASURES, 'netPresentValue'] as const;

/** `number: { check: swing, part: Bracket, side: need }` and its like: exactly one of them. */
const askedFields = () => ({
  number: strictMap(
    {
      check: requiredChoiceField(CHECK_IDS, 'the check whose number is asked for'),
      part: name('the part, by its name; left out for a check of the whole arrangement'),
      side: requiredChoiceField(SIDES, 'which of its numbers'),
    },
    { means: 'a number of a check' },
  ).optional(),
  verdict: strictMap(
    {
      check: requiredChoiceField(CHECK_IDS, 'the check whose verdict is asked for'),
      part: name('the part, by its name; left out for a check of the whole arrangement'),
    },
    { means: 'the verdict of a check' },
  ).optional(),
  class: absentChoiceField(CLASSES, 'the kind of rotary of which is asked whether it suits'),
  feature: absentChoiceField(FEATURE_IDS, 'the feature of which is asked how much it is needed'),
  measure: absentChoiceField(ALL_MEASURES, 'the measure that is asked for'),
});

const stepField = (units: LengthUnits): z.ZodType<LessonStep> =>
  strictMap(
    {
      ask: text('the question'),
      ...askedFields(),
      on: name('the arrangement, by its id; left out: that of the lesson'),
      tolerance: uncertainField(
        quantitiesIn(units)('count', { least: 0, most: 50 }, 'how far a number may be off, in percent'),
        USUAL_TOLERANCE,
      ),
      hints: z.array(text('a hint; each costs points')).max(MOST_HINTS).prefault([]),
      why: text('what is to be understood, told once it is revealed'),
    },
    { means: 'a step of a lesson: predict, reveal, why' },
  ).transform((step, context): LessonStep => {
    const asked = askedOf(step);
    if (asked.length !== 1)
      context.addIssue({
        code: 'custom',
        message: 'asks for more or less than one thing',
        params: {
          fault: {
            found: asked.length === 0 ? 'asks for nothing' : 'asks for several things',
            expected: 'expected one of number, verdict, class, feature, measure',
          },
        },
      });
    const { ask, on, hints, why, tolerance } = step;
    const plain = typeof tolerance === 'number' ? tolerance : USUAL_TOLERANCE;
    return {
      ask,
      asked: asked[0] ?? { kind: 'measure', measure: 'coverage' },
      on,
      tolerance: plain,
      hints,
      why,
    };
  });

interface Given {
  readonly number?:
    | {
        readonly check: (typeof CHECK_IDS)[number];
        readonly part: string | null;
        readonly side: (typeof SIDES)[number];
      }
    | undefined;
  readonly verdict?: { readonly check: (typeof CHECK_IDS)[number]; readonly part: string | null } | undefined;
  readonly class?: (typeof CLASSES)[number] | undefined;
  readonly feature?: (typeof FEATURE_IDS)[number] | undefined;
  readonly measure?: (typeof ALL_MEASURES)[number] | undefined;
}

const askedOf = (given: Given): readonly Asked[] => [
  ...(given.number === undefined ? [] : [{ kind: 'number' as const, ...given.number }]),
  ...(given.verdict === undefined ? [] : [{ kind: 'verdict' as const, ...given.verdict }]),
  ...(given.class === undefined ? [] : [{ kind: 'class' as const, class: given.class }]),
  ...(given.feature === undefined ? [] : [{ kind: 'feature' as const, feature: given.feature }]),
  ...(given.measure === undefined ? [] : [{ kind: 'measure' as const, measure: given.measure }]),
];

/** A file with a lesson: its answers are those of an answers file, its numbers are worked out on a catalog. */
export const lessonSchema = oncePerUnits(
  (units: LengthUnits): z.ZodType<Lesson> =>
    strictMap(
      {
        format: requiredChoiceField([LESSON_FORMAT], 'the format of this file'),
        title: textField({ means: 'what the lesson is called', longest: 120 }),
        about: text('what it is about, in a sentence or two'),
        machines: z.array(textField({ means: 'id of a machine of the catalog', longest: 80 })).prefault([]),
        rotaries: z.array(textField({ means: 'id of a rotary of the catalog', longest: 80 })).prefault([]),
        on: textField({
          means: 'the arrangement that its steps are about, by its id: machine+rotary/mounting',
          longest: 240,
        }),
        steps: z.array(stepField(units)).min(1).max(MOST_STEPS),
        answers: answersSchema(units),
      },
      { means: 'a lesson for fivesides' },
    ).transform(({ format: _, ...lesson }): Lesson => lesson),
);
