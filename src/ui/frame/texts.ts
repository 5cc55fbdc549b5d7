import { readerNames } from '../../report/reader-names.ts';
import type { QuestionScreen, Screen } from '../../session/screen.ts';
import { termLine, termsOfQuestion } from '../../teaching/terms-in.ts';
import { helpHere } from '../keys/keymap.ts';
import type { KeyWords } from '../keys/keymap-of.ts';
import type { Situation } from '../keys/situation.ts';
import { padded, wrapped } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { written } from './written.ts';

/** Why a question is asked, and what reads its answer. */
export function whyRows(screen: QuestionScreen & Screen, width: number): readonly Row[] {
  const readers = readerNames(screen.why.readBy);
  return [
    ...wrapped(screen.ask, width).map((line) => row(line, 'strong')),
    row(''),
    ...wrapped(screen.why.words, width).map((line) => row(line)),
    ...(readers.length === 0
      ? []
      : [
          row(''),
          row('The answer is read by:'),
          ...readers.flatMap((name) => wrapped(`- ${name}`, width).map((line) => row(line))),
        ]),
    ...termRows(screen, width),
    row(''),
    ...wrapped(`Not sure: ${screen.notSure}.`, width).map((line) => row(line, 'quiet')),
  ];
}

/** Words of the glossary that the question uses. */
function termRows(screen: QuestionScreen, width: number): readonly Row[] {
  const terms = termsOfQuestion(screen);
  if (terms.length === 0) return [];
  return [
    row(''),
    row('Words:'),
    ...terms.flatMap((id) => wrapped(`- ${termLine(id)}`, width).map((line) => row(line))),
  ];
}

/** What was said, and what is to be read besides, one thing a paragraph. */
export function lineRows({ session: { note } }: Ui, { width, ascii }: Context): readonly Row[] {
  if (note?.kind !== 'said') return [];
  return [
    ...wrapped(written(note.words, ascii), width).map((line) => row(line, 'strong')),
    ...(note.lines ?? []).flatMap((text) => [
      row(''),
      ...wrapped(written(text, ascii), width).map((line) => row(line)),
    ]),
  ];
}

const KEYS_WIDTH = 20;

/** The keys of the screen that help was asked on. */
export const helpRows = (here: Situation, width: number): readonly Row[] =>
  keyHelpRows(helpHere(here), NOT_SURE_HELP, width);

/** Keys with what they do, and a word on the whole. */
export const keyHelpRows = (keys: KeyWords, besides: string, width: number): readonly Row[] => [
  row('Keys here', 'strong'),
  ...keys.flatMap(([names, does]) => {
    const [left, right] = [wrapped(names, KEYS_WIDTH - 1), wrapped(does, Math.max(10, width - KEYS_WIDTH))];
    return Array.from(
      { length: Math.max(left.length, right.length) },
      (_, index): Row => ({
        spans: [
          { text: padded(left[index] ?? '', KEYS_WIDTH), tone: 'strong' },
          { text: right[index] ?? '', tone: 'plain' },
        ],
      }),
    );
  }),
  row(''),
  ...wrapped(besides, width).map((line) => row(line, 'quiet')),
];

const NOT_SURE_HELP =
  '“Not sure” is an answer everywhere: the result then holds for every value that is possible, or says what has to be found out. Every answer is saved as it is given; going back loses nothing.';
