import { describe, expect, it, test } from 'vitest';
import type { Block } from '../../../src/report/blocks/block.ts';
import { textOf } from '../../../src/report/blocks/inline-text.ts';
import { arrangementAt, checksAt, tightestChecks, worstFirst } from '../../../src/report/checks-at.ts';
import { textLines } from '../../../src/report/exports/text-blocks.ts';
import { EXPLAINED_BY } from '../../../src/report/figures/explained-by.ts';
import { explained, explanationOf } from '../../../src/report/figures/explanations.ts';
import { missLines, TEXT_VIEWS } from '../../../src/report/screen-lines.ts';
import { checks as checksSection } from '../../../src/report/sections/checks.ts';
import { nearestDrawn } from '../../../src/report/sections/nearest-drawn.ts';
import { CHECK_WORDS } from '../../../src/report/wording/checks.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { demoDecisions } from '../demo-decisions.ts';

const DECISIONS = new Map(demoDecisions());
const decisionOf = (shop: string): Decision => DECISIONS.get(shop) as Decision;
const SHOP = decisionOf('shop');
const SCREEN = { width: 120, ascii: false, drawn: true } as const;
const LINES = { width: 80, ascii: false } as const;

const recommended = (decision: Decision) => {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) throw new Error('nothing is recommended');
  return at;
};

describe('The figure that explains a check', () => {
  const at = recommended(SHOP);
  const worst = worstFirst(checksAt(at));

  it('stands beside the check that gives way first of those that it shows', () => {
    const found = explained(SHOP, at, worst);
    expect(found.map(({ kind }) => kind).sort()).toEqual(['bay', 'faceplate', 'stack', 'table']);
    for (const { kind, check, figure, isMeasured } of found) {
      expect(EXPLAINED_BY[check.result.check]).toBe(kind);
      expect(isMeasured).toBe(true);
      const tight = figure.scene.panels.flatMap(({ dimensions }) => dimensions.filter((each) => each.tight));
      const place = JSON.stringify(check.path).slice(0, -1);
      expect(tight.some(({ path }) => JSON.stringify(path).startsWith(place))).toBe(true);
    }
  });

  it('is there for every check of the list that has numbers on some demo shop', () => {
    const measured = new Set(
      [...DECISIONS.values()].flatMap((decision) =>
        decision.arrangements.flatMap((arrangement, index) => {
          const each = { arrangement, path: ['arrangements', index] };
          return worstFirst(checksAt(each)).flatMap((check) =>
            explanationOf(decision, each, check) === null ? [] : [check.result.check],
          );
        }),
      ),
    );
    const missing = Object.keys(EXPLAINED_BY).filter((check) => !measured.has(check as 'swing'));
    expect(missing).toEqual([]);
  });

  it('is none for what has no place', () => {
    const lift = worst.find(({ result }) => result.check === 'payload');
    expect(lift === undefined ? undefined : explanationOf(SHOP, at, lift)).toBeNull();
  });

  it('is one sentence where lines are read', () => {
    const [first] = tightestChecks(at, 1);
    const figure = first === undefined ? null : explanationOf(SHOP, at, first);
    const said = textOf(figure?.words ?? [], SHOP, LINES);
    expect(said).toMatch(/^The machine table from above, to scale: base on the table: [^!?]*\.$/);
    expect(TEXT_VIEWS.overview(SHOP, LINES).join(' ').replace(/\s+/g, ' ')).toContain(said);
  });
});

/** Figures of a section with the text of the block before each. */
const figuresWithLead = (blocks: readonly Block[], decision: Decision) =>
  blocks.flatMap((block, index) => {
    const before = blocks[index - 1];
    if (block.kind !== 'figure' || before?.kind !== 'paragraph') return [];
    return [{ name: block.figure.scene.name, lead: textOf(before.text, decision, LINES) }];
  });

test('In the report each figure follows the check that it shows, in the stage of that check', () => {
  const found = figuresWithLead(checksSection(SHOP), SHOP).filter(({ name }) => name !== 'margins');
  expect(found.map(({ name }) => name)).toEqual(['work-on-the-faceplate', 'stack-from-the-side']);
  expect(found.map(({ lead }) => lead)).toEqual([
    expect.stringMatching(/^To scale, faceplate size at .+: .+ needed, .+ there, ✓ holds\.$/),
    expect.stringMatching(/^To scale, tilting under the tool at .+: .+ needed, .+ there, ✓ holds\.$/),
  ]);
});

test('Where nothing passes, figures follow the failing checks, the worst first', () => {
  const decision = decisionOf('shop-nothing-passes');
  const [first] = figuresWithLead(nearestDrawn(decision), decision).filter(({ name }) => name !== 'margins');
  expect(first?.lead).toMatch(/✗ fails\.$/);
});

test('The screen of a miss draws the worst failing check that has a picture', () => {
  const decision = decisionOf('shop-own-mill');
  const id = decision.otherWay ?? '';
  const lines = missLines(decision, id, SCREEN).join('\n');
  expect(lines).toContain(`${CHECK_WORDS['table-footprint'].name}, margin`);
  expect(lines).toContain('one dot is');
  expect(missLines(decision, id, LINES).join('\n')).not.toMatch(/[\u2800-\u28ff]/);
});

test('The margins stand in the view of how it was decided, drawn or said', () => {
  expect(TEXT_VIEWS.stages(SHOP, SCREEN).join('\n')).toContain('left of it is missing');
  expect(TEXT_VIEWS.stages(SHOP, LINES).join(' ')).toContain('leaves over, as a share of what');
  expect(textLines(nearestDrawn(SHOP), SHOP, LINES)).toEqual([]);
});
