import type { Decision } from '../../rules/decision.ts';
import type { Block } from '../blocks/block.ts';
import { markdownOf } from './markdown.ts';
import { textLines } from './text-blocks.ts';

const TEXT_WIDTH = 80;

/** Blocks as the name of a file asks for: plain text, for a letter or a mail, where it ends in .txt, else Markdown. Ends with one line break. */
export const inFile = (blocks: readonly Block[], decision: Decision, file: string): string =>
  /\.txt$/i.test(file)
    ? `${textLines(blocks, decision, { width: TEXT_WIDTH, ascii: false }).join('\n').trimEnd()}\n`
    : markdownOf(blocks, decision);
