import assert from 'node:assert/strict';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { UNPRINTABLE } from '../../src/documents/printable.ts';
import { describeProblem, type Problem } from '../../src/documents/problem.ts';
import { MARK } from './nasty.ts';

/** Whoever is refused is told what, where and what instead, in one line each that steers nothing. */
export function heldProblems(problems: readonly Problem[], lines: number): 'refused' {
  assert.ok(problems.length > 0, 'it is refused without a reason');
  for (const problem of problems) {
    const { line, column, found, expected } = problem;
    const said = describeProblem(problem);
    heldLine(said);
    assert.ok(found.trim() !== '' && expected.trim() !== '', `it says nothing: ${said}`);
    assert.ok(
      line === 0 ? column === 0 : column >= 1 && line >= 1 && line <= lines,
      `no such place: ${said}`,
    );
    assert.doesNotMatch(said, /undefined|\[object|expected something else|Invalid input/);
  }
  return 'refused';
}

/** A line that nothing in it can break, turn round or hide in. */
export function heldLine(line: string): void {
  const found = line.search(UNPRINTABLE);
  assert.ok(
    found < 0,
    `a sign that steers: ${JSON.stringify(line.slice(Math.max(0, found - 40), found + 40))}`,
  );
}

export const heldLines = (text: string): void => text.split('\n').forEach(heldLine);

interface MarkdownNode {
  readonly type: string;
  readonly value?: string;
  readonly url?: string;
  readonly children?: readonly MarkdownNode[];
}

/** Markdown in which no text of a file is HTML, a link or a picture. */
export function heldMarkdown(text: string): void {
  heldLines(text);
  const tree: MarkdownNode = unified().use(remarkParse).use(remarkGfm).parse(text);
  const walk = (node: MarkdownNode): void => {
    // parts are folded in HTML of the report itself, with their names in it
    const own = node.value?.replace(/<\/?(?:details|summary)>/g, '') ?? '';
    assert.ok(node.type !== 'html' || !/[<>]/.test(own), `HTML in Markdown: ${own}`);
    assert.ok(node.url?.includes(MARK) !== true, `a link in Markdown: ${node.type} ${node.url}`);
    node.children?.forEach(walk);
  };
  walk(tree);
}

export const linesIn = (text: string): number => text.split(/\r\n|\n|\r/).length + 1;
