import { expect, test } from 'vitest';
import { figureFiles } from '../../../src/report/index.ts';
import { nearestDrawn } from '../../../src/report/sections/nearest-drawn.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { blockText } from '../section-text.ts';

const DECISIONS = new Map(demoDecisions());
const decisionOf = (shop: string): Decision => DECISIONS.get(shop) as Decision;

test('Where nothing passes, what came nearest is drawn', () => {
  const decision = decisionOf('shop-nothing-passes');
  const blocks = nearestDrawn(decision);
  expect(blockText(blocks, decision)).toContain('What came nearest');
  expect(blocks.filter(({ kind }) => kind === 'figure').length).toBeGreaterThan(0);
});

test('Where it is open, one that may still win is drawn', () => {
  const decision = decisionOf('shop-many-unknowns');
  expect(blockText(nearestDrawn(decision), decision)).toContain('The first of those that may still win');
});

test('Where something is recommended, that is drawn in its own sections', () => {
  expect(nearestDrawn(decisionOf('shop'))).toEqual([]);
});

test('Every figure of a report has a file of its own name', () => {
  for (const decision of DECISIONS.values()) {
    const names = figureFiles(decision).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  }
});
