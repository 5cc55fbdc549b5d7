import { readCatalog } from '../../../src/catalog/read.ts';
import { decodeText } from '../../../src/documents/decode-text.ts';
import {
  endLines,
  feedbackLines,
  lessonHead,
  revealedLines,
  stepLines,
} from '../../../src/teaching/lessons/lesson-words.ts';
import { readLesson } from '../../../src/teaching/lessons/read-lesson.ts';
import { LESSON_START, type ReadyLesson, runLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import { prepareLesson } from '../../../src/teaching/lessons/step-key.ts';
import { heldLine, heldProblems, linesIn } from '../held.ts';
import { NASTY_TEXTS } from '../nasty.ts';
import { oneOf } from '../spoil.ts';
import { demoFilesEnding, FILE, type FuzzedInput, LESSONS } from './input.ts';

const reading = readCatalog(['catalog-demo']);
if (!reading.ok) throw new Error('the demo cannot be read');
const DEMO = reading.value;
const LOOK = { width: 80, ascii: false, units: 'mm' } as const;
const GONE_THROUGH = 0.05;
const MOST_EVENTS = 12;

/** A lesson: refused in words, or gone through with predictions of any kind. */
export const LESSON: FuzzedInput = {
  name: 'lesson',
  share: 140,
  seeds: () => demoFilesEnding(/\.yaml$/, LESSONS),
  take: (bytes, chance) => {
    const text = decodeText(bytes, FILE);
    const lesson = text.ok ? readLesson(FILE, text.value) : text;
    if (!lesson.ok) return heldProblems(lesson.problems, linesIn(bytes.toString('utf8')));
    if (!chance.happens(GONE_THROUGH)) return 'taken';
    const ready = prepareLesson(lesson.value, DEMO);
    if (!ready.ok) {
      for (const fault of ready.faults) if (fault.trim() === '') throw new Error('a fault without words');
      return 'refused';
    }
    goThrough(ready, () => oneOf(['100', 'holds', 'hint', '1e309', '-0', '12 kg', ...NASTY_TEXTS], chance));
    return 'taken';
  },
};

function goThrough(ready: ReadyLesson, prediction: () => string): void {
  let run = LESSON_START;
  const held = (lines: readonly string[]): void => lines.forEach(heldLine);
  held(lessonHead(ready, LOOK));
  for (let left = MOST_EVENTS; left > 0 && run.phase !== 'done'; left -= 1) {
    if (run.phase === 'predict') held(stepLines(ready, run, LOOK));
    const text = prediction();
    const event =
      run.phase === 'revealed'
        ? ({ type: 'next' } as const)
        : left % 3 === 0
          ? ({ type: 'reveal' } as const)
          : ({ type: 'predict', text, units: 'mm' } as const);
    run = runLesson(ready, run, event);
    if (run.phase !== 'done') held(feedbackLines(ready, run, LOOK));
    if (run.phase === 'revealed') held(revealedLines(ready, run, LOOK));
  }
  held(endLines(ready, run, LOOK));
}
