import { printable } from '../documents/printable.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { explanationFigures, explanationLines, explanationMarkdown, topicList } from '../teaching/exports.ts';
import { findTopics, qualified } from '../teaching/find-topic.ts';
import type { Topic } from '../teaching/topics/topic.ts';
import { formatOf } from './format-of.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { writeWithFigures } from './write-report.ts';

export interface ExplainOptions {
  readonly format?: 'text' | 'json' | 'markdown';
  /** a file instead of standard output */
  readonly out?: string;
  readonly ascii?: boolean;
  readonly units?: LengthUnits;
}

const USUAL_WIDTH = 80;
const MOST_WIDTH = 120;

/**
 * `fivesides explain`: what a check, a stage, a rule, a feature, an assumption or a word means, with an example worked
 * out; without a name the list of all. Exit code 0; 2 where nothing is called so, or the file cannot be written.
 */
export async function explainCommand(
  name: string | undefined,
  options: ExplainOptions = {},
  lines: Lines = PROCESS_LINES,
  columns: number | undefined = process.stdout.columns,
): Promise<number> {
  if (name === undefined) {
    for (const line of listLines()) lines.result(line);
    return 0;
  }
  const { found, meant } = findTopics(name);
  const [topic, ...others] = found;
  if (topic === undefined) {
    const hint = meant === undefined ? '' : ` (did you mean ${meant}?)`;
    lines.remark(
      printable(`fivesides: there is nothing called "${name}"${hint}; fivesides explain lists all.`),
    );
    return UNUSABLE;
  }
  const code = deliver(topic, options, lines, columns);
  for (const other of others) lines.remark(`See also: fivesides explain ${qualified(other)}`);
  return code;
}

function deliver(topic: Topic, options: ExplainOptions, lines: Lines, columns = USUAL_WIDTH): number {
  const { out, ascii = false, units = 'mm' } = options;
  const explained = topic.explain();
  const text = (width: number): string =>
    `${explanationLines(explained, { width, ascii, drawn: true }, units).join('\n').trimEnd()}\n`;
  const isMarkdown = formatOf(options.format, out) === 'markdown';
  if (out === undefined) {
    const width = Math.min(MOST_WIDTH, columns);
    lines.result((isMarkdown ? explanationMarkdown(explained, null, units) : text(width)).trimEnd());
    return 0;
  }
  const { writing, figures } = isMarkdown
    ? writeWithFigures(
        out,
        (folder) => explanationMarkdown(explained, folder, units),
        () => explanationFigures(explained, units),
        true,
      )
    : { writing: writeFileText(out, text(USUAL_WIDTH), { overwrite: true }), figures: null };
  if (!writing.ok) {
    lines.remark(printable(`fivesides: ${out} was not written: ${notWritten(writing)}.`));
    return UNUSABLE;
  }
  const beside = figures === null ? '' : `, its sketch to ${figures} beside it`;
  lines.remark(printable(`fivesides: written to ${out}${beside}.`));
  return 0;
}

const NAME_WIDTH = 28;

const listLines = (): readonly string[] =>
  topicList().flatMap(({ heading, topics }, index) => [
    ...(index === 0 ? [] : ['']),
    heading.toUpperCase(),
    ...topics.map(({ id, title }) => `  ${id.padEnd(NAME_WIDTH)}${title}`),
  ]);
