import { topicNamed } from '../find-topic.ts';
import type { Asked, LessonStep } from './lesson.ts';

/** Words of the glossary that tell what a measure is; the others are read in the sentences of a result. */
const MEASURE_TERMS: Readonly<Record<string, string>> = {
  coverage: 'coverage',
  viseStations: 'vise-station',
  payback: 'payback',
  netPresentValue: 'net-present-value',
  swapHours: 'swap',
};

/** What explains what a step asks for, as it is called. Example: a number of the check swing → `check/swing`; null: nothing does. */
export function topicOfStep({ asked }: LessonStep): string | null {
  const name = topicName(asked);
  return name === null || topicNamed(name) === undefined ? null : name;
}

function topicName(asked: Asked): string | null {
  switch (asked.kind) {
    case 'number':
    case 'verdict':
      return `check/${asked.check}`;
    case 'rule':
    case 'rule number':
      return `class-rule/${asked.rule}`;
    case 'feature':
    case 'feature number':
      return `feature/${asked.feature}`;
    case 'class':
      return `term/${asked.class}`;
    case 'measure': {
      const term = MEASURE_TERMS[asked.measure];
      return term === undefined ? null : `term/${term}`;
    }
  }
}
