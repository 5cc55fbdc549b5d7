import { JSDOM } from 'jsdom';
import { lint } from 'markdownlint/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { DECISIONS, hostile } from './decisions.ts';
import { demoDecisions } from './demo-decisions.ts';
import { fixtureDecision } from './fixture.ts';
import { codeIn, nodesOf, parseMarkdown, readText } from './markdown-text.ts';
import { STEERS } from './steers.ts';

type Mermaid = typeof import('mermaid')['default'];
let mermaid: Mermaid;

beforeAll(async () => {
  const { window } = new JSDOM('');
  Object.assign(globalThis, { window, document: window.document });
  mermaid = (await import('mermaid')).default;
});

/** Default rules, without a limit on the length of lines; the only HTML is what folds. */
const RULES = { default: true, MD013: false, MD033: { allowed_elements: ['details', 'summary'] } };

describe.each([...DECISIONS, ...demoDecisions()])('requirement 25: the Markdown of %s', (_what, decision) => {
  const markdown = markdownReport(decision);
  const nodes = nodesOf(parseMarkdown(markdown));

  it('passes markdownlint', () => {
    const found = lint({ strings: { report: markdown }, config: RULES });
    expect(
      found.report?.map(({ lineNumber, ruleNames, errorContext }) => [
        lineNumber,
        ruleNames[0],
        errorContext,
      ]),
    ).toEqual([]);
  });

  it('holds no HTML but what folds, each opened and closed', () => {
    const html = nodes.flatMap((node) => (node.type === 'html' ? [node.value] : []));
    const opened = html.filter((each) => /^<details>\n<summary>[^<>]*<\/summary>$/.test(each));
    const closed = html.filter((each) => each === '</details>');
    expect(opened.length).toBeGreaterThan(2);
    expect(opened.length + closed.length).toBe(html.length);
    expect(opened.length).toBe(closed.length);
  });

  it('holds no links, images or notes that a name could have made', () => {
    const kinds = new Set(nodes.map(({ type }) => type));
    for (const kind of ['link', 'image', 'footnoteReference', 'definition', 'delete', 'thematicBreak']) {
      expect(kinds.has(kind as (typeof nodes)[number]['type']), kind).toBe(false);
    }
  });

  it('holds tables whose rows are as wide as their heads', () => {
    const tables = nodes.flatMap((node) => (node.type === 'table' ? [node.children] : []));
    expect(tables.length).toBeGreaterThan(3);
    for (const [head, ...rows] of tables) {
      for (const row of rows) expect(row.children.length).toBe(head?.children.length);
    }
  });

  it('draws its path in Mermaid', async () => {
    const chart = codeIn(markdown, 'mermaid') ?? '';
    await expect(mermaid.parse(chart)).resolves.toMatchObject({ diagramType: 'flowchart-v2' });
  });

  it('holds no character that steers a display', () => {
    expect(markdown).not.toMatch(STEERS);
  });

  it('holds no dots of braille', () => {
    expect(markdown).not.toMatch(/[\u2800-\u28ff]/);
  });

  it('is the same each time, and ends with one line break', () => {
    expect(markdownReport(structuredClone(decision))).toBe(markdown);
    expect(markdown.endsWith('\n') && !markdown.endsWith('\n\n')).toBe(true);
  });
});

describe('The Markdown of hostile names', () => {
  const markdown = markdownReport(fixtureDecision({ name: hostile }));

  it('says the names as they are, apart from what cannot be shown', () => {
    expect(readText(markdown)).toContain('Wren | `a` <script>x()</script> </details> **b**');
  });

  it('has the headings of plain names', () => {
    const headings = (text: string) =>
      nodesOf(parseMarkdown(text)).flatMap((node) =>
        node.type === 'heading'
          ? [JSON.stringify(node.children.map((child) => ('value' in child ? child.value : '')))]
          : [],
      );
    expect(headings(markdown)).toEqual(headings(markdownReport(fixtureDecision())));
  });
});

describe('The Markdown of a recommendation', () => {
  const text = readText(markdownReport(fixtureDecision()));

  it.each([
    'Rowan with Wren (tilt axis along Y)',
    'Parts that it does not hold: Valve body.',
    'Longer tool for the low features',
    'coverage 62 to 93 % instead of 100 %',
    'short by 10 mm',
    'depth from the sides (Lock gate hinge)',
    '2·max(r + e, F/2) ≤ swing',
    'ISO 12100',
    'fivesides decide answers.yaml',
  ])('says %s', (words) => {
    expect(text.replaceAll('\n', '')).toContain(words);
  });
});

describe('Shown in inches', () => {
  it('every length and mass has inches and pounds beside it', () => {
    const text = readText(markdownReport(fixtureDecision({ shownIn: 'inch' })));
    expect(text).toMatch(/402\.1 mm \(15\.8\d* in\)/);
    expect(text).toMatch(/95 kg \(209\.4 lb\)/);
    const bare = [...text.matchAll(/\d (?:mm|kg)(?![\w/²³·])(?! \()/g)].map(({ index }) =>
      text.slice(index - 20, index + 10),
    );
    expect(bare).toEqual([]);
  });
});
