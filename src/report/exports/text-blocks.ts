import type { Decision } from '../../rules/decision.ts';
import type { Block, Flowchart } from '../blocks/block.ts';
import type { Inline } from '../blocks/inline.ts';
import { NO_BREAK, textOf } from '../blocks/inline-text.ts';
import { figureRows } from '../figures/figure-rows.ts';
import { answersYaml } from './answers-yaml.ts';
import { plainAscii } from './plain-ascii.ts';
import { tableLines } from './text-table.ts';
import { wrapped } from './text-wrapped.ts';

export interface TextLook {
  /** columns of the terminal */
  readonly width: number;
  /** signs and symbols in plain ASCII */
  readonly ascii: boolean;
  /** pictures are drawn, where there is room; else their words are said */
  readonly drawn?: boolean;
}

/** Blocks as lines of text no wider than asked for, as far as words allow. No escape codes. */
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
      return block.items.flatMap((item) => {
        const before = block.boxes === true ? '[ ] ' : '- ';
        return wrapped(write(item), look.width, before, ' '.repeat(before.length));
      });
    case 'table':
      return tableLines(
        block.head.map(write),
        block.rows.map((row) => row.map(write)),
        block.align,
        look.width,
      );
    case 'details':
      return [
        ...wrapped(write(block.summary), look.width, '', ''),
        '',
        ...textLines(block.blocks, decision, look),
      ];
    case 'figure': {
      const rows = look.drawn === true ? figureRows(block.figure, decision, look) : [];
      return rows.length > 0 ? rows : wrapped(write(block.figure.words), look.width, '', '');
    }
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

function chartLines(chart: Flowchart, write: Write, width: number): readonly string[] {
  return chart.nodes.flatMap((node) =>
    wrapped(node.lines.map(write).join('; '), width, node.shape === 'aside' ? '    - ' : '- ', '      '),
  );
}
