import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from './answers.ts';

export interface WrittenAnswers {
  /** plain data, as it would be read from the text */
  readonly data: Readonly<Record<string, unknown>>;
  /** YAML */
  readonly text: string;
}

/** Answers as an answers file in mm or inches. Reading it back gives equal answers. */
export function answersToFile(answers: Answers, options: { readonly units: LengthUnits }): WrittenAnswers {
  throw new Error(`not built yet: ${answers.format} ${options.units}`);
}
