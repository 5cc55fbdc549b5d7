import type { Path, Place } from '../documents/place.ts';
import type { Reading } from '../documents/problem.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from './answers.ts';

/** An answers file that was read. */
export interface AnswersFile {
  readonly answers: Answers;
  /** the units of the file: what is shown to whoever wrote it */
  readonly shownIn: LengthUnits;
  readonly text: string;
  readonly file: string;
  /** where an answer stands in the file, for problems that show only beside the catalog */
  readonly placeOf: (path: Path) => Place;
}

/** Reads an answers file, or standard input for `-`. Every problem at once; never throws. */
export function readAnswers(path: string, text?: string): Reading<AnswersFile> {
  throw new Error(`not built yet: ${path} ${text}`);
}
