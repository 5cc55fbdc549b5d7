import type { LessonStep } from './lesson.ts';
import type { StepKey } from './step-key.ts';

/** One thing to be shown to a class. `index`: which of the hints, or which line of the way. */
export type ClassPage =
  | { readonly kind: 'title' | 'question' | 'given' | 'defined' | 'result' | 'why' | 'end' }
  | { readonly kind: 'hint' | 'formula' | 'numbers'; readonly index: number };

/**
 * What is shown of a step, one thing after the other: the question, what is given, the hints, each line of the way as a formula
 * and then with its numbers, the result, why.
 */
export function classPages({ hints }: LessonStep, { worked }: StepKey): readonly ClassPage[] {
  const way = worked?.formula.steps ?? [];
  return [
    { kind: 'question' },
    ...(worked === null ? [] : [{ kind: 'given' } as const]),
    ...hints.map((_, index) => ({ kind: 'hint', index }) as const),
    ...((worked?.formula.definitions.length ?? 0) === 0 ? [] : [{ kind: 'defined' } as const]),
    ...way.flatMap((_, index) => [{ kind: 'formula', index } as const, { kind: 'numbers', index } as const]),
    { kind: 'result' },
    { kind: 'why' },
  ];
}

/** Pages on which nothing of the way is shown yet: the room may still guess. */
export const isBefore = ({ kind }: ClassPage): boolean =>
  kind === 'question' || kind === 'given' || kind === 'hint';
