import { describe, expect, it, test } from 'vitest';
import type { Bars } from '../../../src/drawing/bars.ts';
import { textOf } from '../../../src/report/blocks/inline-text.ts';
import { findAt } from '../../../src/report/blocks/path.ts';
import { marginsChart } from '../../../src/report/figures/margins-chart.ts';
import { jsonReport } from '../../../src/report/index.ts';
import { CHECK_WORDS } from '../../../src/report/wording/checks.ts';
import { VERDICT_WORDS } from '../../../src/report/wording/verdicts.ts';
import type { CheckResult, Decision } from '../../../src/rules/decision.ts';
import { demoDecisions } from '../demo-decisions.ts';
import { drawnOf } from './demo-figures.ts';
import { faultsInWords } from './measures-true.ts';

const DECISIONS = demoDecisions();
const JSON_OF = new Map(
  DECISIONS.map(([shop, decision]) => [shop, JSON.parse(jsonReport(decision)) as Decision]),
);

const allDrawn = drawnOf(DECISIONS, marginsChart);

const barsOf = ({ scene }: (typeof allDrawn)[number]): Bars => {
  const [panel] = scene.panels;
  if (panel?.bars === undefined) throw new Error('no bars');
  return panel.bars;
};

describe.each(allDrawn)('requirement 25: the margins of $what', (drawn) => {
  const { shop, arrangement, scene } = drawn;
  const { rows } = barsOf(drawn);
  const json = JSON_OF.get(shop) as Decision;
  const checkAt = (path: readonly (string | number)[]): CheckResult =>
    findAt(json, path.slice(0, -1)) as CheckResult;

  it('have bars as long as the numbers of the verdict', () => {
    for (const { path, from, to } of rows) {
      const value = findAt(json, path) as CheckResult['relativeMargin'];
      expect(path.at(-1)).toBe('relativeMargin');
      if (typeof value === 'number') {
        expect([from, to]).toEqual([0, value]);
        continue;
      }
      // a range from its one end to the other; what goes on beyond the chart has no end there
      const [low, high] = value ?? [null, null];
      expect(from).toBe(low === null || low < -1 ? null : low);
      expect(to).toBe(high === null || high > 1 ? null : high);
    }
  });

  it('tell verdicts by form and by word', () => {
    const forms = { holds: 'met', 'holds if': 'conditional', open: 'undecided', fails: 'missed' };
    for (const { path, form, word } of rows) {
      const { verdict } = checkAt(path);
      expect([form, word]).toEqual([forms[verdict], VERDICT_WORDS[verdict].word]);
    }
  });

  it('come the tightest first, what has to be asked last', () => {
    const order = rows.map(({ path }) => {
      const { relativeMargin, advisory } = checkAt(path);
      const worst = typeof relativeMargin === 'number' ? relativeMargin : (relativeMargin?.[0] ?? -Infinity);
      return { advisory, worst };
    });
    expect(order).toEqual(
      order.toSorted(
        (a, b) =>
          Number(a.advisory) - Number(b.advisory) || (a.worst < b.worst ? -1 : a.worst > b.worst ? 1 : 0),
      ),
    );
  });

  it('leave out no check that has a margin without naming it', () => {
    const named = [...rows.map(({ name }) => name), ...scene.notDrawn].join('\n');
    const covered = ['holds', 'holds if'];
    const measured = arrangement.checks.filter(
      ({ categorical, verdict, need, have, part }) =>
        categorical !== true &&
        !(verdict === 'holds' && (need === null || have === null)) &&
        (arrangement.passes !== 'yes' || part === null || covered.includes(arrangement.parts[part] ?? '')),
    );
    for (const { check } of measured) expect(named).toContain(CHECK_WORDS[check].name);
  });

  it('say the same numbers in words', () => {
    for (const { name, text } of rows) expect(scene.description).toContain(`${name}: ${text}`);
    expect(faultsInWords(scene)).toEqual([]);
  });
});

test('There are margins of holding, easing, open and failing checks, and of every demo shop', () => {
  const forms = new Set(allDrawn.flatMap((each) => barsOf(each).rows.map(({ form }) => form)));
  expect([...forms].sort()).toEqual(['conditional', 'met', 'missed', 'undecided']);
  expect(new Set(allDrawn.map(({ shop }) => shop)).size).toBe(DECISIONS.length);
});

test('The words of the margins are one sentence after what they are of', () => {
  const [, decision] = DECISIONS[0] as (typeof DECISIONS)[number];
  const at = { arrangement: decision.arrangements[0], path: ['arrangements', 0] } as const;
  const figure =
    at.arrangement === undefined ? null : marginsChart(decision, { ...at, arrangement: at.arrangement });
  expect(textOf(figure?.words ?? [], decision, { ascii: false })).toMatch(
    /^What each check of .+ the tightest first\. /,
  );
});
