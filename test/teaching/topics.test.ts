import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { ASSUMPTION_GROUPS, ASSUMPTIONS } from '../../src/questions/assumptions.ts';
import type { Block } from '../../src/report/blocks/block.ts';
import type { Inline } from '../../src/report/blocks/inline.ts';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { ROUTE_RULE_IDS } from '../../src/rules/classes/routes/rule-ids.ts';
import { CLASS_RULE_IDS } from '../../src/rules/classes/rule-ids.ts';
import { FEATURE_IDS } from '../../src/rules/features/ids.ts';
import { STAGES } from '../../src/rules/stages/index.ts';
import { explanationLines, explanationMarkdown } from '../../src/teaching/exports.ts';
import { TOPICS } from '../../src/teaching/topics/index.ts';

const idsOf = (kind: string): readonly string[] =>
  TOPICS.filter((each) => each.kind === kind).map(({ id }) => id);

describe('nothing is left unexplained', () => {
  const inGroups = Object.entries(ASSUMPTION_GROUPS).flatMap(([group, all]) =>
    Object.keys(all).map((name) => `${group}.${name}`),
  );
  test.each([
    ['check', CHECK_IDS],
    ['stage', STAGES],
    ['class rule', CLASS_RULE_IDS],
    ['route rule', ROUTE_RULE_IDS],
    ['feature', FEATURE_IDS],
    ['assumption', [...Object.keys(ASSUMPTIONS), ...inGroups, 'handLift.coupling']],
  ] as const)('every %s', (kind, ids) => {
    expect([...idsOf(kind)].sort()).toEqual([...ids].sort());
  });

  test('words of the glossary', () => {
    expect(idsOf('term').length).toBeGreaterThan(60);
  });
});

const inlines = (blocks: readonly Block[]): readonly Inline[] =>
  blocks.flatMap((block): readonly Inline[] => {
    switch (block.kind) {
      case 'heading':
      case 'paragraph':
        return block.text;
      case 'list':
        return block.items.flat();
      case 'table':
        return [...block.head.flat(), ...block.rows.flat(2)];
      case 'details':
        return [...block.summary, ...inlines(block.blocks)];
      case 'figure':
        return block.figure.words;
      default:
        return [];
    }
  });

/** The text of a node and of all below it. */
const textIn = (node: object): string =>
  'value' in node && typeof node.value === 'string'
    ? node.value
    : 'children' in node && Array.isArray(node.children)
      ? node.children.map((each: object) => textIn(each)).join('')
      : '';

const wordsIn = (pieces: readonly Inline[]): readonly string[] =>
  pieces.flatMap((piece) =>
    piece.kind === 'words' ? [piece.text] : piece.kind === 'strong' ? wordsIn(piece.children) : [],
  );

const HEADINGS: Readonly<Record<string, readonly string[]>> = {
  check: [
    'The rule',
    'An example, worked out',
    'Sketch',
    'The usual mistake',
    'What helps',
    'Where it comes from',
  ],
  stage: ['The rule', 'An example, worked out', 'Sketch', 'The usual mistake', 'Where it comes from'],
  'class rule': ['The rule', 'An example, worked out', 'Sketch', 'The usual mistake', 'Where it comes from'],
  'route rule': ['The rule', 'An example, worked out', 'Sketch', 'The usual mistake', 'Where it comes from'],
  feature: ['The rule', 'Examples, worked out', 'Sketch', 'The usual mistake', 'Where it comes from'],
  assumption: ['Its value', 'An example, worked out', 'Sketch', 'The usual mistake', 'Where it comes from'],
  term: ['The usual mistake', 'Where it comes from'],
};

/** One heading with another text is a different explanation; each is made once, since most decide a shop. */
describe.each(TOPICS.map((topic) => [`${topic.kind} ${topic.id}`, topic] as const))('%s', (_name, topic) => {
  const explained = topic.explain();
  const markdown = explanationMarkdown(explained);
  const tree = unified().use(remarkParse).use(remarkGfm).parse(markdown);

  test('says all that an explanation has to say', () => {
    const headings = tree.children.flatMap((node) => (node.type === 'heading' ? [textIn(node)] : []));
    expect(headings).toEqual(expect.arrayContaining([...(HEADINGS[topic.kind] ?? [])]));
    // a heading is followed by something else than a heading, and nothing ends with one
    const bare = tree.children.filter(
      (node, index) =>
        node.type === 'heading' && [undefined, 'heading'].includes(tree.children[index + 1]?.type),
    );
    expect(bare.map((node) => textIn(node))).toEqual([]);
  });

  test('has no number that is not worked out', () => {
    expect(wordsIn(inlines(explained.blocks)).filter((text) => /\d/.test(text))).toEqual([]);
  });

  test('is text too, with no number missing', () => {
    const text = explanationLines(explained, { width: 80, ascii: true }).join('\n');
    expect(text).not.toMatch(
      topic.kind === 'term' ? /NaN|undefined|\[object/ : /NaN|undefined|\[object|not known/,
    );
  });
});
