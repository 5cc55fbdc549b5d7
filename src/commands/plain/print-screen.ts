import { printable } from '../../documents/printable.ts';
import type { PartLine } from '../../session/part-lines.ts';
import type { Screen } from '../../session/screen.ts';
import { paragraph } from './paragraph.ts';
import { optionLines, questionLines, questionPrompt } from './print-question.ts';
import { reviewText } from './print-review.ts';

/** What the last event brought about: the answer as it was understood, what is wrong with it. */
export function feedbackLines(
  { accepted, error, said, more = [] }: Screen,
  width: number,
): readonly string[] {
  const sentences = [
    ...(accepted === null ? [] : [`${accepted.title}: ${accepted.words}`]),
    ...(error === null ? [] : [error.why]),
    ...(said === null ? [] : [said]),
  ];
  return [
    ...sentences.flatMap((sentence) => paragraph(printable(sentence), width)),
    ...more.flatMap((line) => paragraph(printable(line), width, '  ')),
  ];
}

/** What is asked now. The result itself is printed by the shell: it comes from the report. */
export function screenLines(screen: Screen, width: number): readonly string[] {
  switch (screen.kind) {
    case 'question':
      return questionLines(screen, width);
    case 'resume':
      return paragraph(resumeText(screen), width);
    case 'parts':
      return [...partLines(screen.parts, width), ...optionLines(screen.actions, width), 'Enter: go on.'];
    case 'remove':
      return paragraph(`Remove ${screen.name} with its ${count(screen.answered, 'answer')}?`, width);
    case 'review':
      return reviewText(screen, width);
    case 'result':
      return paragraph(
        `Write all of it, with every number and its source, as a Markdown file? Enter writes ${screen.file}; or type ` +
          'another name, "no" to leave without a file, "review" or "back" to change an answer.',
        width,
      );
    case 'file':
      return paragraph(
        `Where to write the ${screen.what.replaceAll('-', ' ')}? Enter: ${screen.file} in this folder.`,
        width,
      );
    case 'overwrite':
      return paragraph(`${screen.file} is there already. Replace it?`, width);
    case 'trial':
      return paragraph(trialText(screen), width);
    case 'naming':
      return paragraph(namingText(screen), width);
    case 'variants':
      return paragraph(
        'Type look, keep or remove and its number or its name, such as: look 1. "export variants" writes the table.',
        width,
      );
    case 'next':
    case 'done':
      return [];
  }
}

/** What stands before the cursor. */
export function promptOf(screen: Screen): string {
  switch (screen.kind) {
    case 'question':
      return questionPrompt(screen);
    case 'resume':
      return 'resume or new > ';
    case 'parts':
      return 'Parts > ';
    case 'remove':
    case 'overwrite':
      return 'yes or no > ';
    case 'review':
      return screen.part === null
        ? 'A number to change, or Enter for the result > '
        : 'A number to change, or Enter > ';
    case 'trial':
      return 'keep, drop, name, or another answer > ';
    case 'naming':
      return 'Name > ';
    case 'variants':
      return 'look, keep or remove, or Enter > ';
    default:
      return 'File > ';
  }
}

const trialText = ({ of }: Screen & { kind: 'trial' }): string =>
  of === null
    ? 'Nothing of this is an answer of the interview yet. Type keep, drop, or name and a name, under which it stays ' +
      'beside them; "what if" and words of an answer change one more; "result" shows all of it.'
    : `This is ${of}. Type keep to go on with it, "back" to leave it as it is, remove to take it out; "what if" and words ` +
      'of an answer change one more, and name takes that over; "result" shows all of it.';

const namingText = ({ of }: Screen & { kind: 'naming' }): string =>
  `What is it called beside the answers of the interview?${of === null ? '' : ` Enter: ${of}.`}`;

function resumeText({ parts, answered }: Screen & { kind: 'resume' }): string {
  const about = parts.length === 0 ? '' : ` about ${parts.join(', ')}`;
  return (
    `There is a saved interview with ${count(answered, 'answer')}${about}. Type "resume" to go on with it, or "new" to ` +
    'begin another; your first answer then takes the place of the saved ones.'
  );
}

const partLines = (parts: readonly PartLine[], width: number): readonly string[] => [
  ...paragraph(`So far there ${parts.length === 1 ? 'is' : 'are'} ${count(parts.length, 'part')}:`, width),
  ...parts.flatMap(({ name, summary, open }, index) => {
    const words = [
      summary === '' ? name : `${name}: ${summary}`,
      ...(open === 0 ? [] : [`${count(open, 'question')} open`]),
    ];
    return paragraph(words.join('; '), width, `${String(index + 1).padStart(3)}. `);
  }),
  'What next?',
];

const count = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? '' : 's'}`;
