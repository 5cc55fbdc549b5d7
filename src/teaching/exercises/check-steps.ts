import { CHECK_WORDS } from '../../report/wording/checks.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { WorkedCheck } from '../examples/worked-check.ts';
import type { LessonStep } from '../lessons/lesson.ts';
import { CHECK_LESSONS } from '../words/check-lessons.ts';
import { wayHints } from './way-hints.ts';
import { TOLERANCE } from './way-step.ts';

/** What a step asks of a check, of a part or (null) of the arrangement. */
export interface Subject {
  readonly check: CheckId;
  readonly part: string | null;
  readonly worked: WorkedCheck | null;
}

/** Need and have, as far as they have to be worked out; else what is left; then the verdict. */
export const checkSteps = (subject: Subject): readonly LessonStep[] => [
  ...numberSteps(subject),
  verdictStep(subject),
];

/** The steps that ask for a number: none where the check is a yes or a no. */
export function numberSteps({ check, part, worked }: Subject): readonly LessonStep[] {
  if (worked === null) return [];
  const { formula, worked: way } = worked;
  const { unit } = formula;
  // axes and phases are counted at a glance
  if (unit === '' || unit === 'axes') return [];
  const words = CHECK_WORDS[check];
  const isGiven = (name: string): boolean => formula.symbols.some(({ symbol }) => symbol === name);
  const inUnit = unit === 'money' ? '' : `, in ${unit}`;
  const of = part === null ? '' : ` of the part ${part}`;
  const asked = (side: 'need' | 'have' | 'margin', ask: string): LessonStep => ({
    ask,
    asked: { kind: 'number', check, part, side },
    on: null,
    tolerance: TOLERANCE,
    hints: hintsFor(worked, side),
    why: side === 'have' ? words.sentence : CHECK_LESSONS[check].plain,
  });
  const sides = (['need', 'have'] as const).filter((side) => !isGiven(formula[side]) && way[side] !== 0);
  if (sides.length === 0)
    return [
      asked(
        'margin',
        `${sentenceCase(words.need)} against ${words.have}${of}: how much is left${inUnit}? Less than nothing where it is too little.`,
      ),
    ];
  return sides.map((side) =>
    side === 'need'
      ? asked('need', `${sentenceCase(words.need)}${of}: how much is needed${inUnit}?`)
      : asked('have', `${sentenceCase(words.have)}: how much is there${inUnit}?`),
  );
}

/** The verdict, as a choice. */
export function verdictStep({ check, part, worked }: Subject): LessonStep {
  const words = CHECK_WORDS[check];
  const { mistake, careful } = CHECK_LESSONS[check];
  return {
    ask: `${words.title}: what is the verdict${part === null ? '' : ` on the part ${part}`}?`,
    asked: { kind: 'verdict', check, part },
    on: null,
    tolerance: TOLERANCE,
    hints: [
      words.sentence,
      worked?.formula.sense === 'at-least'
        ? 'It holds where what is needed lies no lower than what there is. It holds with a condition where a measure that is to be had makes it good.'
        : 'It holds where no more is needed than there is. It holds with a condition where a measure that is to be had makes it good.',
    ],
    why: `The usual mistake: ${mistake}${careful === undefined ? '' : ` ${careful}`}`,
  };
}

/** First in words what is worked out one after the other, then the formulas. */
function hintsFor({ formula }: WorkedCheck, side: 'need' | 'have' | 'margin'): readonly string[] {
  if (side === 'margin')
    return [
      formula.sense === 'at-most'
        ? 'Take what is needed away from what there is.'
        : 'Take what there is away from what is needed.',
    ];
  return wayHints(formula, formula[side]);
}
