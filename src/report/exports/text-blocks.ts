import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type { Decision } from '../../rules/decision.ts';
import type { Block, Flowchart, Table } from '../blocks/block.ts';
import type { Inline } from '../blocks/inline.ts';
import { NO_BREAK, textOf } from '../blocks/inline-text.ts';
import { answersYaml } from './answers-yaml.ts';
import { plainAscii } from './plain-ascii.ts';

export interface TextLook {
  /** columns of the terminal */
  readonly width: number;
  /** signs and symbols in plain ASCII */
  readonly ascii: boolean;
}

/** Blocks as lines of text no wider than asked for, as far as words allow. No escape codes, nothing drawn. */
export function textLines(blocks: readonly Block[], decision: Decision, look: TextLook): readonly string[] {
  const write = (sentence: readonly Inline[]): string => {
    const text = textOf(sentence, decision, { ...look, unbroken: true });
    return look.ascii ? plainAscii(text) : text;
  };
  return blocks.flatMap((block) => {
    const lines = linesOf(block, write, decision, look);
    return lines.length === 0 ? [] : [...lines.map((line) => line.replaceAll(NO_BREAK, ' ')), ''];
  });
}

type Write = (sentence: readonly Inline[]) => string;

function linesOf(block: Block, write: Write, decision: Decision, look: TextLook): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return wrapped(write(block.text).toUpperCase(), look.width, '', '');
    case 'paragraph':
      return wrapped(write(block.text), look.width, '', '');
    case 'list':
      return block.items.flatMap((item) => wrapped(write(item), look.width, '- ', '  '));
    case 'table':
      return tableLines(block, write, look.width);
    case 'details':
      return [
        ...wrapped(write(block.summary), look.width, '', ''),
        '',
        ...textLines(block.blocks, decision, look),
      ];
    case 'flowchart':
      return chartLines(block, write, look.width);
    case 'command':
      return [`  ${write(block.line)}`];
    case 'answers-file':
      return answersYaml(decision.inputs.answers).split('\n');
    // lines as long as a catalog row are for a program: text is for people
    case 'inputs-file':
      return [];
  }
}

/** Words that are wider than a line are broken: a long name does not push the rest out of sight. */
function wrapped(text: string, width: number, first: string, rest: string): readonly string[] {
  const room = Math.max(10, width - stringWidth(rest));
  return wrapAnsi(text, room, { hard: true, trim: true })
    .split('\n')
    .map((line, index) => `${index === 0 ? first : rest}${line}`.trimEnd());
}

const GAP = '  ';

/** Columns where they fit, else one short paragraph a row. */
function tableLines(block: Table, write: Write, width: number): readonly string[] {
  const head = block.head.map(write);
  const rows = block.rows.map((row) => row.map(write));
  const widths = head.map((title, column) =>
    Math.max(stringWidth(title), ...rows.map((row) => stringWidth(row[column] ?? ''))),
  );
  const whole = widths.reduce((sum, each) => sum + each, 0) + GAP.length * (widths.length - 1);
  if (whole > width) return rows.flatMap((row) => stacked(head, row, width));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => {
        const fill = ' '.repeat(Math.max(0, (widths[column] ?? 0) - stringWidth(cell)));
        return block.align[column] === 'right' ? `${fill}${cell}` : `${cell}${fill}`;
      })
      .join(GAP)
      .trimEnd();
  return [line(head), ...rows.map(line)];
}

function stacked(head: readonly string[], row: readonly string[], width: number): readonly string[] {
  const [title = '', ...cells] = row;
  const facts = cells.flatMap((cell, index) =>
    cell === '' ? [] : wrapped(`${head[index + 1] ?? ''}: ${cell}`, width, '  ', '    '),
  );
  return [...wrapped(title, width, '- ', '  '), ...facts];
}

function chartLines(chart: Flowchart, write: Write, width: number): readonly string[] {
  return chart.nodes.flatMap((node) =>
    wrapped(node.lines.map(write).join('; '), width, node.shape === 'aside' ? '    - ' : '- ', '      '),
  );
}
